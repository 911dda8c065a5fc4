import { expect, test } from 'vitest';
import { ARROWS_FT } from '../../src/base/constants.js';
import { FOOT, from } from '../../src/base/units.js';
import { nightMeans } from '../../src/learn/night-means.js';
import { asRead, exactly, readAimOf, throughBoards } from '../../src/learn/read-aim.js';
import { READING_ERROR } from '../../src/learn/readings.js';
import { xToBoard } from '../../src/motion/lane/boards.js';
import type { Launch } from '../../src/motion/shot/release.js';
import { drawsAt } from '../../src/simulate/worlds/draws.js';
import { USUAL_AIM_ERRORS } from '../support/without-log.js';

const read = throughBoards(20, 14);
const boardsOf = ({ x, angle }: Launch) => [
  xToBoard(x),
  xToBoard(x + from(ARROWS_FT, FOOT) * Math.tan(angle)),
];
const inWorld = (scores: Readonly<Record<string, number>>) =>
  boardsOf(asRead(read, USUAL_AIM_ERRORS)(drawsAt((what) => scores[what] ?? 0)));

test('an aim as read is where it is read by who reads right, and on lower boards by as much as they are read too high', () => {
  expect(inWorld({})).toEqual(boardsOf(read).map((board) => expect.closeTo(board, 9)));
  const { always, ofNight } = READING_ERROR.arrowsBoard;
  const [laydown, arrows] = inWorld({ arrowsRead: 1 });
  expect(laydown).toBeCloseTo(20, 9);
  expect(arrows).toBeCloseTo(14 - Math.hypot(always, ofNight), 2);
  const moved = inWorld({ laydownRead: 1 });
  expect(moved[0]).toBeLessThan(20);
  expect(moved[1]).toBeCloseTo(14, 2); // over the same board at the arrows
  expect(boardsOf(exactly(read)(drawsAt(() => 1)))).toEqual(boardsOf(read));
});

test('readAimOf: the mean boards of a night with how far they are off alike; null where one was not read', () => {
  const shots = [
    { laydownBoard: 20, arrowsBoard: 14 },
    { laydownBoard: 20, arrowsBoard: 14 },
  ];
  const against = readAimOf(nightMeans({ lane: 'a lane', targetBoard: 14, shots }))!;
  expect([against.laydownBoard, against.arrowsBoard]).toEqual([20, 14]);
  expect(against.errors).toEqual(USUAL_AIM_ERRORS);
  const readOff = readAimOf(nightMeans({ lane: 'a lane', shots }))!;
  expect(readOff.errors.arrowsRead).toBeGreaterThan(against.errors.arrowsRead);
  expect(readAimOf(nightMeans({ lane: 'a lane', shots: [{ arrowsBoard: 14 }] }))).toBeNull();
});
