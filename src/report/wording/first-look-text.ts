import type { FirstLookAnswer } from '../../records/answers/first-look.js';
import type { Units } from '../text/display-units.js';

/** What stands on the screen until the answer does, in one sentence and a word on what goes on. */
export function firstLookText({ text, hookStartFt }: FirstLookAnswer, { laneMark }: Units): string {
  const hookStart = `${laneMark.show(hookStartFt)} ${laneMark.name}`;
  return `First look, by the regression alone: about ${text}, hook start near ${hookStart}. Working it out…`;
}
