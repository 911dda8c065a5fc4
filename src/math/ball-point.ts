import type { Vec3 } from './vec3.js';

/** Unit vector in B of a point given by its arcs over along the midline and up from it, like a PAP. */
export function ballPoint({ overIn, upIn }: { overIn: number; upIn: number }, radiusIn: number): Vec3 {
  const [over, up] = [overIn / radiusIn, upIn / radiusIn];
  return [Math.cos(up) * Math.sin(over), Math.sin(up), Math.cos(up) * Math.cos(over)];
}
