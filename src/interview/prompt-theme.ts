import { styleText } from 'node:util';

type Format = Parameters<typeof styleText>[0];

/**
 * How prompts look: a question stands with its help while it is open, with its answer alone once answered.
 *
 * @param isAscii  whether only ASCII signs can be shown
 *
 * `styleText` leaves colour out by itself where NO_COLOR is set; `isColoured` false leaves it out always.
 */
export function promptTheme(isColoured: boolean, isAscii = false) {
  const paint = (format: Format, text: string): string => (isColoured ? styleText(format, text) : text);
  return {
    validationFailureMode: 'clear' as const, // a text that was refused is not in the way of the next one
    prefix: { idle: paint('cyan', '?'), done: paint('green', '-') },
    ...(isAscii ? { icon: { cursor: '>' } } : {}),
    style: {
      message: (text: string, status: string): string => {
        const [question, ...help] = text.split('\n');
        const below = status === 'done' ? [] : help.map((line) => paint('dim', line));
        return [paint('bold', question), ...below, ' '].join('\n'); // the answer on a line of its own
      },
      answer: (text: string): string => paint('cyan', text),
      error: (text: string): string => paint('yellow', `  ${text}`),
      defaultAnswer: (text: string): string => `(${text})`,
      highlight: (text: string): string => paint('cyan', text),
      description: (text: string): string => `  ${text}`,
      keysHelpTip: (): string => paint('dim', '  Arrows choose, Enter takes, Escape goes back.'),
    },
  };
}
