import { htmlText } from './table-html.js';

/**
 * A page that fetches nothing.
 *
 * @param main   as HTML
 * @param after  as HTML, behind the main part, with a line break at its end; nothing when left out
 */
export const documentHtml = (
  title: string,
  style: string,
  main: string,
  after = '',
): string => `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${htmlText(title)}</title>
<link rel="icon" href="data:,">
<style>${style}</style>
</head>
<body>
<main>
${main}
</main>
${after}</body>
</html>
`;
