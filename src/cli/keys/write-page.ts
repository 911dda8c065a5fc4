import type { RecommendAnswer } from '../../records/answers/answer.js';
import { askedFile } from './asked-file.js';
import { bestOf, type Standing } from './standing.js';

/** Asks for a file and writes the answer's web page there. @returns what was written; null for nothing */
export async function askAndWritePage(standing: Standing): Promise<string | null> {
  const file = await askedFile('Write the report, a web page, to which file?', ['html'], standing);
  if (!file) return null;
  await writePage(file.path, standing);
  return file.path;
}

/** Writes the answer's web page. */
export async function writePage(path: string, standing: Standing): Promise<void> {
  const { answer, inputs, fitter, next, options, terminal } = standing;
  const [{ writeReport }, { recommendHtml }] = await Promise.all([
    import('../files/report-file.js'),
    import('../../report/web/recommend-html.js'),
  ]);
  writeReport<RecommendAnswer>(
    path,
    (given, facts, invented, page) => recommendHtml(given, facts, invented, page, next),
    { answer, layout: bestOf(standing), inputs, fitter },
    options,
    terminal,
  );
}
