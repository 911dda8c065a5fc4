import { BOARD_COUNT } from '../../base/constants.js';
import { LENGTH_FT } from '../lane/lane-marks.js';
import type { SceneNode } from '../scene/scene.js';
import { type Point, polyline } from '../scene/shapes.js';
import type { PointAt } from './paths.js';

/*
 * Measures of the lane's picture, pt. It is drawn twelve times as wide as it is: true to scale it would be a strip on which
 * paths a board apart are one.
 */
export const WIDTH = 320;
export const BOARD_PT = 7.2;
export const FOOT_PT = 6.77;
export const LEFT = 30;
export const TOP = 54;
export const RIGHT = LEFT + BOARD_COUNT * BOARD_PT;
export const FOUL = TOP + LENGTH_FT * FOOT_PT;
export const HEIGHT = FOUL + 34;
export const GUTTER = 6;
export const TEXT = 12;

/** The lane's places in the picture. */
export const placeOn =
  (hand: 'right' | 'left'): PointAt =>
  (board, ft) => [
    hand === 'right' ? RIGHT - (board - 0.5) * BOARD_PT : LEFT + (board - 0.5) * BOARD_PT,
    FOUL - ft * FOOT_PT,
  ];

/** A line of the lane's own. */
export const line = (points: readonly Point[], ink: 'ink' | 'soft' | 'faint', width: number): SceneNode => ({
  kind: 'path',
  d: polyline(points),
  stroke: { ink, width },
});
