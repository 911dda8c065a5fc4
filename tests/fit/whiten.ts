import { EVD, Matrix } from 'ml-matrix';
import type { Tensor } from '../../src/regression/tensor.js';
import type { Network } from './network.js';
import { timesTensor } from './times-tensor.js';

/** Variance (of standardised features) below which a direction is not blown up any further. */
const FAINTEST = 1e-4;

/**
 * A map of standardised features to uncorrelated ones of variance 1, which gradient descent finds its way among
 * far sooner: the plain rolls' numbers say nearly the same thing a dozen times.
 * Source: LeCun et al., Efficient BackProp, 1998, §4.3.
 */
export function whitening(z: Float32Array, width: number): Tensor {
  const count = z.length / width;
  const covariance = Matrix.zeros(width, width);
  for (let row = 0; row < count; row++)
    for (let i = 0; i < width; i++)
      for (let j = i; j < width; j++)
        covariance.set(i, j, covariance.get(i, j) + (z[width * row + i] * z[width * row + j]) / count);
  for (let i = 0; i < width; i++) for (let j = 0; j < i; j++) covariance.set(i, j, covariance.get(j, i));
  const { eigenvectorMatrix, realEigenvalues } = new EVD(covariance, { assumeSymmetric: true });
  const values = new Float32Array(width * width);
  for (let i = 0; i < width; i++)
    for (let j = 0; j < width; j++)
      values[width * i + j] = eigenvectorMatrix.get(i, j) / Math.sqrt(Math.max(FAINTEST, realEigenvalues[j]));
  return { dims: [width, width], values };
}

/** The same network, fitted to whitened features, as one that takes standardised ones. */
export function unwhitened(network: Network, whiten: Tensor): Network {
  const [first, ...others] = network.hidden;
  return {
    ...network,
    hidden: [{ ...first, weights: timesTensor(whiten, first.weights) }, ...others],
    sums: timesTensor(whiten, network.sums),
    linear: { ...network.linear, weights: timesTensor(whiten, network.linear.weights) },
  };
}
