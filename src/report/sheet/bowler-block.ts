import type { SheetAnswer } from '../../records/sheet-answer.js';
import { decimals, drillSize, tape } from '../figures.js';
import { type Block, rowsOf } from './blocks.js';

/** The bowler's figures that the layout rests on. */
export const bowlerBlock = ({ bowler, grip }: SheetAnswer): Block => ({
  heading: 'Bowler',
  parts: [
    rowsOf(
      [],
      [
        ['hand', `${bowler.hand}${bowler.thumbHole ? '' : ', no thumb hole'}`],
        ['PAP', papText(bowler.pap)],
        ['speed, rev rate', `${decimals(bowler.speedMph, 1)} mph, ${decimals(bowler.revRateRpm, 0)} rpm`],
        [
          'axis tilt, rotation',
          `${decimals(bowler.axisTiltDeg, 0)}°, ${decimals(bowler.axisRotationDeg, 0)}°`,
        ],
        [
          'spans',
          `middle ${drillSize(grip.spanMiddleIn)} in, ring ${drillSize(grip.spanRingIn)} in, bridge ${drillSize(grip.bridgeIn)} in`,
        ],
      ],
    ),
  ],
});

const papText = ({ overIn, upIn }: { overIn: number; upIn: number }): string =>
  `${tape(overIn)} in over${tape(upIn) === '0' ? '' : `, ${tape(Math.abs(upIn))} in ${upIn > 0 ? 'up' : 'down'}`}`;
