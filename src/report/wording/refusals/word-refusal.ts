import { InputError, MOST_FAULTS } from '../../../base/errors.js';
import type { Refusal, Refusals } from '../../../records/refusals/refusal.js';
import type { Units } from '../../text/display-units.js';
import { sayIn } from '../statements/say-in.js';
import { BALL_WORDS } from './ball-words.js';
import { CORE_WORDS } from './core-words.js';
import { GRIP_WORDS } from './grip-words.js';
import { LAYOUT_WORDS } from './layout-words.js';
import { MESH_WORDS } from './mesh-words.js';
import type { RefusalWords } from './refusal-words.js';
import { STL_WORDS } from './stl-words.js';

const WORDS: RefusalWords<Refusals> = {
  ...BALL_WORDS,
  ...GRIP_WORDS,
  ...LAYOUT_WORDS,
  ...CORE_WORDS,
  ...MESH_WORDS,
  ...STL_WORDS,
};

/** A refusal as an error with words, its faults counted, shortened and made visible as those of any `InputError`. */
export const formatRefusal = (
  { statements, source }: Pick<Refusal, 'statements' | 'source'>,
  units: Units,
): InputError =>
  new InputError(
    statements[0].code,
    statements.slice(0, MOST_FAULTS).map((statement) => sayIn(WORDS, statement, units)),
    source,
    statements.length,
  );
