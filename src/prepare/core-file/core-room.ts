import type { Solid } from '../../ball/solid/layered-core.js';
import { solidReach } from '../../ball/solid/solid-reach.js';
import { from, MM, to } from '../../base/units.js';
import type { RefusalStatement } from '../../records/refusals/refusal.js';
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
  readonly faults: readonly RefusalStatement[];
  readonly warnings: readonly string[];
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
  const slips = doubts.filter((doubt) => typeof doubt !== 'string');
  return {
    faults: slips.length > 0 ? slips : sizeFaults(core, cover, reaches, radius),
    warnings: doubts.filter((doubt) => typeof doubt === 'string'),
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
function unitDoubt(group: UnitGroup, radius: number): [] | [RefusalStatement | string] {
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

  if (makes(group.unit, POSSIBLE_COVER, POSSIBLE_REACH)) return [unusualWith(group, better)];
  const inUnit = (m: number): number => to(m, LENGTH[group.unit]);
  return [
    {
      code: 'core-unit',
      params: {
        field: group.field,
        unit: group.unit,
        radius: inUnit(radius),
        coverThickness: group.scalesCover ? inUnit(group.cover) : null,
        reach: group.reach > 0 ? inUnit(group.reach) : null,
        usualWith: better,
      },
    },
  ];
}

function unusualWith({ field, unit, cover, scalesCover, reach }: UnitGroup, better: readonly LengthUnit[]) {
  const length = (m: number): string => `${Number(to(m, LENGTH[unit]).toPrecision(3))} ${unit}`;
  const what = [
    ...(scalesCover ? [`the cover is ${length(cover)} thick`] : []),
    ...(reach > 0 ? [`the core reaches ${length(reach)} from the centre`] : []),
  ].join(' and ');
  const hint = `With ${better.map((each) => `"${each}"`).join(' or ')} it would be a usual core: is that the unit?`;
  return `With the unit "${unit}" in the core file (${field}) ${what}. ${hint}`;
}

function sizeFaults(
  core: Core,
  cover: number,
  reaches: readonly number[],
  radius: number,
): readonly RefusalStatement[] {
  const { unit } = core;
  const inUnit = (m: number): number => to(m, LENGTH[unit]);
  const [thin, thick] = POSSIBLE_COVER;
  if (cover < thin || cover > thick)
    return [
      {
        code: 'cover-thickness',
        params: {
          unit,
          thickness: inUnit(cover),
          least: inUnit(thin),
          most: inUnit(thick),
          usualLeast: inUnit(from(19, MM)),
          usualMost: inUnit(from(25, MM)),
        },
      },
    ];
  const room = radius - cover;
  return core.parts.flatMap((part, i): RefusalStatement[] =>
    reaches[i] > room
      ? [
          {
            code: 'part-outside',
            params: { part: partName(part, i), unit, reach: inUnit(reaches[i]), room: inUnit(room) },
          },
        ]
      : [],
  );
}
