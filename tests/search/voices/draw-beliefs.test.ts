import { describe, expect, test } from 'vitest';
import { MOST_COORDINATES } from '../../../src/math/scrambled-sobol.js';
import { BELIEFS } from '../../../src/records/shared/beliefs.js';
import { drawBeliefs, expectedSizes, MIDDLE_SIZES } from '../../../src/search/voices/draw-beliefs.js';
import { DRAWN_COORDINATES, drawsOf } from '../../../src/simulate/worlds/draws.js';

const WORLDS = 256;
const drawn = (seed: number, chance: number) => drawBeliefs(seed, WORLDS, () => chance);
const ofBelief = (sizes: ReturnType<typeof drawn>, b: number): number[] => sizes.map((world) => world[b]);
const leastShare = ({ least, most }: (typeof BELIEFS)[number]): number => least / most;

describe('drawBeliefs', () => {
  test('every belief has a coordinate of its own after those of physics', () => {
    expect(DRAWN_COORDINATES + BELIEFS.length).toBeLessThanOrEqual(MOST_COORDINATES);
  });

  test('where practice has no weight, nothing holds in any world, and nothing is expected', () => {
    expect(
      drawn(1, 0)
        .flat()
        .every((size) => size === 0),
    ).toBe(true);
    expect(drawn(1, 0)).toHaveLength(WORLDS);
    expect(expectedSizes(() => 0).every((size) => size === 0)).toBe(true);
  });

  test.each([1, 2, 77])('seed %i, full weight: all hold, sizes spread evenly from least to most', (seed) => {
    for (const [b, belief] of BELIEFS.entries()) {
      const sizes = ofBelief(drawn(seed, 1), b).sort((x, y) => x - y);
      const low = leastShare(belief);
      // any 2^k evenly spread points put one in each of 2^k even intervals
      for (const [i, size] of sizes.entries()) {
        expect(size).toBeGreaterThan(low + ((1 - low) * i) / WORLDS);
        expect(size).toBeLessThan(low + ((1 - low) * (i + 1)) / WORLDS);
      }
    }
  });

  test.each([0.1, 0.3, 0.5, 0.83])(
    'with a chance of %f that share of worlds has a belief hold, with sizes of the whole range',
    (chance) => {
      for (const b of BELIEFS.keys()) {
        const held = ofBelief(drawn(5, chance), b).filter((size) => size !== 0);
        // evenly spread points are off by less than one; points drawn at random would be by √(256 p (1 − p)), 4 to 8
        expect(Math.abs(held.length - chance * WORLDS)).toBeLessThanOrEqual(1);
        const mean = held.reduce((sum, size) => sum + size, 0) / held.length;
        expect(Math.abs(mean - MIDDLE_SIZES[b])).toBeLessThan(1 / held.length);
        expect(Math.abs((held.length * mean) / WORLDS - expectedSizes(() => chance)[b])).toBeLessThan(
          1.5 / WORLDS,
        );
      }
    },
  );

  test('the same seed draws the same, another seed other worlds', () => {
    expect(drawn(7, 0.5)).toEqual(drawn(7, 0.5));
    expect(drawn(8, 0.5)).not.toEqual(drawn(7, 0.5));
  });

  test('more worlds go on after the same first ones', () => {
    expect(drawBeliefs(7, WORLDS, () => 0.5).slice(0, 10)).toEqual(drawBeliefs(7, 10, () => 0.5));
  });

  test('a greater chance only adds worlds in which a belief holds', () => {
    const [few, more] = [drawn(3, 0.25), drawn(3, 0.6)];
    for (const [n, world] of few.entries())
      for (const [b, size] of world.entries()) if (size !== 0) expect(more[n][b]).not.toBe(0);
    expect(more.flat().filter((size) => size !== 0).length).toBeGreaterThan(
      few.flat().filter((size) => size !== 0).length,
    );
  });

  test('each belief goes by its own chance', () => {
    const only = drawBeliefs(1, WORLDS, ({ id }) => (id === BELIEFS[2].id ? 1 : 0));
    for (const world of only) expect(world.map((size) => size !== 0)).toEqual(BELIEFS.map((_, b) => b === 2));
  });

  test('whether a belief holds has nothing to do with the luck of that world, nor with the other beliefs', () => {
    const sizes = drawBeliefs(11, 4096, () => 0.5);
    const columns = [
      ...BELIEFS.map((_, b) => sizes.map((world) => (world[b] === 0 ? -1 : 1))),
      ...(['launchAngle', 'speed', 'frictionDry'] as const).map((what) =>
        sizes.map((_, n) => Math.sign(drawsOf(11, n).normal(what))),
      ),
    ];
    for (const [i, a] of columns.entries())
      for (const b of columns.slice(i + 1)) {
        const together = a.reduce((sum, value, n) => sum + value * b[n], 0) / 4096;
        expect(Math.abs(together)).toBeLessThan(4 / Math.sqrt(4096)); // four standard errors of independent ones
      }
  });
});
