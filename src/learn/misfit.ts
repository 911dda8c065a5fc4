import { Matrix, solve } from 'ml-matrix';
import { chanceOfMore } from './chance-of-more.js';
import type { FittedLog } from './fit-log.js';
import { pointOf } from './log-model.js';
import { READ, type ReadId } from './readings.js';

/** How far some readings lie from what all others let expect. */
export interface Surprise {
  /** The reading, or the night by its place. */
  readonly of: { readonly reading: ReadId } | { readonly night: number };
  readonly means: number;
  /** The chance of as much or more if the log were as it is taken to be. */
  readonly chance: number;
}

/** Something that may be otherwise than it is taken to be, and what of it the log itself would say. */
export interface MisfitCause {
  readonly code: 'reads-off' | 'pattern-length';
  /** The reading that would be off, boards, ft or in as it is read; null where it is the pattern's length, ft. */
  readonly reading: ReadId | null;
  /** The lane of the pattern; null where it is a reading. */
  readonly lane: string | null;
  readonly by: number;
  readonly deviation: number;
}

export interface LogMisfit {
  readonly chiSquare: number;
  readonly means: number;
  /** The chance of as great a misfit or a greater one if everything were as it is taken to be. */
  readonly chance: number;
  readonly isDoubtful: boolean;
  /** Least likely first. */
  readonly surprises: readonly Surprise[];
  /** The surest first: by how much of its deviation. */
  readonly causes: readonly MisfitCause[];
}

/** Logs that are as they are taken to be are doubted as often as this. */
const DOUBTED = 0.01;

/** One cause in six that are tried is as sure by luck as often as `DOUBTED`: two-sided, 0.01/6. */
const SURE = 3.14;

/** A pattern of which a log says less than to as many feet moves no reading of it: it explains nothing. */
const MOST_LONGER_FT = 10;

/** Feet by which a pattern is lengthened to see what that does. */
const LONGER_FT = 1;

/**
 * Whether a log can be as it is taken to be: chi-square of the means of nights before anything was learned from them, and what each
 * reading and each night adds when all others are known (leave-one-out of a normal model; Rasmussen & Williams, Gaussian Processes for
 * Machine Learning, 2006, §5.4.2; from memory). For some causes the log says by how much: the step that explains most, the score of
 * statistics.
 *
 * What a cause would do and friction can do as well is not noticed.
 */
export function misfitOf(log: FittedLog): LogMisfit {
  const { rows, nights, fit } = log;
  const { surprise, precision } = fit;
  const weighed = precision.mmul(surprise);
  const chiSquare = surprise.transpose().mmul(weighed).get(0, 0);
  const chance = chanceOfMore(chiSquare, rows.length);

  const surpriseOf = (of: Surprise['of'], places: readonly number[]): Surprise => {
    const own = weighed.selection([...places], [0]);
    const without = precision.selection([...places], [...places]);
    const off = own.transpose().mmul(solve(without, own)).get(0, 0);
    return { of, means: places.length, chance: chanceOfMore(off, places.length) };
  };
  const placesWhere = (is: (row: (typeof rows)[number]) => boolean): number[] =>
    rows.flatMap((row, i) => (is(row) ? [i] : []));
  const surprises = [
    ...READ.map((reading, at) => ({ of: { reading }, places: placesWhere((row) => row.at === at) })),
    ...(nights.length > 1 ? [...nights.keys()] : []).map((night) => ({
      of: { night },
      places: placesWhere((row) => row.night === night),
    })),
  ]
    .filter(({ places }) => places.length > 0 && places.length < rows.length)
    .map(({ of, places }) => surpriseOf(of, places))
    .sort((a, b) => a.chance - b.chance);

  const causeOf = (
    cause: Pick<MisfitCause, 'code' | 'reading' | 'lane'>,
    acts: readonly number[],
  ): MisfitCause => {
    const column = Matrix.columnVector([...acts]);
    const information = column.transpose().mmul(precision).mmul(column).get(0, 0);
    const by = column.transpose().mmul(weighed).get(0, 0) / information;
    return { ...cause, by, deviation: 1 / Math.sqrt(information) };
  };
  const lengths = lengthSlopes(log);
  const causes = [
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
  const isDoubtful = chance < DOUBTED || Math.abs(causes[0].by / causes[0].deviation) > SURE;
  return { chiSquare, means: rows.length, chance, isDoubtful, surprises, causes };
}

/** What each reading would move if the pattern were a foot longer. */
function lengthSlopes({ nights, unknowns, rows, fit }: FittedLog): readonly number[] {
  const moves = nights.map(({ model }, night) => {
    const point = pointOf(unknowns, nights, fit.mean, night);
    const here = model.readingsOf(model.roll(point));
    const there = model.readingsOf(model.rollLonger(LONGER_FT)(point));
    return there.map((each, i) => (each - here[i]) / LONGER_FT);
  });
  return rows.map(({ night, at }) => moves[night][at]);
}
