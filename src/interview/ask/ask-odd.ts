import { Cancelled } from '../../base/errors.js';
import type { Desk } from './desk.js';

/** What a person says of a shot that looks odd. */
type OddReply = 'it-was-so' | 'other-side' | 'not-so';

/**
 * Asks about a shot that looks odd.
 *
 * @param reasons    why it does
 * @param otherSide  the shot counted from the other side; null where that is no way out
 * @throws {Cancelled} when the person leaves
 */
export async function askOdd(
  typed: string,
  reasons: readonly string[],
  otherSide: string | null,
  { screen, keys }: Desk,
): Promise<OddReply> {
  const options: readonly (readonly [OddReply, string])[] = [
    ['not-so', 'It was not: keep nothing'],
    ...(otherSide === null
      ? []
      : [['other-side', `I counted from the other side: keep ${otherSide}`] as const]),
    ['it-was-so', 'It was so: keep it'],
  ];
  const { askChoice } = await import('../prompt/ask-choice.js'); // few shots look odd, and no other needs the prompts
  const pressed = await askChoice(
    {
      question: `Was it so? ${typed}`,
      help: reasons.join(' '),
      options: options.map(([, label]) => ({ label })),
      start: 0,
      backSign: '<',
      keysHelp: 'Arrows choose; Enter takes.',
    },
    screen,
    keys,
  );
  if (pressed.did === 'leave') throw new Cancelled();
  return pressed.did === 'give' ? options[pressed.given][0] : 'not-so';
}
