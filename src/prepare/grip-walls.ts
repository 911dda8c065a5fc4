import { boreLips } from '../ball/drill/bore-lip.js';
import { type BoreWall, boreWalls } from '../ball/drill/bore-walls.js';
import { from, INCH, to } from '../base/units.js';
import { type Hole, holeName } from '../layout/hole.js';
import type { Caution } from '../records/answers/statements/cautions.js';
import { Refusal, type RefusalStatement } from '../records/refusals/refusal.js';
import { loadPractice } from '../records/shared/shared-data.js';

/**
 * Warnings about the walls between the bores of a grip, and about the lips over slanted bores.
 *
 * Two fingers without side pitch both point at the ball's centre: with a usual bridge their bores meet below the surface, whatever
 * the layout. That is drilled all the same (common practice, no source), and only mentioned. No other two holes may meet, nor two fingers
 * at the surface.
 *
 * @param radius  the ball's, m
 * @param field   path of the grip in its record, for the error
 * @throws {Refusal} `bores-meet` for every two holes with nothing left between them, or `no-lip` for every hole with nothing left over it
 */
export function gripWalls(holes: readonly Hole[], radius: number, field: string): Caution[] {
  const walls = boreWalls(holes, radius);
  const lips = boreLips(holes, radius);
  const refusals: RefusalStatement[] = [
    ...walls.filter(isNothingLeft).map((wall) => boresMeet(wall, field)),
    ...lips
      .filter(({ least }) => !(least > 0))
      .map(({ hole }) => ({ code: 'no-lip', params: { field, hole: holeName(hole) } }) as const),
  ];
  if (refusals.length > 0) throw new Refusal(refusals);
  const { leastBoreWallIn: leastIn } = loadPractice();
  const thin = walls.filter((wall) => widthOf(wall) < from(leastIn, INCH));
  const thinLips = lips.filter(({ least }) => least < from(leastIn, INCH));
  return [
    ...(thin.length > 0
      ? [
          {
            code: 'thin-bore-walls',
            params: {
              leastIn,
              walls: thin.map((wall) => ({ ...namesOf(wall), widthIn: to(widthOf(wall), INCH) })),
            },
          } as const,
        ]
      : []),
    ...(thinLips.length > 0
      ? [
          {
            code: 'thin-lips',
            params: {
              leastIn,
              lips: thinLips.map(({ hole, least }) => ({ hole: holeName(hole), widthIn: to(least, INCH) })),
            },
          } as const,
        ]
      : []),
    ...walls.flatMap((wall): Caution[] =>
      wall.meetsAt === null
        ? []
        : [
            {
              code: 'bores-meet-below',
              params: { ...namesOf(wall), depthIn: to(wall.meetsAt, INCH), sleevesToIn: sleevesTo(wall) },
            },
          ],
    ),
  ];
}

const boresMeet = (wall: BoreWall, field: string): RefusalStatement => ({
  code: 'bores-meet',
  params: {
    field,
    ...namesOf(wall),
    overlapIn: toThousandth(wall.atMouth < 0 ? -wall.atMouth : wall.overlap),
    depthIn: wall.atMouth < 0 ? 0 : toThousandth(wall.meetsAt ?? 0),
  },
});

/** A thickness as shown, in; one above 0 is not rounded to 0. */
const toThousandth = (length: number): number => Math.max(0.001, Number(to(length, INCH).toFixed(3)));

const isNothingLeft = (wall: BoreWall): boolean =>
  wall.atMouth < 0 || (wall.meetsAt !== null && !areFingers(wall));

/** The wall that matters to a shop: between fingers the visible one, otherwise the least. */
const widthOf = (wall: BoreWall): number => (areFingers(wall) ? wall.atMouth : Math.max(0, wall.least));

const areFingers = ({ one, other }: BoreWall): boolean =>
  [one, other].every(({ name }) => name === 'middle' || name === 'ring');

const namesOf = ({ one, other }: BoreWall) => {
  const [hole, beside] = [holeName(one), holeName(other)];
  return { hole, other: beside === hole ? `the other ${beside}` : beside };
};

/** Depth to which both holes have a slug or an insert, in; null where one has none. */
const sleevesTo = ({ one, other }: BoreWall): number | null =>
  one.sleeve && other.sleeve ? to(Math.min(one.sleeve.height, other.sleeve.height), INCH) : null;
