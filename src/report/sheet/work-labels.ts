import { arcBetween } from '../../math/curves.js';
import { unit, type Vec3 } from '../../math/vec3.js';
import type { SheetAnswer } from '../../records/answers/sheet-answer.js';
import { type BallLines, hasAngles } from '../picture/ball-lines.js';
import type { Pen } from '../picture/pen.js';
import type { Point } from '../scene/shapes.js';
import { type Units, withUnit } from '../text/display-units.js';
import { decimals } from '../text/figures.js';
import { type Label, placesAround } from './label-places.js';
import { numberOf } from './steps-block.js';

/** Where a drawing stands, how large its ball is, and how its letters measure, pt. */
export interface WorkFrame {
  readonly width: number;
  readonly height: number;
  readonly radius: number;
  readonly textSize: number;
  readonly widthOf: (text: string, size: number, weight?: 'regular' | 'bold') => number;
}

/** A point this far toward the eye is seen well enough for a number at it. */
const WELL_SEEN = 0.2;

/** What stands on a work drawing: marks with the numbers of their steps, inches on lines, degrees in angles, names of lines and holes. */
export function workLabels(
  answer: SheetAnswer,
  lines: BallLines,
  pen: Pen,
  { textSize, widthOf }: WorkFrame,
  { tape }: Units,
): Label[] {
  const { face, grip, layout, bowler, marking } = answer;
  const numbered = (mark: string, text: string): string => {
    const number = numberOf(marking, mark);
    return number === null ? text : `${number} ${text}`;
  };
  const foot = footOfVal(lines.val, face.pap);
  const isFromGrip = pen.depth([0, 0, 1]) > 0.99;
  const isSeen = (u: Vec3, least = 0): boolean => pen.depth(u) > least;
  const beside = (text: string, at: Vec3, weight?: 'bold'): Label[] =>
    isSeen(at, -0.02)
      ? [
          {
            text,
            size: textSize,
            ...(weight ? { weight } : {}),
            places: placesAround(pen.place(at), [widthOf(text, textSize, weight) / 2 + 1, 0.55 * textSize]),
          },
        ]
      : [];
  /** On a line, where much of it is seen. */
  const along = (text: string, curve: readonly Vec3[]): Label[] => {
    const seen = curve.filter((u) => isSeen(u, WELL_SEEN));
    if (seen.length < 4) return [];
    const on = [0.5, 0.42, 0.58, 0.35, 0.65, 0.28, 0.72, 0.2, 0.8].map(
      (share): Point => pen.place(seen[Math.round(share * (seen.length - 1))]),
    );
    const half: Point = [widthOf(text, textSize) / 2 + 1, 0.55 * textSize];
    const own = pointsAlong(curve, pen);
    return [
      {
        text,
        size: textSize,
        own,
        places: [...on, ...on.flatMap((at) => placesAround(at, half, [1.5, 6, 14]))],
      },
    ];
  };
  const inches = (value: number): string => withUnit(value, tape);
  const { upIn, overIn } = bowler.pap;
  const angle = (deg: number | null, at: Vec3): Label[] =>
    deg !== null && hasAngles(face) && isSeen(at, WELL_SEEN)
      ? [
          {
            text: `${decimals(deg, 0)}°`,
            size: textSize,
            places: [pen.place(at), ...placesAround(pen.place(at), [8, 5], [1, 4, 9, 15])],
          },
        ]
      : [];
  // inches first: they belong on their lines, where names have room all around their marks
  return [
    ...along(inches(layout.pinToPapIn), lines.pinToPap),
    ...(layout.markerToPapIn === null ? [] : pinToMarkerLabel()),
    ...along(inches(layout.pinBufferIn), lines.buffer),
    ...along(inches(overIn), arcBetween([0, 0, 1], foot)),
    ...beside('pin', face.pin, 'bold'),
    ...beside(numbered('PAP', 'PAP'), face.pap, 'bold'),
    ...(answer.layout.drillingAngleDeg === null
      ? []
      : beside(face.markerName.replace(/ mark$/, ''), face.marker, 'bold')),
    ...beside(numbered('grip centre', 'grip centre'), [0, 0, 1], 'bold'),
    ...(numberOf(marking, 'VAL on the midline') === null
      ? []
      : beside(`${numberOf(marking, 'VAL on the midline')}`, foot, 'bold')),
    ...angle(layout.drillingAngleDeg, lines.drillingAngle.label),
    ...angle(layout.valAngleDeg, lines.valAngle.label),
    ...(Math.abs(upIn) > 0.3 && isSeen(foot, 0.5)
      ? beside(inches(Math.abs(upIn)), midway(foot, face.pap))
      : []),
    ...(grip ? face.holes.flatMap(({ name, at }) => (isSeen(at, 0.45) ? beside(name, at) : [])) : []),
    ...face.oldHoles.flatMap(({ name, at }) => (isSeen(at, 0.45) ? beside(`old ${name}`, at) : [])),
    ...named('VAL', lines.val, -0.6),
    ...named('midline', lines.midline, (isFromGrip ? -0.75 : 0.75) * (face.hand === 'right' ? 1 : -1), 'x'),
    ...(isFromGrip ? named('centre line', lines.centreLine, -0.8) : []),
  ];

  function pinToMarkerLabel(): Label[] {
    const taken = answer.check.pinToMassBiasIn ?? answer.check.pinToCgIn;
    return taken === null ? [] : along(inches(taken), lines.pinToMarker);
  }

  /** The name of a line, near a height or a place across of the picture, in radii. */
  function named(text: string, curve: readonly Vec3[], wanted: number, axis: 'x' | 'y' = 'y'): Label[] {
    const [cx, cy] = pen.middle;
    const off = (u: Vec3): number => {
      const [x, y] = pen.place(u);
      return Math.abs((axis === 'x' ? (x - cx) / pen.radius : (cy - y) / pen.radius) - wanted);
    };
    const seen = curve.filter((u) => isSeen(u, 0.35)).sort((a, b) => off(a) - off(b));
    if (seen.length === 0) return [];
    return [{ text, size: textSize, own: pointsAlong(curve, pen), places: seen.slice(0, 30).map(pen.place) }];
  }
}

/** Where the VAL meets the midline on the PAP's side. */
export const footOfVal = (val: readonly Vec3[], pap: Vec3): Vec3 =>
  unit(val.reduce((best, u) => (Math.abs(u[1]) < Math.abs(best[1]) && u[0] * pap[0] > 0 ? u : best)));

/** Points along a line where it is seen, a few pt apart. */
export const pointsAlong = (curve: readonly Vec3[], pen: Pen): Point[] =>
  curve.slice(1).flatMap((to, i) => {
    const from = curve[i];
    return [from, midway(from, to)].filter((u) => pen.depth(u) > 0).map(pen.place);
  });

const midway = (u: Vec3, v: Vec3): Vec3 => {
  const arc = arcBetween(u, v);
  return arc[Math.floor(arc.length / 2)];
};
