import type { Solid } from '../../ball/solid/layered-core.js';
import { solidReach } from '../../ball/solid/solid-reach.js';
import { from, MM, to } from '../../base/units.js';
import type { Caution } from '../../records/answers/statements/cautions.js';
import type { RefusalStatement } from '../../records/refusals/refusal.js';
import { type Core, LENGTH_UNITS, type LengthUnit } from '../../records/schemas/core.js';
import { LENGTH } from './core-pose.js';
import { partName } from './part-name.js';

/** Least and greatest thickness of a possible and of a usual cover, m (no source). */
const POSSIBLE_COVER = [from(2, MM), from(50, MM)] as const;
const USUAL_COVER = [from(12, MM), from(32, MM)] as const;
/** Reach of the smallest possible and of the smallest usual core from the ball's centre, m (no source). */
const POSSIBLE_REACH = from(20, MM);
const USUAL_REACH = from(45, MM);

/** Faults of a core that does not fit inside its cover, and warnings about the unit of its lengths. */
interface CoreRoom {
  readonly faults: readonly RefusalStatement[];
  readonly warnings: readonly Caution[];
}

/**
 * Checks that a cover is possible and that the core lies inside it. Where the lengths make no ball but would make a
 * usual one in another unit, the unit is the fault.
 *
 * @param solids  of the core's parts, in their order, in C
 * @param radius  the ball's, m
 */
export function coreRoom(core: Core, solids: readonly Solid[], radius: number): CoreRoom {
  const reaches = solids.map(solidReach);
  const cover = from(core.cover.thickness, LENGTH[core.unit]);
  const doubts = unitGroups(core, cover, reaches).flatMap((group) => unitDoubt(group, radius));
  const slips = doubts.flatMap(({ fault }) => fault ?? []);
  return {
    faults: slips.length > 0 ? slips : sizeFaults(core, cover, reaches, radius),
    warnings: doubts.flatMap(({ warning }) => warning ?? []),
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
function unitDoubt(
  group: UnitGroup,
  radius: number,
): readonly { readonly fault?: RefusalStatement; readonly warning?: Caution }[] {
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

  if (makes(group.unit, POSSIBLE_COVER, POSSIBLE_REACH)) return [{ warning: unlikelyUnit(group, better) }];
  const inUnit = (m: number): number => to(m, LENGTH[group.unit]);
  const fault: RefusalStatement = {
    code: 'core-unit',
    params: {
      field: group.field,
      unit: group.unit,
      radius: inUnit(radius),
      coverThickness: group.scalesCover ? inUnit(group.cover) : null,
      reach: group.reach > 0 ? inUnit(group.reach) : null,
      usualWith: better,
    },
  };
  return [{ fault }];
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
