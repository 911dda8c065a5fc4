import { add, cross, dot, scale, unit, type Vec3 } from '../../src/math/vec3.js';
import { d3Arc } from './great-circle.js';

/*
 * Marks a ball from the sentences of a work sheet, by other ways than the program's: two arcs by Newton's method on arcs as d3-geo
 * 3.1.2 measures them, protractor and tape by great-circle sailing. Points are where they lie on the real ball: a left-hander's
 * is the mirror image of frame B.
 */

/** Which side of the line between two marks a point is seen on, the first held away from the eye, the second toward it. */
export const seenSide = (away: Vec3, toward: Vec3, point: Vec3): 'LEFT' | 'RIGHT' => {
  // the eye is above the ball between the marks: up is from the near mark to the far one, right is up x toward the eye
  const toEye = unit(add(away, toward));
  const up = add(away, scale(-1, toward));
  return dot(cross(up, toEye), point) > 0 ? 'RIGHT' : 'LEFT';
};

/** One way of a step as it is printed. */
export interface PrintedWay {
  readonly hold: {
    readonly away: string;
    readonly toward: string;
    readonly side: 'LEFT' | 'RIGHT' | null;
  } | null;
  readonly arcs: readonly { readonly from: string; readonly inches: number }[];
  readonly turn: { readonly at: string; readonly from: string; readonly deg: number } | null;
  readonly val: 'up' | 'down' | 'line' | null;
}

/** Inches as a tape or a rule shows them. */
export const inchesOf = (text: string): number =>
  text
    .trim()
    .split(' ')
    .reduce(
      (sum, part) =>
        sum + (part.includes('/') ? Number(part.split('/')[0]) / Number(part.split('/')[1]) : Number(part)),
      0,
    );

/** Reads a sentence of the sheet; fails loudly on one that it does not know. */
export function readWay(sentence: string): PrintedWay {
  const text = sentence.replace(/^or /, '').replace(/ Draw .*$/, '');
  const held = /^(.+?) away from you, (.+?) toward you; on (?:your (LEFT|RIGHT)|that line): /.exec(text);
  const lower = (name: string): string =>
    /^(PAP|VAL|CG)/.test(name) ? name : name.charAt(0).toLowerCase() + name.slice(1);
  const hold = held
    ? { away: lower(held[1]!), toward: held[2]!, side: (held[3] ?? null) as 'LEFT' | 'RIGHT' | null }
    : null;
  const rest = held ? text.slice(held[0].length) : text;
  const arcs = /arcs ([\d /]+) in from (.+?), ([\d /]+) in from (.+?) \(they cross at \d+°\)\.$/i.exec(rest);
  if (arcs)
    return {
      hold,
      turn: null,
      val: null,
      arcs: [
        { inches: inchesOf(arcs[1]!), from: arcs[2]! },
        { inches: inchesOf(arcs[3]!), from: arcs[4]! },
      ],
    };
  const turn =
    /protractor on (.+?), (\d+)° from the line to (.+?): (the upper VAL)?(?:;? ?go ([\d /]+) in(?: (up|down) it)?)?\.$/i.exec(
      rest,
    );
  if (!turn) throw new Error(`not read: ${sentence}`);
  const [, at, deg, from, upper, inches, along] = turn;
  return {
    hold,
    arcs: [{ from: at!, inches: inches ? inchesOf(inches) : 0 }],
    turn: { at: at!, from: from!, deg: Number(deg) },
    val: upper ? ((along ?? 'line') as 'up' | 'down' | 'line') : null,
  };
}

