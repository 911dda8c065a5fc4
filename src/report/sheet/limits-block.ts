import type { SheetAnswer } from '../../records/answers/sheet-answer.js';
import { givenWithUnit, type Units, withUnit } from '../text/display-units.js';
import { BLANK, type Block, rowsOf } from './blocks.js';

/** Nearer than this to a limit a ball is weighed with care, oz: what a scale for balls is out by (common practice, no source). */
const CLOSE_OZ = 0.5;

/** Static weights beside their limit, to be weighed once drilled. */
export function limitsBlock({ drilled, limits }: SheetAnswer, units: Units): Block {
  const { ounce, weight } = units;
  const { top, side, finger } = drilled.staticOz;
  const [rule] = limits;
  const computed = (ounces: number, plus: string, minus: string): string => {
    if (Number(ounce.show(ounces)) === 0) return 'even';
    const left = rule.mostOz - Math.abs(ounces);
    const remark = !rule.applies ? '' : left < 0 ? ': OVER' : left < CLOSE_OZ ? ': close' : '';
    return `${withUnit(Math.abs(ounces), ounce)} to the ${ounces > 0 ? plus : minus}${remark}`;
  };
  const most = rule.applies ? givenWithUnit(rule.mostOz, ounce) : 'none';
  return {
    heading: 'Limits, and weights after drilling',
    parts: [
      rowsOf(
        ['', 'limit', 'computed', 'weighed'],
        [
          ['top or bottom', most, computed(top, 'grip', 'bottom'), BLANK],
          ['side', most, computed(side, 'PAP side', 'other side'), BLANK],
          ['finger or thumb', most, computed(finger, 'fingers', 'thumb'), BLANK],
          ['whole ball', '', withUnit(drilled.massLb, weight), BLANK],
        ],
      ),
    ],
  };
}
