import type { Hole } from '../../layout/hole.js';
import { type Mat3, transpose } from '../../math/mat3.js';
import type { Vec3 } from '../../math/vec3.js';
import type { Interval } from '../solid/ray-interval.js';
import type { Stretch } from '../solid/stretch.js';
import { type BoreBounds, boundsOf, keepsClear } from './bore-bounds.js';
import { type BoreSolid, crossBore, turnBore } from './bore-solid.js';
import { boreStretches, outsideOf, without } from './bore-stretches.js';
import { boresOf } from './excavation.js';
import type { RayRule } from './ray-rule.js';

/** The holes of an earlier drilling, in the frame B of that drilling, and what fills them now. */
export interface FilledDrilling {
  readonly holes: readonly Hole[];
  /** From that B to C: a rotation, or a reflection when the drilling was for the other hand. */
  readonly R_CB: Mat3;
  readonly density: number; // kg/m³
}

/**
 * The filling of the holes of one earlier drilling, in the frame C of the core, with which it turns. SI.
 *
 * The holes are filled completely: slug and inserts are drilled out first, and the filling reaches the tip
 * of the drill point (common practice, no source).
 */
export interface Plug {
  readonly density: number;
  readonly bores: readonly BoreSolid[];
  /** Rays that stand for the filling, less what later drillings took of it. */
  readonly stretches: readonly Stretch[];
}

/**
 * Plugs of a ball that was drilled before, the earliest first: where two meet, the later one's filling is there.
 *
 * @param drillings  in the order they were drilled
 * @param radius     the ball's, m
 */
export function plugsOf(
  drillings: readonly FilledDrilling[],
  radius: number,
  rule: RayRule,
): readonly Plug[] {
  const bores = drillings.map(({ holes, R_CB }) =>
    holes.flatMap((hole) => boresOf(hole, radius)).map((bore) => turnBore(R_CB, bore)),
  );
  return drillings.map(({ density }, i) => ({
    density,
    bores: bores[i],
    stretches: bores[i].flatMap((bore, j) =>
      boreStretches(bore, radius, [...bores[i].slice(0, j), ...bores.slice(i + 1).flat()], rule),
    ),
  }));
}

/** R_BC, how the core is turned ↦ for each plug, where stretches run through its filling; in B, each point once. */
export type PluggedStretches = (R_BC: Mat3) => readonly (readonly Stretch[])[];

/**
 * Prepares to find where stretches (in B) run through plugs. Balls that differ only in their cores share the result for the latest
 * turn of a core, which is remembered.
 *
 * @param plugs  all plugs of a ball, the earliest first; what a later drilling took of a plug is left out
 */
export function pluggedStretches(plugs: readonly Plug[], stretches: readonly Stretch[]): PluggedStretches {
  const fillings = plugs.map(({ bores }, i) => ({
    own: bores.map((bore) => ({ bore, bounds: boundsOf(bore) })),
    later: plugs.slice(i + 1).flatMap((plug) => plug.bores),
  }));
  let last: { readonly R_BC: Mat3; readonly found: readonly (readonly Stretch[])[] } | undefined;
  return (R_BC) => {
    if (last?.R_BC !== R_BC)
      last = { R_BC, found: fillings.map((filling) => stretchesIn(filling, stretches, transpose(R_BC))) };
    return last.found;
  };
}

/** Bores of one earlier drilling, in C, and those that later ones took of it. */
interface Filling {
  readonly own: readonly { readonly bore: BoreSolid; readonly bounds: BoreBounds }[];
  readonly later: readonly BoreSolid[];
}

function stretchesIn({ own, later }: Filling, stretches: readonly Stretch[], R_CB: Mat3): readonly Stretch[] {
  const found: Stretch[] = [];
  const inside: Interval = { enter: 0, leave: 0 };
  for (const stretch of stretches) {
    turnInto(a_C, R_CB, stretch.a);
    turnInto(d_C, R_CB, stretch.d);
    let outside: readonly Interval[] | null = null; // most rays meet no filling
    for (const { bore, bounds } of own) {
      if (keepsClear(bounds, a_C, d_C, stretch)) continue;
      crossBore(inside, bore, a_C, d_C);
      if (!(Math.min(inside.leave, stretch.e) > Math.max(inside.enter, stretch.s))) continue;
      outside ??= outsideOf(later, a_C, d_C, { enter: stretch.s, leave: stretch.e });
      for (const { enter, leave } of outside) {
        const s = Math.max(enter, inside.enter);
        const e = Math.min(leave, inside.leave);
        if (e > s) found.push({ ...stretch, s, e });
      }
      outside = without(outside, inside);
    }
  }
  return found;
}

// the current ray, in C: overwritten with each
const a_C: Point = [0, 0, 0];
const d_C: Point = [0, 0, 0];

type Point = [number, number, number];

function turnInto(out: Point, R: Mat3, v: Vec3): void {
  out[0] = R[0][0] * v[0] + R[0][1] * v[1] + R[0][2] * v[2];
  out[1] = R[1][0] * v[0] + R[1][1] * v[1] + R[1][2] * v[2];
  out[2] = R[2][0] * v[0] + R[2][1] * v[1] + R[2][2] * v[2];
}
