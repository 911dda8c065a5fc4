import { polyline } from '../scene/shapes.js';

/** A part of a picture to be hatched, pt, y down. */
interface HatchedArea {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** Lines across, and lines along, that each step of the film adds to those of thinner films: how far apart, and from where on, pt. */
const ADDED = [
  { way: 'across', apart: 12, from: 0 },
  { way: 'across', apart: 12, from: 6 },
  { way: 'across', apart: 6, from: 3 },
  { way: 'along', apart: 3.6, from: 1.8 },
  { way: 'across', apart: 3, from: 1.5 },
] as const;

/** Width of every line, pt. */
export const HATCH_WIDTH = 0.6;

/** The lines that a step of the film adds in an area: the more oil, the closer they stand, so that neither colour nor tone is needed. */
export function oilHatch(step: number, { left, right, top, bottom }: HatchedArea): string {
  const { way, apart, from } = ADDED[step];
  const places = (low: number, high: number): number[] => {
    const first = Math.ceil((low - from) / apart - 1e-9);
    const count = Math.ceil((high - from) / apart - 1e-9) - first;
    return Array.from({ length: Math.max(0, count) }, (_, i) => from + apart * (first + i));
  };
  return (
    way === 'across'
      ? places(top, bottom).map((y) =>
          polyline([
            [left, y],
            [right, y],
          ]),
        )
      : places(left, right).map((x) =>
          polyline([
            [x, top],
            [x, bottom],
          ]),
        )
  ).join('');
}
