const START = '<!-- first screen: written by npm run examples -->';
const END = '<!-- end of first screen -->';

/** A README with this first screen. */
export function withScreen(readme: string, screen: string): string {
  const [before, rest] = readme.split(START);
  const [, after] = (rest ?? '').split(END);
  if (before === undefined || after === undefined) throw new Error(`README.md has no ${START} … ${END}`);
  return `${before}${START}\n\n\`\`\`text\n${screen.trimEnd()}\n\`\`\`\n\n${END}${after}`;
}
