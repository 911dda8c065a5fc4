import { line as lineThrough } from 'd3-shape';

/*
 * Path data of plain shapes, in the scene's points. Coordinates are written to 1/1000 pt, far below what can be
 * seen, so that a place can be read back from the picture.
 */

export type Point = readonly [x: number, y: number];

const DIGITS = 3;

const outline = lineThrough<Point>().digits(DIGITS);

/** Straight pieces through points; nothing for none. */
export const polyline = (points: readonly Point[]): string => outline(points as Point[]) ?? '';

/** The same, closed. */
export const polygon = (points: readonly Point[]): string =>
  points.length === 0 ? '' : `${polyline(points)}Z`;

/** A circle as two arcs. */
export const circle = ([x, y]: Point, radius: number): string => {
  const [left, right] = [trim(x - radius), trim(x + radius)];
  const [r, at] = [trim(radius), trim(y)];
  return `M${left},${at}A${r},${r},0,1,1,${right},${at}A${r},${r},0,1,1,${left},${at}Z`;
};

export const rectangle = (x: number, y: number, width: number, height: number): string =>
  polygon([
    [x, y],
    [x + width, y],
    [x + width, y + height],
    [x, y + height],
  ]);

/** A number as short as it can be written to 1/1000. */
export const trim = (value: number): string => String(Number(value.toFixed(DIGITS)));
