import type { Solid } from '../../ball/solid/layered-core.js';
import { solidReach } from '../../ball/solid/solid-reach.js';
import type { Fault } from '../../base/errors.js';
import { from, MM, to } from '../../base/units.js';
import type { Caution } from '../../records/answers/statements/cautions.js';
import { type Core, LENGTH_UNITS, type LengthUnit } from '../../records/schemas/core.js';
import { LENGTH } from './core-pose.js';
import { partName } from './part-name.js';

/** Least and greatest thickness of a cover, m: of one that can be, and of one that is usual (no source). */
const POSSIBLE_COVER = [from(2, MM), from(50, MM)] as const;
const USUAL_COVER = [from(12, MM), from(32, MM)] as const;
/** How far the least possible and the least usual core reach from the ball's centre, m (no source). */
const POSSIBLE_REACH = from(20, MM);
const USUAL_REACH = from(45, MM);

/** What stands in the way of a core inside its cover, and what makes one doubt the unit of its lengths. */
export interface CoreRoom {
  readonly faults: readonly Fault[];
  readonly warnings: readonly Caution[];
}

/**
 * Checks that a cover can be one and that the core lies inside it. Where the lengths make no ball but would make a
 * usual one in another unit, the unit is the fault.
 *
 * @param solids  of the core's parts, in their order, in C
 * @param radius  the ball's, m
 */
export function coreRoom(core: Core, solids: readonly Solid[], radius: number): CoreRoom {
  const reaches = solids.map(solidReach);
  const cover = from(core.cover.thickness, LENGTH[core.unit]);
  const doubts = unitGroups(core, cover, reaches).flatMap((group) => unitDoubt(group, radius));
  const slips = doubts.filter((doubt) => 'rule' in doubt);
  return {
    faults: slips.length > 0 ? slips : sizeFaults(core, cover, reaches, radius),
    warnings: doubts.filter((doubt) => 'code' in doubt),
  };
}

/** Lengths that are in one unit, and grow or shrink with it, m. */
interface UnitGroup {
  readonly field: string;
  readonly unit: LengthUnit;
  readonly cover: number;
  readonly scalesCover: boolean;
  /** How far they reach from the ball's centre. */
  readonly reach: number;
  /** How far the parts in other units reach. */
  readonly others: number;
}

/** The file's own lengths, and each mesh. */
function unitGroups(core: Core, cover: number, reaches: readonly number[]): readonly UnitGroup[] {
  const isMesh = core.parts.map(({ shape }) => shape === 'mesh');
  const farthest = (counts: (i: number) => boolean): number =>
    Math.max(0, ...reaches.filter((_, i) => counts(i)));
  return [
    {
      field: 'unit',
      unit: core.unit,
      cover,
      scalesCover: true,
      reach: farthest((i) => !isMesh[i]),
      others: farthest((i) => isMesh[i]),
    },
    ...core.parts.flatMap((part, i): UnitGroup[] =>
      part.shape === 'mesh'
        ? [
            {
              field: `${partName(part, i)}.unit`,
              unit: part.unit,
              cover,
              scalesCover: false,
              reach: reaches[i],
              others: farthest((j) => j !== i),
            },
          ]
        : [],
    ),
  ];
}

/** A fault when only another unit makes a ball, a warning when another makes a more usual one. */
function unitDoubt(group: UnitGroup, radius: number): [] | [Fault | Caution] {
  const makes = (unit: LengthUnit, [thin, thick]: readonly [number, number], leastReach: number): boolean => {
    const k = LENGTH[unit] / LENGTH[group.unit];
    const cover = group.scalesCover ? k * group.cover : group.cover;
    return (
      cover >= thin &&
      cover <= thick &&
      k * group.reach <= radius - cover &&
      Math.max(k * group.reach, group.others) >= leastReach
    );
  };
  if (makes(group.unit, USUAL_COVER, USUAL_REACH)) return [];
  const better = LENGTH_UNITS.filter((unit) => makes(unit, USUAL_COVER, USUAL_REACH));
  if (better.length === 0) return [];

  if (makes(group.unit, POSSIBLE_COVER, POSSIBLE_REACH)) return [unlikelyUnit(group, better)];
  const length = (m: number): string => lengthText(m, group.unit);
  const what = [
    ...(group.scalesCover ? [`the cover is ${length(group.cover)} thick`] : []),
    ...(group.reach > 0 ? [`the core reaches ${length(group.reach)} from the centre`] : []),
  ].join(' and ');
  const hint = `With ${better.map((unit) => `"${unit}"`).join(' or ')} it would be a usual core: is that the unit?`;
  return [
    {
      field: group.field,
      rule: `must be the unit its lengths are in, for a ball of ${length(radius)} radius`,
      got: `"${group.unit}", with which ${what}`,
      hint,
    },
  ];
}

function unlikelyUnit(
  { field, unit, cover, scalesCover, reach }: UnitGroup,
  usualWith: LengthUnit[],
): Caution {
  const inUnit = (m: number): number => to(m, LENGTH[unit]);
  return {
    code: 'unlikely-unit',
    params: {
      field,
      unit,
      cover: scalesCover ? inUnit(cover) : null,
      reach: reach > 0 ? inUnit(reach) : null,
      usualWith,
    },
  };
}

function sizeFaults(core: Core, cover: number, reaches: readonly number[], radius: number): readonly Fault[] {
  const length = (m: number): string => lengthText(m, core.unit);
  const [thin, thick] = POSSIBLE_COVER;
  if (cover < thin || cover > thick)
    return [
      {
        field: 'cover.thickness',
        rule: `must be ${length(thin)} to ${length(thick)}`,
        got: length(cover),
        hint: `${length(from(19, MM))} to ${length(from(25, MM))} is usual.`,
      },
    ];
  const room = radius - cover;
  return core.parts.flatMap((part, i) =>
    reaches[i] > room
      ? [
          {
            field: partName(part, i),
            rule: `must lie within ${length(room)} of the ball's centre, inside the cover`,
            got: `a point ${length(reaches[i])} from it`,
            hint: 'Make it smaller, move it, or make the cover thinner.',
          },
        ]
      : [],
  );
}

const lengthText = (m: number, unit: LengthUnit): string =>
  `${Number(to(m, LENGTH[unit]).toPrecision(3))} ${unit}`;
