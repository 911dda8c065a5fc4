import { expect, test } from 'vitest';
import { compare } from '../../src/answer/compare.js';
import { mapAnswer } from '../../src/answer/map/map-answer.js';
import { spreadOnLane } from '../../src/answer/spread-on-lane.js';
import { numbersOf } from '../../src/prepare/mark-of.js';
import { MIDDLE_LAYOUT } from '../../src/prepare/middle-layout.js';
import { mapAnswerSchema } from '../../src/records/answers/map-answer.js';
import { readBall } from '../../src/records/read/read-ball.js';
import type { PublishedBall } from '../../src/records/schemas/ball.js';
import { COMPARED_IDS } from '../../src/records/schemas/reaction-numbers.js';
import { withSentences } from '../../src/report/wording/with-sentences.js';
import { averageBowler, houseLane, plainBall } from '../support/problems.js';
import { SMALL_BUDGET } from '../support/small-budget.js';

const options = { seed: 1, workers: 1, pinSide: 'both' as const, budget: SMALL_BUDGET };
const inputs = { bowler: averageBowler, ball: plainBall, lane: houseLane };

test('spreadOnLane: the rows with the least and the greatest of the differential that moves more, as `compare` has them', async () => {
  const map = mapAnswer({ ...inputs, around: MIDDLE_LAYOUT }, 'buffer', SMALL_BUDGET);
  const onLane = await spreadOnLane(inputs, map, options);
  expect(mapAnswerSchema.parse(withSentences({ ...map, onLane }))).toMatchObject({ onLane });
  // over the buffer the total differential moves more
  const byTotal = [...map.rows].sort((a, b) => a.drilled.differentialIn - b.drilled.differentialIn);
  const ends = [byTotal[0], byTotal[byTotal.length - 1]];
  expect([onLane.from, onLane.to]).toEqual(ends.map(({ layout }) => layout.text));
  const compared = await compare(
    {
      bowler: averageBowler,
      lane: houseLane,
      want: {},
      varies: 'layout',
      entrants: ends.map(({ layout }) => ({ ball: plainBall, layout: numbersOf(layout) })),
    },
    options,
  );
  const { size } = compared.rows[1].fromFirst!.physics;
  for (const id of COMPARED_IDS) expect(onLane.size[id], id).toBe(size[id]);
  expect(onLane.worlds).toBe(SMALL_BUDGET.worlds);
  for (const id of COMPARED_IDS) expect(onLane.scatter[id]).toBeGreaterThan(0);
});

test('spreadOnLane: of an asymmetric ball’s drilling angle the centre of mass makes most, as its cores without top weight show', async () => {
  const ball = readBall('data/balls/asymmetric-strong.json') as PublishedBall;
  const onLane = async (given: PublishedBall) =>
    spreadOnLane(
      { ...inputs, ball: given },
      mapAnswer({ ...inputs, ball: given, around: MIDDLE_LAYOUT }, 'drilling-angle', SMALL_BUDGET),
      options,
    );
  const { centreHeld, size } = await onLane(ball);
  expect(Math.abs(centreHeld!.left)).toBeLessThan(Math.abs(centreHeld!.total) / 2);
  // by another way to the same: without top weight the core hardly moves the centre of mass as it turns
  const level = await onLane({ ...ball, topWeightOz: 0 });
  expect(Math.abs(level.size.hookStartFt)).toBeLessThan(Math.abs(size.hookStartFt) / 2);
});
