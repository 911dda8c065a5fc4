import { visible } from '../../base/visible.js';
import { shellWord } from '../../records/text/shell-word.js';
import type { Page } from '../text/page.js';
import { joinSections, paragraph, section } from '../text/section.js';
import { NEXT_STEPS, type NextStepCode } from '../wording/next-steps.js';

/** A command that may follow an answer. */
export interface NextStep {
  readonly code: NextStepCode;
  /** The words after `flarewise`: the command, then each flag with its value as one group. */
  readonly words: readonly (readonly string[])[];
}

/** Commands alone, a line each, or more behind a backslash, as shells read them. */
export const commandsOf = (steps: readonly NextStep[], width: number): string[] =>
  steps.flatMap(({ words }) => commandLines(words, width, ''));

/** What may follow an answer, each a command to paste; a long one continues after a backslash, as shells read it. */
export const nextSteps = (steps: readonly NextStep[], page: Page): string =>
  joinSections([
    section(
      'Next',
      steps.flatMap(({ code, words }) => [
        ...paragraph(NEXT_STEPS[code], page),
        ...commandLines(words, page.width, INDENT),
      ]),
      page,
    ),
  ]);

const INDENT = '    ';

function commandLines(words: NextStep['words'], width: number, indent: string): string[] {
  const lines: string[] = [];
  let line = `${indent}flarewise`;
  for (const group of words) {
    const next = group.map((word) => shellWord(visible(word))).join(' ');
    if (line.length + next.length + 3 > width && line.trim() !== '') {
      lines.push(`${line} \\`);
      line = `${indent}  ${next}`;
    } else line = `${line} ${next}`;
  }
  return [...lines, line];
}
