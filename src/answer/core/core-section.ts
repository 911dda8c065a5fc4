import type { DenseSolid } from '../../ball/core/own-body.js';
import { type SectionPlane, seenOn } from '../../ball/section/section-plane.js';
import { solidSection } from '../../ball/section/solid-section.js';
import { toDigits } from '../../base/decimals.js';
import { INCH, to } from '../../base/units.js';
import { hypot } from '../../math/hypot.js';
import type { PlanePoint } from '../../math/polygon.js';
import { addScaled, scale, type Vec3 } from '../../math/vec3.js';
import type { OwnBall } from '../../prepare/own-core.js';
import type { CoreSection } from '../../records/answers/answer.js';
import { hasMassBias } from '../../records/schemas/core-families.js';
import type { HoleShadow } from './hole-shadows.js';

const ORIGIN_C: Vec3 = [0, 0, 0];

/** The planes that a core is shown cut by, in C: z through the pin, x toward the marker. */
const SECTION_PLANES: Readonly<Record<CoreSection['plane'], SectionPlane>> = {
  'pin-marker': { origin_C: ORIGIN_C, u_C: [1, 0, 0], v_C: [0, 0, 1] },
  equator: { origin_C: ORIGIN_C, u_C: [1, 0, 0], v_C: [0, 1, 0] },
};

/** What a section is made of: a core in its ball, whether or not it can be one. */
interface Cut {
  readonly radius: number; // m
  readonly solids: readonly DenseSolid[];
  /** Null where the core makes no ball. */
  readonly made: OwnBall | null;
  readonly holes: readonly HoleShadow[];
}

/** One section of a core, in inches: the parts' outlines, marks, principal axes, and the holes as shadows. */
export function coreSection(plane: CoreSection['plane'], { radius, solids, made, holes }: Cut): CoreSection {
  const cut = SECTION_PLANES[plane];
  const inches = (place: PlanePoint): [number, number] => [rounded(place[0]), rounded(place[1])];
  const seen = (p_C: Vec3): [number, number] => inches(seenOn(cut, p_C));
  return {
    plane,
    parts: solids.flatMap((solid, part) => {
      const loops = solidSection(solid, cut).map((loop) => loop.map(inches));
      return loops.length === 0 ? [] : [{ part, loops }];
    }),
    marks: [
      ...(plane === 'pin-marker' ? [{ mark: 'pin' as const, at: seen([0, 0, radius]) }] : []),
      { mark: 'marker', at: seen([radius, 0, 0]) },
      ...(made ? [{ mark: 'CG' as const, at: seen(made.p_BoBcm_C) }] : []),
      ...(made && hasMassBias(made.numbers.family)
        ? [{ mark: 'PSA' as const, at: seen(psaOf(made, radius)) }]
        : []),
    ],
    axes: made ? axesOf(made, radius, cut, seen) : [],
    holes: holes.map(({ hole, outlineOn }) => ({ hole, outline: outlineOn(cut).map(inches) })),
  };
}

/** The end of the high-RG axis on the marker's side, m. */
const psaOf = ({ inertia: { highAxis_B: axis } }: OwnBall, radius: number): Vec3 =>
  scale(axis[0] < 0 ? -radius : radius, axis);

/** Principal axes through the CG, a little beyond the ball, of those that lie along the plane rather than across it. */
function axesOf(
  { inertia, p_BoBcm_C }: OwnBall,
  radius: number,
  cut: SectionPlane,
  seen: (p_C: Vec3) => [number, number],
): CoreSection['axes'] {
  const { lowAxis_B, highAxis_B, middleAxis_B } = inertia;
  const named = [
    ['low', lowAxis_B],
    ['middle', middleAxis_B],
    ['high', highAxis_B],
  ] as const;
  return named
    .filter(([, axis_C]) => hypot(...seenOn({ ...cut, origin_C: ORIGIN_C }, axis_C)) > Math.SQRT1_2)
    .map(([axis, axis_C]) => ({
      axis,
      ends: [
        seen(addScaled(p_BoBcm_C, -AXIS * radius, axis_C)),
        seen(addScaled(p_BoBcm_C, AXIS * radius, axis_C)),
      ],
    }));
}

/** Length of a drawn axis to each side, in radii. */
const AXIS = 1.04;

/** Inches to a ten-thousandth: finer than any drawing. */
const rounded = (m: number): number => toDigits(to(m, INCH), 4);
