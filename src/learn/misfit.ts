import { Matrix, solve } from 'ml-matrix';
import { shareBelow } from '../math/normal.js';
import { chanceOfMore } from './chance-of-more.js';
import type { FittedLog } from './fit-log.js';
import { pointOf } from './log-model.js';
import { READ, type ReadId } from './readings.js';

/** How far some readings lie from what all other readings predict. */
interface Surprise {
  /** The reading, or the night by its place. */
  readonly of: { readonly reading: ReadId } | { readonly night: number };
  readonly means: number;
  /** Probability of as much or more if the model is right. */
  readonly chance: number;
}

/** An assumption that may be wrong, and by how much it is wrong according to the log. */
interface MisfitCause {
  readonly code: 'reads-off' | 'pattern-length';
  /** The reading that may be off, in the unit in which it is read; null where it is the pattern's length, ft. */
  readonly reading: ReadId | null;
  /** The lane of the pattern; null where it is a reading. */
  readonly lane: string | null;
  readonly by: number;
  readonly deviation: number;
}

export interface LogMisfit {
  readonly chiSquare: number;
  readonly means: number;
  /** Probability of as great a misfit of all means together, or a greater one, if the model is right. */
  readonly chance: number;
  /** Greatest probability that a log looks as odd as this, in all means together or by its surest cause, if the model is right. */
  readonly luck: number;
  readonly isDoubtful: boolean;
  /** Least likely first. */
  readonly surprises: readonly Surprise[];
  /** In order of their size in standard deviations, greatest first. */
  readonly causes: readonly MisfitCause[];
}

/** Greatest share of logs that fit the model and are doubted all the same. */
const DOUBTED = 0.02;

/** If a log gives the length of a pattern no better than to this standard deviation, ft, the length explains nothing. */
const MOST_LONGER_FT = 10;

/** Step, ft, of the difference that shows what a longer pattern does. */
const LONGER_FT = 1;

/**
 * Whether a log fits the model: chi-square of the means of nights under the prior, and how far each
 * reading and each night lies from what all others predict (leave-one-out in a normal model; Rasmussen & Williams, Gaussian Processes for
 * Machine Learning, 2006, §5.4.2; from memory). For some possible causes the log also gives the size that explains it best (one step
 * from zero, as in a score test).
 *
 * A cause whose effect friction can have as well goes unnoticed.
 */
export function misfitOf(log: FittedLog): LogMisfit {
  const { rows, fit } = log;
  const { surprise, precision } = fit;
  const weighed = precision.mmul(surprise);
  const chiSquare = surprise.transpose().mmul(weighed).get(0, 0);
  const chance = chanceOfMore(chiSquare, rows.length);
  const causes = causesOf(log, weighed);
  const [{ by, deviation }] = causes;
  const chanceOfCause = causes.length * 2 * shareBelow(-Math.abs(by) / deviation); // two-sided, Bonferroni: the surest of so many
  const luck = Math.min(1, 2 * Math.min(chance, chanceOfCause)); // Bonferroni again: the odder of two tests
  const isDoubtful = luck < DOUBTED;
  const surprises = surprisesOf(log, weighed);
  return { chiSquare, means: rows.length, chance, luck, isDoubtful, surprises, causes };
}

/**
 * How far each reading, and each of several nights, lies from what all others predict; the least likely first.
 *
 * @param weighed  precision × surprise of the whole log
 */
function surprisesOf({ rows, nights, fit: { precision } }: FittedLog, weighed: Matrix): Surprise[] {
  const placesWhere = (is: (row: (typeof rows)[number]) => boolean): number[] =>
    rows.flatMap((row, i) => (is(row) ? [i] : []));
  const surpriseOf = (of: Surprise['of'], places: readonly number[]): Surprise => {
    const own = weighed.selection([...places], [0]);
    const without = precision.selection([...places], [...places]);
    const off = own.transpose().mmul(solve(without, own)).get(0, 0);
    return { of, means: places.length, chance: chanceOfMore(off, places.length) };
  };
  return [
    ...READ.map((reading, at) => ({ of: { reading }, places: placesWhere((row) => row.at === at) })),
    ...(nights.length > 1 ? [...nights.keys()] : []).map((night) => ({
      of: { night },
      places: placesWhere((row) => row.night === night),
    })),
  ]
    .filter(({ places }) => places.length > 0 && places.length < rows.length)
    .map(({ of, places }) => surpriseOf(of, places))
    .sort((a, b) => a.chance - b.chance);
}

/** Possible causes, each with the size that explains the log best: readings that are off, patterns of another length. The surest first. */
function causesOf(log: FittedLog, weighed: Matrix): MisfitCause[] {
  const { rows, nights, fit } = log;
  const causeOf = (
    cause: Pick<MisfitCause, 'code' | 'reading' | 'lane'>,
    acts: readonly number[],
  ): MisfitCause => {
    const column = Matrix.columnVector([...acts]);
    const information = column.transpose().mmul(fit.precision).mmul(column).get(0, 0);
    const by = column.transpose().mmul(weighed).get(0, 0) / information;
    return { ...cause, by, deviation: 1 / Math.sqrt(information) };
  };
  const lengths = lengthSlopes(log);
  return [
    ...READ.filter((_, at) => rows.some((row) => row.at === at)).map((reading) =>
      causeOf(
        { code: 'reads-off', reading, lane: null },
        rows.map(({ at }) => (READ[at] === reading ? 1 : 0)),
      ),
    ),
    ...[...new Set(nights.map(({ lane }) => lane))].map((lane) =>
      causeOf(
        {
          code: 'pattern-length',
          reading: null,
          lane: nights.find((each) => each.lane === lane)!.night.lane.name,
        },
        lengths.map((moved, i) => (nights[rows[i].night].lane === lane ? moved : 0)),
      ),
    ),
  ]
    .filter(({ code, deviation }) => code === 'reads-off' || deviation < MOST_LONGER_FT)
    .sort((a, b) => Math.abs(b.by / b.deviation) - Math.abs(a.by / a.deviation));
}

/** Change of each reading per foot by which the pattern is longer. */
function lengthSlopes({ nights, unknowns, rows, fit }: FittedLog): readonly number[] {
  const moves = nights.map(({ model }, night) => {
    const point = pointOf(unknowns, nights, fit.mean, night);
    const here = model.readingsOf(model.roll(point));
    const there = model.readingsOf(model.rollLonger(LONGER_FT)(point));
    return there.map((each, i) => (each - here[i]) / LONGER_FT);
  });
  return rows.map(({ night, at }) => moves[night][at]);
}
