import type { NoLineAnswer } from '../../records/answers/answer.js';
import { withUnit } from '../text/display-units.js';
import type { Page } from '../text/page.js';
import { bullets, paragraph } from '../text/section.js';
import { say, sayAll } from './say.js';

/** Why no line reaches the pocket, and what would help; nothing when one does. */
export function noLineText(noLine: NoLineAnswer | null, page: Page): string[] {
  if (!noLine) return [];
  const help =
    noLine.remedies.length > 0
      ? ['These changes would bring it there:']
      : [
          `Neither a finer or coarser cover nor up to ${withUnit(3, page.units.speed)} faster or slower would bring it there.`,
        ];
  return [
    ...paragraph(say(noLine.says, page.units), page, page.paint.caution),
    ...paragraph(help.join(' '), page),
    ...bullets(sayAll(noLine.remedies, page.units), page),
  ];
}
