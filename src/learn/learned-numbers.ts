import { mean, sampleStandardDeviation } from 'simple-statistics';
import { DEGREE, INCH, MPH, RPM, to } from '../base/units.js';
import type { LearnedNumber, LearnedNumberId } from '../records/answers/learned-answer.js';
import type { Bowler } from '../records/schemas/bowler.js';
import type { Lane } from '../records/schemas/lane.js';
import { USUAL_FRICTION } from '../simulate/worlds/assumed-surface.js';
import { drawsOf, type KnownScores } from '../simulate/worlds/draws.js';
import { drawLasting, type Lasting, type LastingCoordinate } from '../simulate/worlds/lasting.js';
import type { FittedLog } from './fit-log.js';
import { whatIsKnown, whatWasKnown } from './what-is-known.js';

/** A number in the unit that people read, of a world, a bowler and a lane. */
interface ReadAs {
  readonly id: LearnedNumberId;
  readonly of: (lasting: Lasting, bowler: Bowler, lane: Lane, radius: number) => number;
}

const READ_AS: Readonly<Record<LastingCoordinate, ReadAs>> = {
  speedMean: { id: 'speedMph', of: ({ speed }, { speedMph }) => speedMph + to(speed, MPH) },
  spinMean: { id: 'revRateRpm', of: ({ spin }, { revRateRpm }) => revRateRpm + to(spin, RPM) },
  axisTiltMean: {
    id: 'axisTiltDeg',
    of: ({ axisTilt }, { axisTiltDeg }) => axisTiltDeg + to(axisTilt, DEGREE),
  },
  axisRotationMean: {
    id: 'axisRotationDeg',
    of: ({ axisRotation }, { axisRotationDeg }) => axisRotationDeg + to(axisRotation, DEGREE),
  },
  papOver: {
    id: 'papOverIn',
    of: ({ papOver }, { pap }, _lane, radius) => pap.overIn + to(radius * papOver, INCH),
  },
  papUp: { id: 'papUpIn', of: ({ papUp }, { pap }, _lane, radius) => pap.upIn + to(radius * papUp, INCH) },
  frictionOiled: {
    id: 'frictionOiled',
    of: ({ surface }, _, { frictionOiled = USUAL_FRICTION.oiled }) =>
      frictionOiled * surface.frictionOiledFactor,
  },
  frictionDry: {
    id: 'frictionDry',
    of: ({ surface }, _, { frictionDry = USUAL_FRICTION.dry }) => frictionDry * surface.frictionDryFactor,
  },
  filmScale: { id: 'filmScale', of: ({ surface }) => surface.filmScale },
  lawShape: { id: 'lawShape', of: ({ surface }) => surface.lawShape },
  finishExponent: { id: 'finishExponent', of: ({ surface }) => surface.finishExponent },
  finishOnDry: { id: 'finishOnDry', of: ({ surface }) => surface.finishOnDry },
  carriedShare: { id: 'carriedShare', of: ({ surface }) => surface.carriedShare },
  wornPerPass: { id: 'wornPerPass', of: ({ surface }) => surface.wornPerPass },
  bandWidth: { id: 'bandWidthIn', of: ({ surface }) => to(surface.bandWidth, INCH) },
  burnPerGame: { id: 'burnPerGame', of: ({ surface }) => surface.burnPerGame },
  carriedDown: { id: 'carriedDown', of: ({ surface }) => surface.carriedDown },
};

/** Worlds over which a number's mean and spread are taken, before and after alike. */
const WORLDS = 256;

/** A number counts as learned if its spread has fallen below this share (a choice of this project). */
const LEARNED_BELOW = 0.8;

/** Each number that lasts, on the lane asked about, before and after the log; the one learned most is first. */
export function learnedNumbers(log: FittedLog, bowler: Bowler, seed: number): LearnedNumber[] {
  const { uncertainty, ready, lane } = log;
  const { radius } = ready[0].published;
  const [before, after] = [whatWasKnown(log), whatIsKnown(log, 'lasts')].map((known) =>
    drawnFrom(known, seed).map((draw) => drawLasting(draw, { uncertainty }, radius)),
  );
  return whatIsKnown(log)
    .coordinates.map((coordinate): LearnedNumber => {
      const { id, of } = READ_AS[coordinate as LastingCoordinate];
      const spreadOf = (worlds: readonly Lasting[]) => {
        const values = worlds.map((lasting) => of(lasting, bowler, lane, radius));
        return { mean: mean(values), deviation: sampleStandardDeviation(values) };
      };
      const [was, is] = [spreadOf(before), spreadOf(after)];
      const share = is.deviation / was.deviation;
      return { id, before: was, after: is, leftShare: share, isLearned: share < LEARNED_BELOW };
    })
    .sort((a, b) => a.leftShare - b.leftShare);
}

const drawnFrom = (known: KnownScores, seed: number) =>
  Array.from({ length: WORLDS }, (_, n) => drawsOf(seed, n, known));
