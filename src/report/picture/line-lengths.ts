import { hypot } from '../../math/hypot.js';
import { arcAngle } from '../../math/sphere.js';
import type { Vec3 } from '../../math/vec3.js';
import type { BallFace } from '../../records/answers/parts/ball-face.js';
import type { GroupNode } from '../scene/scene.js';
import type { Point } from '../scene/shapes.js';
import type { BallLines } from './ball-lines.js';
import type { Pen } from './pen.js';
import { type Letters, plate } from './plate.js';

/** Where along a line its length may stand, the best place first. */
const PLACES = [0.5, 0.4, 0.6, 0.3, 0.7, 0.22, 0.78];

/** Half the width of a mark's sign, with a little room, pt. */
const MARK_HALF = 6;

const GRIP_CENTRE: Vec3 = [0, 0, 1];

/** How near the ball's rim a length may stand, as depth toward the eye. */
const LEAST_DEPTH = 0.15;

/** Lengths of the layout's lines, each on its line where nothing else stands yet; none where there is no room. */
export function lineLengths(
  { face, lengthText }: { readonly face: BallFace; readonly lengthText?: (inches: number) => string },
  lines: BallLines,
  pen: Pen,
  frame: Letters,
): GroupNode[] {
  if (!lengthText) return [];
  const { textSize, widthOf } = frame;
  const angleHalf = widthOf('00°', textSize) / 2;
  const taken: (readonly [Point, half: number])[] = [
    ...[face.pin, face.pap, face.marker, GRIP_CENTRE].map((at) => [at, MARK_HALF] as const),
    ...[lines.drillingAngle, lines.valAngle].map(({ label }) => [label, angleHalf] as const),
  ]
    .filter(([at]) => pen.depth(at) > 0)
    .map(([at, half]) => [pen.place(at), half]);
  const [middleX, middleY] = pen.middle;
  const isFree = ([x, y]: Point, half: number): boolean =>
    hypot(Math.abs(x - middleX) + half, y - middleY) < pen.radius &&
    taken.every(([[tx, ty], room]) => Math.abs(x - tx) > half + room || Math.abs(y - ty) > 1.15 * textSize);
  return Object.entries({
    'pin to PAP': lines.pinToPap,
    'pin to marker': lines.pinToMarker,
    buffer: lines.buffer,
  }).flatMap(([name, curve]): GroupNode[] => {
    if (curve.length < 3) return [];
    const text = lengthText(arcAngle(curve[0], curve.at(-1) as Vec3) * face.radiusIn);
    const half = widthOf(text, textSize) / 2;
    const place = PLACES.flatMap((share) => {
      const i = Math.round(share * (curve.length - 2));
      const at = curve[i];
      return pen.depth(at) > LEAST_DEPTH
        ? beside(pen.place(at), pen.place(curve[i + 1]), half, textSize)
        : [];
    }).find((at) => isFree(at, half));
    if (!place) return [];
    taken.push([place, half]);
    return [{ kind: 'group', name: `length ${name}`, nodes: plate(text, place, frame) }];
  });
}

/** A place on a line, and one to either side of it, clear of it. */
function beside(at: Point, next: Point, half: number, textSize: number): Point[] {
  const [dx, dy] = [next[0] - at[0], next[1] - at[1]];
  const length = hypot(dx, dy) || 1;
  const [nx, ny] = [-dy / length, dx / length];
  const off = Math.abs(nx) * half + Math.abs(ny) * 0.6 * textSize + 2;
  return [at, ...[off, -off].map((by): Point => [at[0] + by * nx, at[1] + by * ny])];
}
