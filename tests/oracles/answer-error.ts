import { BOARD, LANE_WIDTH } from '../../src/base/constants.js';
import { DEGREE, to } from '../../src/base/units.js';
import { reactionNumbers } from '../../src/motion/reaction/reaction.js';
import { ANSWER_STEP } from '../../src/motion/shot/answer-step.js';
import { type LeanShot, rollLeanShot } from '../../src/motion/shot/shot.js';
import type { ShotSettings } from '../../src/motion/shot/shot-settings.js';
import { type RandomShot, randomShots } from '../support/random-shots.js';

/** How finely a shot is computed: step, s, and places of an oil ring a turn. */
type Setting = Pick<ShotSettings, 'step' | 'ringPlaces'>;

const ANSWER: Setting = { step: ANSWER_STEP };

/** So fine that a finer setting moves no shot by a thousandth of a board. */
const FINE: Setting = { step: 0.0005, ringPlaces: 512 };

/** A ball that comes nearer to the gutter than this, m, may fall in by one step and not by the other. */
const GRAZING = 0.1 * BOARD;

/** What the setting for answers errs by, one entry a shot; each ascending. */
interface AnswerErrors {
  readonly boards: readonly number[];
  readonly entryDegrees: readonly number[];
  /** Shots left out: in the gutter by both steps; so near it that the step decides, by number. */
  readonly gutter: number;
  readonly grazing: readonly number[];
}

/** Rolls random shots at the setting for answers and on the converged path until `count` of them reach the pins. */
export function answerErrors(count: number): AnswerErrors {
  const boards: number[] = [];
  const entryDegrees: number[] = [];
  const grazing: number[] = [];
  let gutter = 0;
  const shots = randomShots(2 * count);
  for (let n = 0; boards.length < count; n++) {
    if (n === shots.length) throw new Error('too few of the random shots reach the pins');
    const { body } = shots[n];
    const [answer, fine] = [rollRandom(shots[n], ANSWER), rollRandom(shots[n], FINE)];
    if (outermost(fine) > LANE_WIDTH / 2 - GRAZING && outermost(answer) > LANE_WIDTH / 2 - GRAZING) {
      if (answer.outcome === 'gutter' && fine.outcome === 'gutter') gutter += 1;
      else grazing.push(n);
      continue;
    }
    if (answer.outcome !== 'pins' || fine.outcome !== 'pins') throw new Error(`shot ${n}: ${answer.outcome}`);
    const [a, b] = [answer, fine].map((shot) => reactionNumbers(shot, body.radius));
    boards.push(to(Math.abs(a.pinsX - b.pinsX), BOARD));
    entryDegrees.push(to(Math.abs(a.entryAngle - b.entryAngle), DEGREE));
  }
  const ascending = (values: number[]): number[] => values.sort((a, b) => a - b);
  return { boards: ascending(boards), entryDegrees: ascending(entryDegrees), gutter, grazing };
}

export const rollRandom = (
  { body, release, launch, surface, freshSurface }: RandomShot,
  setting: Setting,
): LeanShot => rollLeanShot(body, release, launch, surface, { ...setting, freshSurface });

const outermost = ({ x }: LeanShot): number => x.reduce((most, at) => Math.max(most, Math.abs(at)), 0);

/** The value below which a share of ascending values lies. */
export const quantile = (ascending: readonly number[], share: number): number =>
  ascending[Math.min(ascending.length - 1, Math.floor(share * ascending.length))];
