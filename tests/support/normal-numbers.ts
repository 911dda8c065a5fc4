import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import { probit } from 'simple-statistics';

/** Independent standard normal numbers, the same for a seed, one after the other. */
export function normalNumbers(seed: number): (count: number) => number[] {
  const random = xoroshiro128plus(seed);
  for (let i = 0; i < 16; i++) random.next(); // the first draws of near seeds resemble each other
  return (count) =>
    Array.from({ length: count }, () => probit(Math.min(1 - 1e-12, Math.max(1e-12, uniformFloat64(random)))));
}
