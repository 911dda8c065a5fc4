import Module, { type Manifold, type ManifoldToplevel, type Mat4 } from 'manifold-3d';
import type { BallBody } from '../../src/ball/ball-body.js';
import type { Driller } from '../../src/ball/drill.js';
import { addMoments, fromMoments, type Moments, NO_MOMENTS } from '../../src/ball/mass-properties.js';
import type { Part } from '../../src/ball/part.js';
import type { Bore, Hole, HoleTip } from '../../src/layout/hole.js';
import { column, fromColumns, type Mat3 } from '../../src/mat3.js';
import { cross, scale, unit, type Vec3 } from '../../src/vec3.js';
import { polyhedronMoments } from './polyhedron.js';

/**
 * Balls as closed triangle meshes cut from one another by another program (manifold-3d 3.5.4), weighed by
 * the tetrahedra of `polyhedron.ts`: shares no formula and no ray with `src/ball`.
 *
 * Round solids have `segments` sides and are swollen until their volume is right. What is left of the
 * faceting in the moments of a sphere or a cylinder is then of order segments⁻⁴; where faceted solids cut
 * one another it stays of order segments⁻².
 */
export class Solids {
  private constructor(
    private readonly manifold: ManifoldToplevel['Manifold'],
    private readonly segments: number,
  ) {}

  static async load(segments: number): Promise<Solids> {
    const kernel = await Module();
    kernel.setup();
    return new Solids(kernel.Manifold, segments);
  }

  sphere(radius: number): Manifold {
    const faceted = this.manifold.sphere(1, this.segments);
    return faceted.scale(radius * Math.cbrt((4 * Math.PI) / 3 / faceted.volume()));
  }

  /** A cone frustum from z = low (radius `at`) to z = high (radius `to`). */
  frustum(low: number, high: number, at: number, to = at): Manifold {
    const n = this.segments;
    const swell = Math.sqrt(Math.PI / ((n / 2) * Math.sin((2 * Math.PI) / n)));
    return this.manifold.cylinder(high - low, swell * at, swell * to, n).translate([0, 0, low]);
  }

  part({ shape, A, c }: Part): Manifold {
    switch (shape.kind) {
      case 'ball':
        return this.sphere(1).transform(affine(A, c));
      case 'box':
        return this.manifold.cube([2, 2, 2], true).transform(affine(A, c));
      case 'cylinder':
        return this.frustum(-1, 1, 1).transform(affine(A, c));
      case 'cone':
        return this.frustum(-1, 1, 1, shape.top).transform(affine(A, c));
    }
  }

  /** A bore of a hole on a ball, tip included; starts well outside the ball. */
  bore(hole: Hole, { radius, depth }: Bore, ballRadius: number, tip: HoleTip = hole.tip): Manifold {
    const d = hole.axis_B;
    const u = unit(cross(d, Math.abs(d[2]) < 0.6 ? [0, 0, 1] : [1, 0, 0]));
    const wall = this.frustum(-2 * radius, depth, radius);
    const whole =
      tip === 'flat'
        ? wall
        : wall.add(
            tip === 'round'
              ? this.sphere(radius).translate([0, 0, depth])
              : this.frustum(depth, depth + radius / Math.tan((59 * Math.PI) / 180), radius, 0),
          );
    return whole.transform(affine(fromColumns(u, cross(d, u), d), scale(ballRadius, hole.mouth_B)));
  }

  /** Everything a drill takes out of the ball, as one solid. */
  bores(holes: readonly Hole[], ballRadius: number): Manifold {
    return this.manifold.union(
      holes.flatMap((hole) => [
        this.bore(hole, hole.open, ballRadius),
        ...(hole.sleeve ? [this.bore(hole, hole.sleeve.bore, ballRadius)] : []),
      ]),
    );
  }

  /** R_BC ↦ mass properties of a drilled ball, in B. What does not turn with the core is weighed once. */
  driller(body: BallBody, holes: readonly Hole[]): Driller {
    const taken = this.bores(holes, body.radius);
    taken.volume(); // the kernel works when asked: now, not once a layout
    const inner = this.sphere(body.radius - body.coverThickness);
    let unturned = addMoments(
      this.sleeves(holes, body.radius),
      moments(this.sphere(body.radius).subtract(taken)),
      body.coverDensity,
    );
    unturned = addMoments(unturned, moments(inner.subtract(taken)), body.fillerDensity - body.coverDensity);
    const parts = body.core.map((part) => ({ solid: this.part(part), density: part.excess }));
    return (R_BC) => {
      const turn = affine(R_BC, [0, 0, 0]);
      const left = parts.map(({ solid }) => moments(solid.transform(turn).subtract(taken)));
      return fromMoments(left.reduce((sum, m, i) => addMoments(sum, m, parts[i].density), unturned));
    };
  }

  /** Slugs and inserts with the fingers' holes through them. */
  private sleeves(holes: readonly Hole[], ballRadius: number): Moments {
    const whole = this.sphere(ballRadius);
    const opens = this.manifold.union(holes.map((hole) => this.bore(hole, hole.open, ballRadius)));
    let sum = NO_MOMENTS;
    let placed = this.manifold.union([]);
    for (const hole of holes) {
      if (!hole.sleeve) continue;
      const { bore, height, density } = hole.sleeve;
      const full = height >= bore.depth;
      const depth = full ? bore.depth : height;
      const slug = this.bore(hole, { ...bore, depth }, ballRadius, full ? hole.tip : 'flat');
      sum = addMoments(sum, moments(slug.subtract(placed).intersect(whole).subtract(opens)), density);
      placed = placed.add(slug);
    }
    return sum;
  }
}

/** Moments of a solid of density one about the origin. */
export function moments(solid: Manifold): Moments {
  const { numProp, vertProperties, triVerts } = solid.getMesh();
  if (numProp !== 3) throw new Error(`a corner has ${numProp} numbers, not x, y, z alone`);
  return polyhedronMoments({ corners: vertProperties, faces: triVerts });
}

const affine = (A: Mat3, c: Vec3): Mat4 => [
  ...column(A, 0),
  0,
  ...column(A, 1),
  0,
  ...column(A, 2),
  0,
  ...c,
  1,
];
