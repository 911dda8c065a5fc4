import { sheetAnswer } from '../../../src/answer/sheet-answer.js';
import type { SheetAnswer } from '../../../src/records/answers/sheet-answer.js';
import type { Ball } from '../../../src/records/schemas/ball.js';
import type { Bowler } from '../../../src/records/schemas/bowler.js';
import { type GripRecord, usualGrip } from '../../../src/records/schemas/grip.js';
import type { Lane } from '../../../src/records/schemas/lane.js';
import { parseLayout } from '../../../src/records/text/layout-text.js';
import { averageBowler, houseLane, plainBall } from '../problems.js';

/** Sheets as the program answers them, for those who draw and read them. */
export function realSheet({
  bowler = averageBowler,
  ball = plainBall,
  lane = null,
  text = '70 x 4 1/2 x 30',
}: {
  bowler?: Bowler;
  ball?: Ball;
  lane?: Lane | null;
  text?: string;
} = {}): Promise<SheetAnswer> {
  return sheetAnswer(
    { bowler, ball, lane, layout: parseLayout(text) },
    { date: '2026-03-01', seed: 1, ounce: 'moment' },
  );
}

/** As long as a name may be, with signs that markup would take for its own. */
export const LONG_NAME = 'Bartholomew “Long Name” of the Society of Very Careful Markers & Co <No.1>';

/** A fit as a shop measures one: no two sizes alike. */
export const FIT: GripRecord = {
  ...usualGrip(true),
  spanMiddleIn: 4.28125,
  spanRingIn: 4.421875,
  bridgeIn: 0.40625,
  middle: {
    diameterIn: 0.703125,
    depthIn: 2,
    forwardPitchIn: 0.125,
    lateralPitchIn: -0.125,
    sleeve: { boreIn: 0.96875, depthIn: 2, heightIn: 1 },
  },
  ring: {
    diameterIn: 0.71875,
    depthIn: 2,
    forwardPitchIn: -0.0625,
    lateralPitchIn: 0.25,
    sleeve: { boreIn: 0.96875, depthIn: 2, heightIn: 1 },
  },
};

/** Sheets that differ in all that changes how a sheet looks. */
export const realSheets = async (): Promise<Record<string, SheetAnswer>> => ({
  'a right-hander': await realSheet({ lane: houseLane }),
  'a left-hander with a mass bias': await realSheet({
    bowler: { ...averageBowler, hand: 'left' },
    ball: { ...plainBall, coreShape: 'asymmetric', intermediateDifferentialIn: 0.015 } as Ball,
    text: '50 x 4 x 45',
  }),
  'two hands and a long name': await realSheet({
    bowler: {
      ...averageBowler,
      name: LONG_NAME,
      thumbHole: false,
      pap: { overIn: 5.375, upIn: 1 },
    },
    ball: { ...plainBall, name: LONG_NAME },
    text: '60 x 5 x 40',
  }),
  'the pin below the PAP, in the thumb': await realSheet({
    bowler: { ...averageBowler, pap: { overIn: 3.375, upIn: -0.25 } },
    text: '40 x 4 1/2 x 130',
  }),
  'a redrilled ball with a vent': await realSheet({
    bowler: {
      ...averageBowler,
      grip: { ...usualGrip(true), vents: [{ into: 'thumb', diameterIn: 0.1875, overIn: 0.75, upIn: -1.5 }] },
    },
    ball: {
      ...plainBall,
      drilledBefore: [
        { hand: 'right', pap: { overIn: 4.5, upIn: 0.5 }, layout: '40 x 4 x 30', grip: usualGrip(true) },
      ],
    },
    text: '65 x 4 3/4 x 55',
  }),
  'a redrilled ball that must not be drilled so': await realSheet({
    ball: {
      ...plainBall,
      drilledBefore: [{ hand: 'right', pap: { overIn: 4.5, upIn: 0.5 }, layout: '40 x 4 x 30' }],
    },
    text: '45 x 4 1/2 x 45',
  }),
  'a left-hander with a fit, on a lane': await realSheet({
    bowler: { ...averageBowler, hand: 'left', grip: FIT },
    lane: houseLane,
    text: '60 x 4 3/4 x 35',
  }),
  'the pin on the PAP': await realSheet({ text: '50 x 0 x 35' }),
});
