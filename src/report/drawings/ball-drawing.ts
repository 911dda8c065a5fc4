import { asin } from '../../math/atan.js';
import { smallCircle } from '../../math/curves.js';
import { arcAngle } from '../../math/sphere.js';
import { addScaled, scale, unit, type Vec3 } from '../../math/vec3.js';
import type { BallFace, RingAnswer } from '../../records/answers/parts/ball-face.js';
import { tapePoint } from '../../records/answers/parts/tape-point.js';
import { ballLines, hasAngles } from '../picture/ball-lines.js';
import { gripView, project, type View } from '../picture/view.js';
import type { Page } from '../text/page.js';
import { flow } from '../text/wrap.js';
import { DotCanvas } from './dot-canvas.js';

/** Half the ball's height in rows, where there is room; cells are about twice as high as wide, so it is twice as many columns. */
const RADIUS_ROWS = 10;
const INDENT = '  ';

/** Dots between two points of a curve, so that no gap shows. */
const FINELY = 8;

/** What is drawn, the lowest first: its sign where only ASCII may be used, and every how many dots it has a gap. */
interface Layer {
  readonly curves: readonly (readonly Vec3[])[];
  readonly ascii: string;
  readonly isDashed?: boolean;
  readonly isQuiet?: boolean;
}

/** A sign that stands for a mark or a hole, with its name. */
interface Sign {
  readonly at: Vec3;
  readonly unicode: string;
  readonly ascii: string;
  readonly name: string;
}

/**
 * The ball seen from the grip side, fingers up: grip, plugged holes of earlier drillings, pin, marker, PAP, VAL and rings,
 * with a legend below.
 *
 * @param rings  those that can be seen on the ball; the first and the last are drawn
 */
export function ballDrawing(face: BallFace, rings: readonly RingAnswer[], page: Page): string[] {
  const view = gripView(face);
  const radius = Math.min(RADIUS_ROWS, Math.floor((page.width - INDENT.length - 1) / 4));
  const columns = 4 * radius + 1;
  const rows = 2 * radius + 1;
  const canvas = new DotCanvas(columns, rows);
  const shown = layers(face, rings);
  const place = (u: Vec3) => {
    const { x, y, depth } = project(view, u);
    return { x: 2 * radius * (1 + x) + 0.5, y: radius * (1 - y) + 0.5, depth };
  };
  shown.forEach(({ curves, isDashed }, layer) => {
    for (const curve of curves)
      finely(curve).forEach((u, i) => {
        const { x, y, depth } = place(u);
        if (depth >= -1e-9 && !(isDashed && i % (3 * FINELY) >= 2 * FINELY)) canvas.set(x, y, layer);
      });
  });

  const cells = Array.from({ length: rows }, (_, row) =>
    Array.from({ length: columns }, (_, column) => {
      const layer = shown[canvas.layerAt(column, row)];
      if (!layer) return ' ';
      const sign = page.ascii ? layer.ascii : canvas.signAt(column, row);
      return layer.isQuiet ? page.paint.quiet(sign) : sign;
    }),
  );
  const write = (at: Vec3, text: string, column = 0): void => {
    const { x, y } = place(at);
    const row = cells[Math.min(rows - 1, Math.floor(y))];
    row[Math.min(columns - 1, Math.floor(x) + column)] = page.paint.strong(text);
  };
  const ends = endsOf(rings).map((ring) => ({ ring, at: labelPoint(ring, face, view) }));
  const numbered = ends.filter(({ at }) => place(at).depth > 0);
  for (const { ring, at } of numbered)
    for (const [i, digit] of [...`${ring.turn}`].entries()) write(at, digit, i);
  const all = signs(face);
  const near = all.filter(({ at }) => place(at).depth >= 0);
  for (const sign of near) write(sign.at, page.ascii ? sign.ascii : sign.unicode);
  const taken = [...near.map(({ at }) => ({ ...place(at), length: 1 }))];
  for (const { text, places } of numbersOn(face, page)) {
    const spot = places
      .map((at) => ({ ...place(at), length: text.length }))
      .map((at) => ({ ...at, x: Math.round(at.x - text.length / 2) + 0.5 }))
      .find((at) => at.depth > 0.1 && taken.every((other) => !collide(at, other)));
    if (!spot) continue;
    taken.push(spot);
    for (const [i, letter] of [...text].entries())
      cells[Math.min(rows - 1, Math.floor(spot.y))][Math.floor(spot.x) + i] = page.paint.strong(letter);
  }
  return [
    ...cells.map((row) => (INDENT + row.join('')).trimEnd()),
    '',
    ...flow(
      legend(
        near,
        all.filter((sign) => !near.includes(sign)),
        numbered.map(({ ring }) => ring),
        page,
      ),
      page.width,
      INDENT,
    ),
  ];
}

