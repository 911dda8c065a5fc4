import { type Mat3, mulVec, rotateTensor } from '../../math/mat3.js';
import type { Moments } from './mass-properties.js';

/** Moments given in C, expressed in B, both with origin Bo. */
export const rotateMoments = (R_BC: Mat3, m_C: Moments): Moments => ({
  mass: m_C.mass,
  first: mulVec(R_BC, m_C.first),
  second: rotateTensor(R_BC, m_C.second),
});
