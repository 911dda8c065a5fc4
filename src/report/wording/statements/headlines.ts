import type { Headlines } from '../../../records/answers/statements/headlines.js';
import type { Units } from '../../text/display-units.js';
import { percent } from '../../text/figures.js';
import { scatterText, sizeText } from './size-text.js';
import type { Wording } from './wording.js';

type Found = Headlines['usual-as-good'];

/** How the first layout stands to the usual one, as sentences. */
export const HEADLINES: Wording<Headlines> = {
  'is-the-usual': ({ usual, ties, of }) =>
    `Drill the usual ${usual}: no other layout is ahead of it in most worlds. ${tiesText(ties, of)}`,
  'usual-as-good': (found, units) =>
    `The usual ${found.usual} is as good here. ${found.layout} is ahead of it in ${percent(found.ahead)} % of worlds, but by little: ` +
    `${ofPhysics(found, units)}. You would not see the difference: ${shotsText(found, units)}. ${tiesText(found.ties, found.of)}`,
  'practice-sees-more': (found, units) =>
    `By physics you would not see ${found.layout} from the usual ${found.usual} (${ofPhysics(found, units)}; ${shotsText(found, units)}). If practice is right, it is ` +
    `${sizeText(found.difference.practice.size, found.readings, units)}. With both weighed it is ahead in ${percent(found.ahead)} % of worlds.`,
  'barely-seen': (found, units) =>
    `${found.layout} is ahead of the usual ${found.usual} in ${percent(found.ahead)} % of worlds: ${ofBoth(found, units)}. ` +
    `It takes a night of shots with each to see it: ${shotsText(found, units)}.`,
  'seen-and-sure': (found, units) =>
    `${found.layout} is ahead of the usual ${found.usual} in ${percent(found.ahead)} % of worlds, and a game shows it: ${ofBoth(found, units)}; ${shotsText(found, units)}.`,
  'seen-not-sure': (found, units) =>
    `${found.layout} should be ${ofBoth(found, units)} than the usual ${found.usual}, which a game shows; but it is ahead in only ${percent(found.ahead)} % of worlds. ${shotsSentence(found, units)}`,
};

const ofPhysics = ({ difference, readings }: Found, units: Units): string =>
  sizeText(difference.physics.size, readings, units);

const ofBoth = ({ difference, readings }: Found, units: Units): string =>
  sizeText(difference.weighed.size, readings, units);

const shotsText = ({ scatter, readings }: Found, units: Units): string =>
  `your own shots vary by ${scatterText(scatter, readings, units)}`;

const shotsSentence = (found: Found, units: Units): string =>
  `Your own shots vary by ${scatterText(found.scatter, found.readings, units)}.`;

const tiesText = (ties: number, of: number): string =>
  `${ties} of ${of} layouts spread over all tie with it: what is easy to mark, clear of the holes and proven for you may decide.`;
