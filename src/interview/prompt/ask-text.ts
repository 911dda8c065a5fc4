import { createPrompt, isBackspaceKey, isEnterKey, useEffect, useKeypress, useState } from '@inquirer/core';
import { visible } from '../../base/visible.js';
import { wrap } from '../../report/text/wrap.js';
import { isEscape, isStop } from './keys-apart.js';
import type { Keys } from './open-keys.js';
import type { Screen } from './open-screen.js';
import type { Pressed } from './pressed.js';
import { type PromptOf, putPrompt } from './put-prompt.js';
import { shown } from './shown.js';

/** A question that is answered by typing. */
export interface TextAsked {
  readonly question: string;
  readonly help: string;
  /** What Enter alone gives. */
  readonly usual?: string | undefined;
  /** What stands in the box at first. */
  readonly typed?: string;
  /** Goes back, wherever it is typed; null where it may be part of an answer. */
  readonly backSign: string | null;
  /** What is wrong with an answer; null for nothing. */
  readonly faultOf: (text: string) => string | null;
}

const INDENT = '  ';

/** Asks until a sound answer is given. A refused one is taken out of the way of the next; its fault says what it was. */
export const askText = (asked: TextAsked, screen: Screen, keys: Keys): Promise<Pressed<string>> =>
  putPrompt(textPrompt, asked, screen, keys);

const textPrompt: PromptOf<string, TextAsked> = createPrompt(({ asked, screen }, done) => {
  const [typed, setTyped] = useState('');
  const [fault, setFault] = useState<string | null>(null);
  useEffect((rl) => {
    rl.write(asked.typed ?? '');
    setTyped(rl.line);
  }, []);
  useKeypress((key, rl) => {
    const end = (ending: Parameters<typeof done>[0]): void => {
      rl.pause(); // what is pressed now is for the next prompt
      done(ending);
    };
    if (isEscape(key)) return end({ did: 'go-back' });
    if (isStop(key)) return end({ did: 'stop', again: { ...asked, typed } });
    if (isEnterKey(key)) {
      const given = typed.trim() === '' ? (asked.usual ?? '') : typed;
      const wrong = asked.faultOf(given);
      if (wrong === null) return end({ did: 'give', given });
      setFault(wrong);
    } else if (typed === '' && rl.line === '?') return end({ did: 'not-know' });
    else if (asked.backSign !== null && rl.line.includes(asked.backSign)) return end({ did: 'go-back' });
    else if (/\p{Cc}/u.test(rl.line)) {
      // on a dumb terminal readline does not edit
      rl.clearLine(0);
      if (isBackspaceKey(key)) rl.write(typed.slice(0, -1));
      else if (key.name !== 'u') rl.write(typed);
    }
    if (rl.line.length > typed.length) setFault(null);
    setTyped(rl.line);
  });

  const { usual } = asked;
  const head = usual === undefined || usual === '' ? '> ' : `> (${visible(usual)}) `;
  const above = [
    ...wrap(asked.question, screen.width).map((text) => screen.painted({ text, style: 'bold' })),
    ...wrap(asked.help, screen.width, INDENT).map((text) => screen.painted({ text, style: 'dim' })),
    ...wrap(fault ?? '', screen.width, INDENT).map((text) => screen.painted({ text, style: 'yellow' })),
  ];
  return shown(above, screen.plain(head + typed), [], screen);
});
