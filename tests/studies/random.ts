import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';

/** Numbers by another generator than that of answers. */
export interface Random {
  uniform(low?: number, high?: number): number;
  /** Standard normal (Box & Muller, Ann. Math. Statist. 29, 610, 1958). */
  normal(): number;
}

export function random(seed: number): Random {
  const generator = xoroshiro128plus(seed);
  for (let i = 0; i < 16; i++) generator.next(); // the first draws of near seeds resemble each other
  const uniform = (low = 0, high = 1): number => low + (high - low) * uniformFloat64(generator);
  return {
    uniform,
    normal: () => Math.sqrt(-2 * Math.log(1 - uniform())) * Math.cos(2 * Math.PI * uniform()),
  };
}
