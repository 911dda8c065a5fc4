import { logAnswer } from '../../../src/answer/log-answer.js';
import { learn } from '../../../src/learn/learn.js';
import { nightMeans } from '../../../src/learn/night-means.js';
import { addShot, headOf } from '../../../src/records/log/add-shot.js';
import { oddShot } from '../../../src/records/log/odd-shot.js';
import { parseRecord } from '../../../src/records/read/read-record.js';
import { drilledLayoutSchema } from '../../../src/records/schemas/drilled-layout.js';
import { averageBowler, houseLane, plainBall } from '../../support/problems.js';
import { TINY_BUDGET } from '../../support/small-budget.js';
import { spoiledRecord } from '../spoiled-record.js';
import { target } from '../target.js';
import { LOG } from './sound.js';

/* What is made of a log that can be read: remarks, means, what it teaches. */

const LAYOUT = { drillingAngleDeg: 70, pinToPapIn: 4.5, valAngleDeg: 30 };
const RELEASE = { mph: 17, deviation: 0.5 };
const readLog = (value: unknown) => parseRecord(drilledLayoutSchema, value, 'first.json');

export const LOGS = [
  target({
    name: 'what a log shows',
    what: 'remarks, oddities and means of logs that can be read',
    inputs: 40_000,
    arbitrary: spoiledRecord([LOG], 6),
    take: (value) => {
      const record = readLog(value);
      return {
        answer: logAnswer([{ id: 'first', record }], () => 40),
        nights: record.nights.map((night) => ({
          means: nightMeans(night),
          odd: night.shots.map((shot) => oddShot({ ...shot, confirmed: undefined }, night, RELEASE)),
          more: addShot(record.nights, { lane: 'x', ...headOf({}, night).head }, night.shots[0] ?? {}),
        })),
      };
    },
  }),
  target({
    name: 'what a log teaches',
    what: 'the learned state: a fit by physics to logs that can be read',
    inputs: 400,
    chunk: 40,
    arbitrary: spoiledRecord([LOG], 2),
    take: (value) => {
      const nights = readLog(value).nights.map((night) => ({ night, lane: houseLane }));
      const lesson = learn(averageBowler, [{ ball: plainBall, layout: LAYOUT, nights }], {
        budget: TINY_BUDGET,
      });
      return lesson && { learned: lesson.learned, misfit: lesson.misfit, evidence: lesson.evidence };
    },
  }),
];
