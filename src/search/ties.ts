import { fromKeys } from '../base/from-keys.js';
import { WISHED_IDS, type WishedId } from '../records/schemas/reaction-numbers.js';
import { reader } from '../simulate/readings.js';
import type { NominalShot } from './candidates/nominal-shots.js';
import { type Sizes, visibility } from './visibility.js';
import { NOMINAL, type Voice } from './voices/voice.js';

/** How many of some layouts a person could not tell apart from one of them, in the nominal world as a voice reads it. */
export function ties(
  one: NominalShot,
  layouts: readonly NominalShot[],
  voice: Voice,
  ids: readonly WishedId[],
  scatter: Sizes,
): number {
  const numbers = ({ layout, outcome }: NominalShot): Sizes => {
    const believed = voice.outcome(voice.effectsOf(layout), NOMINAL, outcome);
    return fromKeys(WISHED_IDS, (id) => reader(id)(believed));
  };
  const own = numbers(one);
  return layouts.filter((each) => {
    const other = numbers(each);
    const size = fromKeys(WISHED_IDS, (id) => other[id] - own[id]);
    return visibility(size, scatter, ids) === 'unseen';
  }).length;
}
