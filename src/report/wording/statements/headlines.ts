import type { Headlines } from '../../../records/answers/statements/headlines.js';
import { isProbable } from '../../../records/schemas/sureness.js';
import type { Units } from '../../text/display-units.js';
import { percent } from '../../text/figures.js';
import { NOTHING, scatterText, sizeText } from './size-text.js';
import type { Wording } from './wording.js';

type Found = Headlines['usual-as-good'];

/** How the first layout stands to the usual one, as sentences. */
export const HEADLINES: Wording<Headlines> = {
  'is-the-usual': ({ usual, ties, of }) =>
    `Drill the usual ${usual}: no other layout is ahead of it in most simulated tries. ${tiesText(ties, of)}`,
  'nothing-asked': ({ usual }) =>
    `Drill the usual ${usual}: you asked for no particular reaction, and no layout enters the pocket at a clearly better angle. ` +
    'Say how the ball should hook, and layouts differ.',
  'usual-arrives-more': ({ usual, usualGutterShare, layout, ahead, gutterShare }) =>
    `Drill the usual ${usual}: ${layout} is ahead of it in ${percent(ahead)} of 100 simulated tries, but does not reach the pins ` +
    `in ${percent(gutterShare)} of 100; the usual does not in ${percent(usualGutterShare)}.`,
  'usual-as-good': (found, units) =>
    `The usual ${found.usual} is as good: you would not see the difference. This one is ahead of it in ${tries(found)}, but ` +
    `${littleText(ofBoth(found, units))}; ${shotsText(found, units)}. ${tiesText(found.ties, found.of)}`,
  'practice-sees-more': (found, units) =>
    `Ahead of the usual ${found.usual} in ${tries(found)}. By physics you would not see the difference (${ofPhysics(found, units)}; ` +
    `${shotsText(found, units)}). If practice is right, it is ${sizeText(found.difference.practice.size, found.readings, units)}.`,
  'pull-apart': (found, units) =>
    `Physics and practice disagree. Compared with the usual ${found.usual} it is ${ofPhysics(found, units)} by physics, ` +
    `${sizeText(found.difference.practice.size, found.readings, units)} by practice; with both combined you would not see the difference. ` +
    `It is ahead in ${tries(found)}; ${shotsText(found, units)}.`,
  'barely-seen': (found, units) =>
    `Ahead of the usual ${found.usual} in ${tries(found)}: ${ofBoth(found, units)}. You would need a night of shots with each to see that: ${shotsText(found, units)}.`,
  'seen-and-sure': (found, units) =>
    `Ahead of the usual ${found.usual} in ${tries(found)}: ${ofBoth(found, units)}. You would see it in a game with each: ${shotsText(found, units)}.`,
  'seen-not-sure': (found, units) =>
    `Compared with the usual ${found.usual}: ${ofBoth(found, units)}, which you would see in a game with each. It is ahead in ${isProbable(found.ahead) ? '' : 'only '}${tries(found)}. Your shots vary by ${scatterText(found.scatter, found.readings, units)}.`,
};

const tries = ({ ahead }: Found): string => `${percent(ahead)} of 100 simulated tries`;

const ofPhysics = ({ difference, readings }: Found, units: Units): string =>
  sizeText(difference.physics.size, readings, units);

const ofBoth = ({ difference, readings }: Found, units: Units): string =>
  sizeText(difference.weighed.size, readings, units);

const littleText = (size: string): string =>
  size === NOTHING ? 'only in what is too small to show' : `only ${size}`;

const shotsText = ({ scatter, readings }: Found, units: Units): string =>
  `your shots vary by ${scatterText(scatter, readings, units)}`;

const tiesText = (ties: number, of: number): string =>
  `${ties} of ${of} layouts tie: choose one that is easy to mark, keeps clear of the holes or has worked for you.`;
