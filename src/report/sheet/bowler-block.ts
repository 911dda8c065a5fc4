import type { SheetAnswer } from '../../records/answers/sheet-answer.js';
import { papUncertaintyIn } from '../../records/schemas/bowler.js';
import { type Units, withUnit } from '../text/display-units.js';
import { decimals } from '../text/figures.js';
import { type Block, rowsOf } from './blocks.js';
import { BLANK } from './holes-block.js';

/** The bowler's figures that the layout rests on. */
export const bowlerBlock = ({ bowler, grip }: SheetAnswer, units: Units): Block => ({
  heading: 'Bowler',
  parts: [
    rowsOf(
      [],
      [
        ['hand', `${bowler.hand}${bowler.thumbHole ? '' : ', no thumb hole'}`],
        ['PAP', `${papText(bowler.pap, units)}${guessText(bowler, units)}`],
        [
          'speed, rev rate',
          `${withUnit(bowler.speedMph, units.speed)}, ${decimals(bowler.revRateRpm, 0)} rpm`,
        ],
        [
          'axis tilt, rotation',
          `${decimals(bowler.axisTiltDeg, 0)}°, ${decimals(bowler.axisRotationDeg, 0)}°`,
        ],
        [
          'spans',
          grip
            ? `middle ${withUnit(grip.spanMiddleIn, units.bore)}, ring ${withUnit(grip.spanRingIn, units.bore)}, bridge ${withUnit(grip.bridgeIn, units.bore)}`
            : `middle ${BLANK}, ring ${BLANK}, bridge ${BLANK}`,
        ],
      ],
    ),
  ],
});

/** How far a PAP may be off that is not exactly known. */
function guessText(bowler: SheetAnswer['bowler'], { tape }: Units): string {
  const off = papUncertaintyIn(bowler);
  return off > 0 ? ` (± ${withUnit(off, tape)})` : '';
}

const papText = ({ overIn, upIn }: { overIn: number; upIn: number }, { tape }: Units): string =>
  `${withUnit(overIn, tape)} over${tape.show(upIn) === '0' ? '' : `, ${withUnit(Math.abs(upIn), tape)} ${upIn > 0 ? 'up' : 'down'}`}`;
