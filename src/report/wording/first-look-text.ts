import type { FirstLookAnswer } from '../../records/answers/first-look.js';
import type { Units } from '../text/display-units.js';

/** What is on the screen until the answer, in one sentence, and what is being done. */
export function firstLookText({ text, hookStartFt }: FirstLookAnswer, { laneMark }: Units): string {
  const hookStart = `${laneMark.show(hookStartFt)} ${laneMark.name}`;
  return `First look, by the regression alone: about ${text}, hook start near ${hookStart}. Working it out…`;
}
