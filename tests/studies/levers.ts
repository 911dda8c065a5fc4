import type { Bowler } from '../../src/records/schemas/bowler.js';
import { centred, withMassBias, withSideWeight } from './alterations.js';
import type { Case } from './case.js';
import type { QuantityName } from './quantities.js';

/** What practice expects of a quantity as the lever goes from low to high. Common practice, no source. */
export interface Claim {
  readonly quantity: QuantityName;
  readonly expects: 1 | -1;
  readonly words: string;
}

/** One thing moved alone, from `low` to `high`. */
export interface Lever {
  readonly name: string;
  readonly low: Case;
  readonly high: Case;
  readonly claims: readonly Claim[];
}

/** The two balls of the study: a plain core, and an asymmetric one for what turns on a mass bias. */
interface StudyBalls {
  readonly plain: Case['ball'];
  readonly asymmetric: Case['ball'];
}

const MORE_FLARE: Claim = { quantity: 'flare', expects: 1, words: 'more flare' };
const LESS_FLARE: Claim = { quantity: 'flare', expects: -1, words: 'less flare' };
const MORE_HOOK: Claim = { quantity: 'totalHook', expects: 1, words: 'more hook' };
const LESS_HOOK: Claim = { quantity: 'totalHook', expects: -1, words: 'less hook' };
const HOOKS_LATER: Claim = { quantity: 'hookStart', expects: 1, words: 'hooks later' };
const HOOKS_EARLIER: Claim = { quantity: 'hookStart', expects: -1, words: 'hooks earlier' };
const ROLLS_LATER: Claim = { quantity: 'rollStart', expects: 1, words: 'rolls later' };
const LONGER: Claim = { quantity: 'window', expects: 1, words: 'longer window' };
const SHORTER: Claim = { quantity: 'window', expects: -1, words: 'shorter window' };
const SHARPER: Claim = { quantity: 'sharpness', expects: 1, words: 'sharper' };
const SMOOTHER: Claim = { quantity: 'sharpness', expects: -1, words: 'smoother' };

/** Practice speaks of "later" without saying which; both places are looked at. */
const LATER = [HOOKS_LATER, ROLLS_LATER];

type Change<K extends keyof Case> = Partial<Case[K]>;

/** What a bowler and a driller can change, one at a time around one bowler and one layout. */
export function levers(bowler: Bowler, layout: Case['layout'], balls: StudyBalls): readonly Lever[] {
  const base: Case = { bowler, layout, ball: balls.plain };
  const biased: Case = { ...base, ball: balls.asymmetric };
  const laid = (
    on: Case,
    name: string,
    claims: Claim[],
    low: Change<'layout'>,
    high: Change<'layout'>,
  ): Lever => {
    const end = (change: Change<'layout'>): Case => ({ ...on, layout: { ...layout, ...change } });
    return { name, claims, low: end(low), high: end(high) };
  };
  const made = (
    on: Case,
    name: string,
    claims: Claim[],
    low: Change<'ball'>,
    high: Change<'ball'>,
  ): Lever => {
    const end = (change: Change<'ball'>): Case => ({ ...on, ball: { ...on.ball, ...change } });
    return { name, claims, low: end(low), high: end(high) };
  };
  const thrown = (name: string, claims: Claim[], low: Change<'bowler'>, high: Change<'bowler'>): Lever => {
    const end = (change: Change<'bowler'>): Case => ({ ...base, bowler: { ...bowler, ...change } });
    return { name, claims, low: end(low), high: end(high) };
  };
  const { speedMph, revRateRpm, axisRotationDeg } = bowler;
  return [
    laid(base, 'pin-to-PAP 1 → 3 3/8 in', [MORE_FLARE, MORE_HOOK], { pinToPapIn: 1 }, { pinToPapIn: 3.375 }),
    laid(
      base,
      'pin-to-PAP 3 3/8 → 5 3/4 in',
      [LESS_FLARE, LESS_HOOK],
      { pinToPapIn: 3.375 },
      { pinToPapIn: 5.75 },
    ),
    laid(
      { ...base, alter: centred },
      'pin-to-PAP 3 3/8 → 5 3/4 in, centre of mass at the ball’s centre',
      [LESS_FLARE, LESS_HOOK],
      { pinToPapIn: 3.375 },
      { pinToPapIn: 5.75 },
    ),
    laid(base, 'drilling angle 20 → 80°', LATER, { drillingAngleDeg: 20 }, { drillingAngleDeg: 80 }),
    laid(
      biased,
      'drilling angle 20 → 80°, asymmetric ball',
      LATER,
      { drillingAngleDeg: 20 },
      { drillingAngleDeg: 80 },
    ),
    laid(
      base,
      'VAL angle 20 → 70° (buffer 1 1/4 → 4 1/8 in)',
      [LONGER, SMOOTHER],
      { valAngleDeg: 20 },
      { valAngleDeg: 70 },
    ),
    laid(
      biased,
      'VAL angle 20 → 70°, asymmetric ball',
      [LONGER, SMOOTHER],
      { valAngleDeg: 20 },
      { valAngleDeg: 70 },
    ),
    laid(
      { ...base, alter: centred },
      'VAL angle 20 → 70°, centre of mass at the ball’s centre',
      [LONGER, SMOOTHER],
      { valAngleDeg: 20 },
      { valAngleDeg: 70 },
    ),
    made(
      base,
      'differential 0.020 → 0.050 in',
      [MORE_FLARE, MORE_HOOK],
      { differentialIn: 0.02 },
      { differentialIn: 0.05 },
    ),
    made(
      biased,
      'intermediate differential 0.0005 → 0.020 in, undrilled',
      [SHORTER, SHARPER],
      { intermediateDifferentialIn: 0.0005 },
      { intermediateDifferentialIn: 0.02 },
    ),
    {
      name: 'intermediate differential 0 → 0.020 in, drilled, nothing else moved',
      claims: [SHORTER, SHARPER],
      low: { ...biased, alter: withMassBias(0) },
      high: { ...biased, alter: withMassBias(0.02) },
    },
    made(base, 'RG 2.48 → 2.60 in', LATER, { rgIn: 2.48 }, { rgIn: 2.6 }),
    {
      name: 'side weight −1 → +1 oz, nothing else moved',
      claims: [HOOKS_LATER, MORE_HOOK],
      low: { ...base, alter: withSideWeight(-1) },
      high: { ...base, alter: withSideWeight(1) },
    },
    made(
      base,
      'finish 500 → 4000 grit',
      [...LATER, LESS_HOOK, SHARPER],
      { surfaceGrit: 500 },
      { surfaceGrit: 4000 },
    ),
    thrown(
      'speed −1 → +1 mph',
      [...LATER, LESS_HOOK],
      { speedMph: speedMph - 1 },
      { speedMph: speedMph + 1 },
    ),
    thrown(
      'revs −50 → +50 rpm',
      [HOOKS_EARLIER, MORE_HOOK],
      { revRateRpm: revRateRpm - 50 },
      { revRateRpm: revRateRpm + 50 },
    ),
    thrown('tilt 5 → 25°', LATER, { axisTiltDeg: 5 }, { axisTiltDeg: 25 }),
    thrown(
      'rotation −15 → +15°',
      [...LATER, SHARPER, MORE_HOOK],
      { axisRotationDeg: axisRotationDeg - 15 },
      { axisRotationDeg: axisRotationDeg + 15 },
    ),
  ];
}