/** What the signs and numbers drawn mean, and which marks lie on the far side. */
const legend = (
  near: readonly Sign[],
  far: readonly Sign[],
  numbered: readonly RingAnswer[],
  { ascii, units }: Page,
): string[] => [
  ...unique(near.map((sign) => `${ascii ? sign.ascii : sign.unicode} ${sign.name}`)),
  ascii ? '! VAL' : 'dashed: VAL',
  `numbers on lines: ${units.tape.name} along the surface; ${ascii ? 'd' : '°'}: degrees`,
  ...(numbered.length > 0 ? [`${numbered.map(({ turn }) => turn).join(', ')}: first and last oil ring`] : []),
  ...unique(far.map(({ name }) => `${name} on the far side`)),
];

/** A number that stands on the ball, at the first of some places where there is room. */
interface OnBall {
  readonly text: string;
  readonly places: readonly Vec3[];
}

/** Whether two texts in one row touch. */
const collide = (
  a: { readonly x: number; readonly y: number; readonly length: number },
  b: { readonly x: number; readonly y: number; readonly length: number },
): boolean => Math.floor(a.y) === Math.floor(b.y) && a.x < b.x + b.length + 1 && b.x < a.x + a.length + 1;

/** Angles of the layout, and lengths of its lines. */
function numbersOn(face: BallFace, { units, ascii }: Page): OnBall[] {
  const lines = ballLines(face);
  const along = (curve: readonly Vec3[]): Vec3[] =>
    [0.5, 0.4, 0.6, 0.3, 0.7].map((share) => curve[Math.round(share * (curve.length - 1))]);
  const length = (curve: readonly Vec3[]): OnBall => ({
    text: units.tape.show(arcAngle(curve[0], curve.at(-1) as Vec3) * face.radiusIn),
    places: along(curve),
  });
  const angles = hasAngles(face)
    ? [lines.drillingAngle, lines.valAngle].map(({ angle, label }) => ({
        text: `${Math.round((angle * 180) / Math.PI)}${ascii ? 'd' : '°'}`,
        places: [label],
      }))
    : [];
  return [
    ...angles,
    ...[lines.pinToPap, lines.pinToMarker, lines.buffer].filter(({ length: n }) => n > 2).map(length),
  ];
}

/** Holes of several earlier drillings have the same names. */
const unique = (texts: readonly string[]): string[] => [...new Set(texts)];

/** The first ring and the last one. */
const endsOf = (rings: readonly RingAnswer[]): readonly RingAnswer[] =>
  rings.filter((_, i) => i === 0 || i === rings.length - 1);

/** Where a ring's number stands: on its near side, a little below the middle, the last one's higher than the first's. */
function labelPoint({ turn, points }: RingAnswer, { radiusIn }: BallFace, view: View): Vec3 {
  const wanted = turn === 1 ? -0.35 : -0.2;
  const off = (u: Vec3): number => {
    const { y, depth } = project(view, u);
    return depth < 0 ? 2 - depth : Math.abs(y - wanted);
  };
  return points
    .map((point) => tapePoint(point, radiusIn))
    .reduce((best, u) => (off(u) < off(best) ? u : best));
}

function layers(face: BallFace, rings: readonly RingAnswer[]): Layer[] {
  const lines = ballLines(face);
  const rim = (at: Vec3, diameterIn: number): Vec3[] => smallCircle(at, asin(diameterIn / 2 / face.radiusIn));
  return [
    { curves: [lines.midline], ascii: '~', isQuiet: true },
    { curves: [lines.centreLine], ascii: '|', isQuiet: true },
    {
      curves: endsOf(rings).map(({ points }) => points.map((point) => tapePoint(point, face.radiusIn))),
      ascii: ',',
    },
    { curves: [lines.val], ascii: '!', isDashed: true },
    { curves: [smallCircle([0, 0, 1], Math.PI / 2)], ascii: ';' },
    {
      curves: face.oldHoles.map(({ at, boreIn }) => rim(at, boreIn)),
      ascii: '&',
      isDashed: true,
      isQuiet: true,
    },
    { curves: face.holes.map(({ at, openIn }) => rim(at, openIn)), ascii: '*' },
    { curves: [lines.pinToPap, lines.pinToMarker], ascii: "'" },
  ];
}

const signs = (face: BallFace): Sign[] => [
  ...face.oldHoles.map(({ name, at }) => {
    const sign = name[0].toLowerCase();
    return { at, unicode: sign, ascii: sign, name: `old ${name}, plugged` };
  }),
  ...face.holes.map(({ name, at }) => ({
    at,
    unicode: name[0].toUpperCase(),
    ascii: name[0].toUpperCase(),
    name,
  })),
  { at: [0, 0, 1], unicode: '+', ascii: '+', name: 'grip centre' },
  ...(face.psa ? [{ at: face.psa, unicode: '□', ascii: 'S', name: 'PSA' }] : []),
  { at: face.marker, unicode: '▲', ascii: 'A', name: face.markerName },
  { at: face.pap, unicode: '⊕', ascii: 'X', name: 'PAP' },
  { at: face.pin, unicode: '●', ascii: 'P', name: 'pin' },
];

/** A curve with points in between, on the ball. */
const finely = (curve: readonly Vec3[]): Vec3[] =>
  curve.flatMap((u, i) => {
    const next = curve[i + 1];
    return next
      ? Array.from({ length: FINELY }, (_, k) => unit(addScaled(scale(1 - k / FINELY, u), k / FINELY, next)))
      : [u];
  });
