import { expect, test } from 'vitest';
import { BOARD_COUNT } from '../../src/base/constants.js';
import { layOil } from '../../src/motion/lane/oil.js';
import type { Lane } from '../../src/records/schemas/lane.js';
import { patternOf } from '../../src/simulate/shot-problem.js';
import { LOW_SURFACE } from '../../src/simulate/worlds/assumed-surface.js';
import { houseLane } from '../support/problems.js';

/** A lane whose two sides differ. */
const skewed: Lane = {
  ...houseLane,
  zones: [
    ...houseLane.zones,
    { fromFt: 0, toFt: 10, fromBoard: 3, toBoard: 9.25, units: 33, unitsAtEnd: 20 },
  ],
};

const mirrored = (lane: Lane): Lane => ({
  ...lane,
  zones: lane.zones.map(({ fromBoard, toBoard, ...zone }) => ({
    ...zone,
    fromBoard: BOARD_COUNT - toBoard,
    toBoard: BOARD_COUNT - fromBoard,
  })),
  wornSide: (lane.wornSide ?? 'right') === 'right' ? 'left' : 'right',
});

test.each<[string, Lane]>([
  ['fresh oil', skewed],
  ['oil that is worn on the own side', { ...skewed, games: 24 }],
  ['oil that is worn on the far side', { ...skewed, games: 24, wornSide: 'left' }],
])('%s: a left-hander on the mirrored lane meets the right-hander’s, to the last bit', (_, lane) => {
  const [right, left] = [patternOf(lane, 'right'), patternOf(mirrored(lane), 'left')];
  expect(left).toEqual(right);
  expect(layOil(left)(LOW_SURFACE)).toEqual(layOil(right)(LOW_SURFACE));
  expect(patternOf(lane, 'left').zones).not.toEqual(right.zones);
});
