import { cos, sin } from '../../math/sin-cos.js';

/** A node of a quadrature rule for the unit disk: where a ray pierces it, and the ray's share of its area. */
interface DiskNode {
  readonly x: number;
  readonly y: number;
  readonly weight: number;
}

/** At how many radii and angles rays represent a hole. */
export interface RayRule {
  readonly radii: number;
  readonly angles: number;
}

/** For ranking thousands of layouts: within 1e-4 in of RG and of either differential on the balls tested. */
export const RANKING_RAYS: RayRule = { radii: 5, angles: 12 };

/** For numbers shown to a person: within 1e-5 in of RG and of either differential on the balls tested. */
export const REPORT_RAYS: RayRule = { radii: 24, angles: 64 };

/**
 * Gauss–Legendre in the square of the radius, equal steps in angle: exact for polynomials of degree
 * 2·radii − 1 in r² and below `angles` in angle (Abramowitz & Stegun, Handbook of Mathematical Functions,
 * §25.4.61 for the disk). Every other radius is turned by half a step, so that no feature lines up with all of them.
 */
export function diskRule({ radii, angles }: RayRule): readonly DiskNode[] {
  const nodes: DiskNode[] = [];
  gaussLegendre(radii).forEach(([u, w], j) => {
    const r = Math.sqrt((1 + u) / 2);
    for (let k = 0; k < angles; k++) {
      const a = (2 * Math.PI * (k + (j % 2) / 2)) / angles;
      nodes.push({ x: r * cos(a), y: r * sin(a), weight: w / 2 / angles });
    }
  });
  return nodes;
}

/** Nodes and weights of Gauss–Legendre on [−1, 1], by Newton on the Legendre recurrence. */
export function gaussLegendre(n: number): readonly (readonly [node: number, weight: number])[] {
  return Array.from({ length: n }, (_, i) => {
    let x = cos((Math.PI * (i + 0.75)) / (n + 0.5));
    let slope = 1;
    for (let step = 0; step < 20; step++) {
      let p0 = 1;
      let p1 = x;
      for (let k = 2; k <= n; k++) [p0, p1] = [p1, ((2 * k - 1) * x * p1 - (k - 1) * p0) / k];
      slope = (n * (x * p1 - p0)) / (x * x - 1);
      const dx = p1 / slope;
      x -= dx;
      if (Math.abs(dx) < 1e-15) break;
    }
    return [x, 2 / ((1 - x * x) * slope * slope)] as const;
  });
}
