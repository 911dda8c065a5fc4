import type { SheetAnswer } from '../../records/answers/sheet-answer.js';
import { type DisplayUnit, givenWithUnit, type Units, withUnit } from '../text/display-units.js';
import { BLANK, type Block, rowsOf } from './blocks.js';

/** How far a ball may be off what the sheet takes it for before the marks are, in and oz (common practice, no source). */
const OFF = { arcIn: 1 / 16, markIn: 1 / 8, circumferenceIn: 1 / 16, topOz: 1 / 4, weightLb: 1 / 4 } as const;

/** What is measured before anything is marked: all marks rest on it. */
export function checkBlock({ check, ball }: SheetAnswer, units: Units): Block {
  const { tape, ounce, weight } = units;
  const row = (what: string, taken: string, off: number, unit: DisplayUnit, why: string): string[] => [
    what,
    taken,
    BLANK,
    `${withUnit(off, unit)}: ${why}`,
  ];
  const assumed = ball.circumferenceIn === undefined ? ' (assumed)' : '';
  const { pinToCgIn, pinToMassBiasIn, circumferenceIn, topWeightOz, weightLb } = check;
  const fineOunce = {
    ...ounce,
    show: (oz: number) => String(Number((oz * ounce.per).toFixed(ounce.per === 1 ? 2 : 0))),
  };
  return {
    heading: 'Check the ball',
    parts: [
      rowsOf(
        ['', 'sheet takes', 'measured', 'off by over'],
        [
          ...(pinToCgIn === null
            ? []
            : [row('pin to CG mark', withUnit(pinToCgIn, tape), OFF.arcIn, tape, 'new sheet')]),
          ...(pinToMassBiasIn === null
            ? []
            : [row('pin to mass-bias mark', withUnit(pinToMassBiasIn, tape), OFF.markIn, tape, 'stop')]),
          row(
            'circumference',
            `${withUnit(circumferenceIn, tape)}${assumed}`,
            OFF.circumferenceIn,
            tape,
            'new sheet',
          ),
          ...(topWeightOz === null
            ? []
            : [row('top weight', withUnit(topWeightOz, fineOunce), OFF.topOz, fineOunce, 'new sheet')]),
          row('weight', givenWithUnit(weightLb, weight), OFF.weightLb, weight, 'new sheet'),
        ],
      ),
    ],
  };
}
