import { mulVec, transpose } from '../../math/mat3.js';
import { addMoments, type Moments } from '../mass/mass-properties.js';
import { MomentSum } from '../mass/moment-sum.js';
import { crosser, type LayeredCore } from '../solid/layered-core.js';
import { type LineMoments, RemainingIntervals } from '../solid/remaining-intervals.js';
import { type BallBody, coreMoments } from './ball-body.js';
import { type CoreAlong, partsAlong } from './core-parts.js';

/** A core, prepared for drilling. */
export interface CoreMatter {
  /** Moments of its excess over the filler, about Bo, in C. */
  readonly moments: Moments;
  readonly along: CoreAlong;
}

/** Prepares a ball's core: parts that keep clear of one another, layers that may overlap, or both. */
export function coreMatter({ core, layers }: Pick<BallBody, 'core' | 'layers'>): CoreMatter {
  const parts: CoreMatter = { moments: coreMoments(core), along: partsAlong(core) };
  if (!layers) return parts;
  const layered = layersAlong(layers);
  return {
    moments: addMoments(parts.moments, layers.moments),
    along: (R_BC, stretches) => addMoments(parts.along(R_BC, stretches), layered(R_BC, stretches)),
  };
}

/** Along a line the uppermost layer counts wherever it is, the next where the first is not, and so on down. */
function layersAlong({ layers }: LayeredCore): CoreAlong {
  const downward = layers.map((layer) => ({ cross: crosser(layer), excess: layer.excess })).reverse();
  const left = new RemainingIntervals();
  const line: LineMoments = { m0: 0, m1: 0, m2: 0 };
  const ends: number[] = [];
  return (R_BC, stretches) => {
    const R_CB = transpose(R_BC);
    const sum = new MomentSum();
    for (const { a, d, area, s, e } of stretches) {
      line.m0 = line.m1 = line.m2 = 0;
      left.begin(s, e);
      const a_C = mulVec(R_CB, a);
      const d_C = mulVec(R_CB, d);
      for (const { cross, excess } of downward) {
        const count = cross(ends, a_C, d_C);
        for (let i = 0; i < count; i += 2) left.claim(ends[i], ends[i + 1], area * excess, line);
      }
      if (line.m0 !== 0) sum.addAlong(a, d, line.m0, line.m1, line.m2);
    }
    return sum.moments();
  };
}