/** Where a printed way puts a mark; with a VAL, also a point farther up it. */
export function markedByHand(
  way: PrintedWay,
  hold: PrintedWay['hold'],
  placeOf: (name: string) => Vec3,
  radiusIn: number,
): { readonly at: Vec3; readonly upper: Vec3 | null } {
  const isOnSide = (point: Vec3): boolean =>
    !hold?.side || seenSide(placeOf(hold.away), placeOf(hold.toward), point) === hold.side;
  if (!way.turn) return { at: crossedByHand(way.arcs, placeOf, isOnSide, radiusIn), upper: null };
  const { at, from, deg } = way.turn;
  const turned = [1, -1]
    .map((sense) => courseTo(placeOf(at), placeOf(from)) + sense * deg * (Math.PI / 180))
    .filter((course) => isOnSide(sailed(placeOf(at), course, 0.3)));
  const course = turned[0];
  if (course === undefined) throw new Error('on neither side');
  const arc = way.arcs[0]!.inches / radiusIn;
  if (way.val === null) return { at: sailed(placeOf(at), course, arc), upper: null };
  const back = way.val === 'down' ? course + Math.PI : course;
  return { at: sailed(placeOf(at), back, arc), upper: sailed(placeOf(at), course, 0.4) };
}

/** Newton's method on two arcs, in the plane that touches the ball at each guess, from guesses on the side that is printed. */
function crossedByHand(
  arcs: PrintedWay['arcs'],
  placeOf: (name: string) => Vec3,
  isOnSide: (point: Vec3) => boolean,
  radiusIn: number,
): Vec3 {
  const centres = arcs.map(({ from }) => placeOf(from));
  const wanted = arcs.map(({ inches }) => inches / radiusIn);
  const [a, b] = centres as [Vec3, Vec3];
  const middle = unit(add(a, b));
  const aside = unit(cross(a, b));
  const missing = (p: Vec3): number[] => centres.map((centre, i) => d3Arc(centre, p) - wanted[i]!);
  for (const reach of [0.3, -0.3, 0.8, -0.8, 1.4, -1.4]) {
    let p = unit(add(middle, scale(reach, aside)));
    for (let turn = 0; turn < 40; turn++) {
      const east = unit(cross(Math.abs(p[1]) < 0.9 ? [0, 1, 0] : [1, 0, 0], p));
      const north = cross(p, east);
      const h = 1e-5;
      const slope = (along: Vec3): number[] => {
        const [plus, minus] = [
          missing(unit(add(p, scale(h, along)))),
          missing(unit(add(p, scale(-h, along)))),
        ];
        return plus.map((value, i) => (value - minus[i]!) / (2 * h));
      };
      const [[e0, e1], [n0, n1], [f, g]] = [slope(east), slope(north), missing(p)] as [
        number[],
        number[],
        number[],
      ] as [[number, number], [number, number], [number, number]];
      const det = e0 * n1 - n0 * e1;
      p = unit(add(p, add(scale(-(n1 * f - n0 * g) / det, east), scale(-(e0 * g - e1 * f) / det, north))));
    }
    if (Math.max(...missing(p).map(Math.abs)) < 1e-9 && isOnSide(p)) return p;
  }
  throw new Error('the arcs do not cross on that side');
}

const latitude = (u: Vec3): number => Math.asin(Math.max(-1, Math.min(1, u[2])));
const longitude = (u: Vec3): number => Math.atan2(u[1], u[0]);

/** Course at the start from one point to another, clockwise from north as seen from outside, rad. */
export function courseTo(u: Vec3, v: Vec3): number {
  const [a, b, east] = [latitude(u), latitude(v), longitude(v) - longitude(u)];
  return Math.atan2(
    Math.sin(east) * Math.cos(b),
    Math.cos(a) * Math.sin(b) - Math.sin(a) * Math.cos(b) * Math.cos(east),
  );
}

/** The point reached on a course (great-circle sailing). */
function sailed(u: Vec3, course: number, arc: number): Vec3 {
  const a = latitude(u);
  // at the pole rounding leads beyond 1
  const b = latitude([0, 0, Math.sin(a) * Math.cos(arc) + Math.cos(a) * Math.sin(arc) * Math.cos(course)]);
  const east = Math.atan2(
    Math.sin(course) * Math.sin(arc) * Math.cos(a),
    Math.cos(arc) - Math.sin(a) * Math.sin(b),
  );
  const lon = longitude(u) + east;
  return [Math.cos(b) * Math.cos(lon), Math.cos(b) * Math.sin(lon), Math.sin(b)];
}
