import Module, { type Manifold, type ManifoldToplevel, type Mat4 } from 'manifold-3d';
import type { BallBody } from '../../src/ball/drill/ball-body.js';
import type { Driller } from '../../src/ball/drill/drill.js';
import { addMoments, fromMoments, type Moments, NO_MOMENTS } from '../../src/ball/mass/mass-properties.js';
import type { Part } from '../../src/ball/solid/part.js';
import type { Bore, Hole, HoleTip } from '../../src/layout/hole.js';
import { column, fromColumns, type Mat3 } from '../../src/math/mat3.js';
import { cross, scale, unit, type Vec3 } from '../../src/math/vec3.js';
import { polyhedronMoments } from '../oracles/polyhedron.js';

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

  /** What of the ball a hole can reach from its mouth: a dome whose surface is finely divided around there. */
  dome(mouth_B: Vec3, ballRadius: number): Manifold {
    const angles = [...steps(0, 0.3, 40), ...steps(0.3, 1.3, 20), 1.3];
    const arc = angles.map((a): [number, number] => [ballRadius * Math.sin(a), ballRadius * Math.cos(a)]);
    const low = -ballRadius / 2;
    const profile: [number, number][] = [[0, low], [arc[arc.length - 1][0], low], ...arc.reverse()];
    const x = unit(cross(mouth_B, Math.abs(mouth_B[2]) < 0.6 ? [0, 0, 1] : [1, 0, 0]));
    const R = fromColumns(x, cross(mouth_B, x), mouth_B);
    return this.manifold.revolve([profile], this.segments).transform(affine(R, [0, 0, 0]));
  }

  part({ shape, A, c }: Pick<Part, 'shape' | 'A' | 'c'>): Manifold {
    switch (shape.kind) {
      case 'ball':
        return this.sphere(1).transform(affine(A, c));
      case 'box':
        return this.manifold.cube([2, 2, 2], true).transform(affine(A, c));
      case 'cylinder':
        return this.frustum(-1, 1, 1).transform(affine(A, c));
      case 'cone':
        return this.frustum(-1, 1, 1, shape.top).transform(affine(A, c));
      case 'capsule': {
        const ends = [-shape.half, shape.half].map((z) => this.sphere(1).translate([0, 0, z]));
        return this.manifold
          .union([this.frustum(-shape.half, shape.half, 1), ...ends])
          .transform(affine(A, c));
      }
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
      regionMoments(this.sleeves(holes, body.radius)),
      moments(this.sphere(body.radius).subtract(taken)),
      body.coverDensity,
    );
    unturned = addMoments(unturned, moments(inner.subtract(taken)), body.fillerDensity - body.coverDensity);
    const parts = this.core(body);
    return (R_BC) => {
      const turn = affine(R_BC, [0, 0, 0]);
      const left = parts.map(({ solid }) => moments(solid.transform(turn).subtract(taken)));
      return fromMoments(left.reduce((sum, m, i) => addMoments(sum, m, parts[i].density), unturned));
    };
  }

  /** Parts of a core, in C; of layers what no later one covers. */
  private core({ core, layers }: BallBody): { solid: Manifold; density: number }[] {
    const solids = (layers?.layers ?? []).map((layer) => {
      if ('mesh' in layer) throw new Error('a mesh cannot be handed over');
      return { solid: this.part(layer), density: layer.excess };
    });
    return [
      ...core.map((part) => ({ solid: this.part(part), density: part.excess })),
      ...solids.map(({ solid, density }, i) => ({
        solid: solid.subtract(this.manifold.union(solids.slice(i + 1).map((later) => later.solid))),
        density,
      })),
    ];
  }

  /** Slugs and inserts with the fingers' holes through them. */
  sleeves(holes: readonly Hole[], ballRadius: number): Region[] {
    const whole = this.sphere(ballRadius);
    const opens = this.manifold.union(holes.map((hole) => this.bore(hole, hole.open, ballRadius)));
    let placed = this.manifold.union([]);
    return holes.flatMap((hole) => {
      if (!hole.sleeve) return [];
      const { bore, height, density } = hole.sleeve;
      const full = height >= bore.depth;
      const depth = full ? bore.depth : height;
      const slug = this.bore(hole, { ...bore, depth }, ballRadius, full ? hole.tip : 'flat');
      const solid = slug.subtract(placed).intersect(whole).subtract(opens);
      placed = placed.add(slug);
      return [{ solid, density }];
    });
  }
}

/** Space filled with matter of one density, kg/m³. */
export interface Region {
  readonly solid: Manifold;
  readonly density: number;
}

/** Moments of matter in several regions about the origin. */
export const regionMoments = (regions: readonly Region[]): Moments =>
  regions.reduce((sum, { solid, density }) => addMoments(sum, moments(solid), density), NO_MOMENTS);

/** Moments of a solid of density one about the origin. */
export function moments(solid: Manifold): Moments {
  const { numProp, vertProperties, triVerts } = solid.getMesh();
  if (numProp !== 3) throw new Error(`a corner has ${numProp} numbers, not x, y, z alone`);
  return polyhedronMoments({ corners: vertProperties, faces: triVerts });
}

/** Evenly from `low` on, up to but not at `high`. */
const steps = (low: number, high: number, count: number): number[] =>
  Array.from({ length: count }, (_, i) => low + ((high - low) * i) / count);

export const affine = (A: Mat3, c: Vec3): Mat4 => [
  ...column(A, 0),
  0,
  ...column(A, 1),
  0,
  ...column(A, 2),
  0,
  ...c,
  1,
];
