import { existsSync } from 'node:fs';
import { askYesNo } from '../../interview/prompt/ask-yes-no.js';
import { idFrom } from '../../records/text/record-id.js';
import { checkedOut, kindOfFile } from '../files/out-file.js';
import { askedLine } from './asked-line.js';
import type { Standing } from './standing.js';

/** A file to write, and its kind by its ending. */
interface AskedFile<K extends string> {
  readonly path: string;
  readonly kind: K;
}

const FIELD = 'the file';

/** Asks where to write, a name with the first of the kinds offered; nothing is written over unless the person says so. Null for nowhere. */
export function askedFile<const K extends string>(
  question: string,
  kinds: readonly [K, ...K[]],
  standing: Standing,
): Promise<AskedFile<K> | null> {
  const { bowler, ball } = standing.inputs;
  return askedLine(
    {
      question,
      help: `Enter takes the name shown${kinds.length > 1 ? `; ${kinds.map((kind) => `.${kind}`).join(', ')} say what is written` : ''}. Escape: not now.`,
      usual: `${idFrom(bowler.name)}-${idFrom(ball.name)}.${kinds[0]}`,
      read: (path) => ({ path: checkedOut(path, FIELD), kind: kindOfFile(path, kinds, FIELD) }),
      agree: async ({ path }, { screen, keys }) =>
        !existsSync(path) || askYesNo(`${path} is there already. Replace it?`, false, screen, keys),
    },
    standing,
  );
}
