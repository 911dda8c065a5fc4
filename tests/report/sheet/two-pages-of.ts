import { describe, expect, test } from 'vitest';
import { PAPERS, type Paper } from '../../../src/base/paper.js';
import type { Ball } from '../../../src/records/schemas/ball.js';
import type { Bowler } from '../../../src/records/schemas/bowler.js';
import { loadTypeface } from '../../../src/report/font/typeface.js';
import { sheetPages } from '../../../src/report/sheet/sheet-pages.js';
import { UNITS, type UnitSystem } from '../../../src/report/text/display-units.js';
import { FIT, LONG_NAME, realSheet } from '../../support/pages/real-sheets.js';
import { averageBowler, houseLane, plainBall } from '../../support/problems.js';

/*
 * Front and back of one sheet of paper, whatever there is to say: with the longest names, a mass bias, the rings of a lane, demo records,
 * and a layout that runs into the holes, old ones and new.
 */

const typeface = loadTypeface();
const { rings } = await realSheet({ lane: { ...houseLane, name: LONG_NAME } });

const GRIPS = {
  assumed: undefined,
  given: FIT,
  vented: { ...FIT, vents: [{ into: 'thumb', diameterIn: 0.1875, overIn: 0.75, upIn: -1.5 }] },
} as const satisfies Record<string, Bowler['grip']>;

const HANDS = ['right', 'left'] as const;
/** All there are of hands, grips and earlier drillings. */
export const ALL_SHEETS = HANDS.flatMap((hand) =>
  Object.entries(GRIPS).flatMap(([fit, grip]) =>
    [0, 1, 2].map((drillings) => ({ hand, fit, grip, drillings })),
  ),
);

/** Tests that sheets of these, on either paper and in either units, take two pages. */
export const takeTwoPages = (sheets: typeof ALL_SHEETS): void =>
  describe.each(sheets)(
    'a $hand hand, grip $fit, drilled $drillings times before',
    ({ hand, grip, drillings }) => {
      const earlier = [
        { hand, pap: { overIn: 4.5, upIn: 0.5 }, layout: '40 x 4 x 30', grip: FIT },
        { hand, pap: { overIn: 4.5, upIn: 0.5 }, layout: '90 x 5 x 60' },
      ];
      const asked = realSheet({
        bowler: { ...averageBowler, name: LONG_NAME, hand, ...(grip ? { grip } : {}) },
        ball: {
          ...plainBall,
          name: LONG_NAME,
          coreShape: 'asymmetric',
          intermediateDifferentialIn: 0.015,
          ...(drillings > 0 ? { drilledBefore: earlier.slice(0, drillings) } : {}),
        } as Ball,
        text: '65 x 4 3/4 x 55',
      });

      test.each(
        (Object.keys(PAPERS) as Paper[]).flatMap((paper) =>
          (Object.keys(UNITS) as UnitSystem[]).map((units) => ({ paper, units })),
        ),
      )('takes two pages on $paper, in $units units', async ({ paper, units }) => {
        const answer = { ...(await asked), rings, invented: ['bowler', 'ball', 'lane'] };
        expect(answer.stop.length).toBeGreaterThan(0);
        expect(sheetPages(answer, paper, typeface, UNITS[units]).length).toBeLessThanOrEqual(2);
      });
    },
  );
