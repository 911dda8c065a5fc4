import { type Ensemble, fitEnsemble } from '../ball/core/ensemble.js';
import type { CoreFitter } from './fit-cores.js';

/** Ensembles kept: enough for a large bag, at some hundreds of kilobytes each. */
const MOST_KEPT = 40;

/** A fitter that remembers its results, so that all who share it fit a ball's cores once. */
export function sharedFits(fitter: CoreFitter = fitEnsemble): CoreFitter {
  const kept = new Map<string, Ensemble>();
  return (published, count) => {
    const key = JSON.stringify([published, count]);
    const ensemble = kept.get(key) ?? fitter(published, count);
    kept.delete(key);
    kept.set(key, ensemble); // the most recently used is last
    if (kept.size > MOST_KEPT) kept.delete(kept.keys().next().value as string);
    return ensemble;
  };
}
