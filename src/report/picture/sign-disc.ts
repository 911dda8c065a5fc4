import type { SceneNode } from '../scene/scene.js';
import { circle, type Point } from '../scene/shapes.js';
import type { Compared } from './compared.js';
import { USUAL } from './compared.js';

/** Radius of a disc, pt. */
export const DISC_RADIUS = 7;

const SIZE = 10;

/** A layout's sign in a disc of its ink, in the middle of a point. */
export const signDisc = ({ sign, ink }: Pick<Compared, 'sign' | 'ink'>, [x, y]: Point): SceneNode[] => [
  { kind: 'path', d: circle([x, y], DISC_RADIUS), fill: 'paper', stroke: { ink, width: 1.6 } },
  {
    kind: 'text',
    x,
    y: y + (sign === USUAL ? 0.55 : 0.36) * SIZE,
    text: sign,
    size: SIZE * (sign === USUAL ? 1.3 : sign.length > 1 ? 0.85 : 1),
    weight: 'bold',
    anchor: 'middle',
    ink: 'ink',
  },
];
