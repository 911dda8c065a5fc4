import { FEATURES, JOINT_FEATURES } from '../../src/regression/features.js';

/**
 * Features for the plain polynomial fit that the network is compared with: the features themselves, and squares and
 * products of those the physics multiplies: release, friction, the bracketing plain rolls, spacing over band.
 *
 * @param z  standardised features, row by row
 */
export function polynomialFeatures(z: Float32Array): { width: number; values: Float32Array } {
  const width = FEATURES.length + 1 + (FACTORS.length * (FACTORS.length + 1)) / 2;
  const count = z.length / FEATURES.length;
  const values = new Float32Array(width * count);
  for (let row = 0; row < count; row++) {
    const from = FEATURES.length * row;
    let at = width * row;
    values[at++] = 1;
    for (let i = 0; i < FEATURES.length; i++) values[at++] = z[from + i];
    for (let i = 0; i < FACTORS.length; i++)
      for (let j = i; j < FACTORS.length; j++) values[at++] = z[from + FACTORS[i]] * z[from + FACTORS[j]];
  }
  return { width, values };
}

const FACTORS: readonly number[] = [
  'speed',
  'surface speed Rω',
  'axis tilt',
  'axis rotation',
  'friction dry',
  'carried share',
  'plain friction, 30 to 35 ft',
  'plain friction, 35 to 40 ft',
  'plain friction, 40 to 45 ft',
  ...JOINT_FEATURES.map(({ name }) => name),
].map((name) => FEATURES.findIndex((feature) => feature.name === name));
