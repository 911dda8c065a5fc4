import { crossingsAt, type Loop, type PlanePoint } from '../../math/polygon.js';
import { cos, sin } from '../../math/sin-cos.js';
import type { SceneNode } from '../scene/scene.js';
import { polyline } from '../scene/shapes.js';

/** Turns of the hatch from part to part, degrees: neighbours in a list differ, whatever their density. */
const TURNS = [45, -45, 0, 90, 22.5, -67.5] as const;

/** Space between lines: 12 pt for filler's density down to 3 pt for the densest cores, so that denser looks darker in one ink. */
const SPACE = 11;
const CLOSEST = 3;

/** Lines over the inside of loops, as closed engineering sections have them: turned by the part, the closer the denser. */
export function hatch(loops: readonly Loop[], part: number, densityGcc: number): SceneNode {
  const space = Math.max(CLOSEST, SPACE / densityGcc);
  const angle = (TURNS[part % TURNS.length] * Math.PI) / 180;
  const [c, s] = [cos(angle), sin(angle)];
  const turned = loops.map((loop) => loop.map(([x, y]): PlanePoint => [c * x + s * y, c * y - s * x]));
  const heights = turned.flat().map(([, y]) => y);
  const [first, last] = [Math.ceil(Math.min(...heights) / space), Math.floor(Math.max(...heights) / space)];
  const lines: string[] = [];
  for (let i = first; i <= last; i += 1) {
    const y = space * i;
    const ends = crossingsAt(turned, y);
    for (let e = 0; e + 1 < ends.length; e += 2)
      lines.push(
        polyline([
          [c * ends[e] - s * y, s * ends[e] + c * y],
          [c * ends[e + 1] - s * y, s * ends[e + 1] + c * y],
        ]),
      );
  }
  return { kind: 'path', d: lines.join(''), stroke: { ink: 'soft', width: 0.5 } };
}
