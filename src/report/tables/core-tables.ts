import { decimals } from '../../base/decimals.js';
import type { CoreAnswer } from '../../records/answers/answer.js';
import { changeShown, type DisplayUnit, type Units } from '../text/display-units.js';
import type { Grid } from '../text/table.js';

/** The parts of a core by their letters, then cover and filler. */
export function partsGrid({ parts, cover, numbers }: CoreAnswer, { weight, bore }: Units): Grid {
  const gcc = (value: number): string => decimals(value, 2);
  return {
    columns: [
      { head: '' },
      { head: 'part', align: 'left' },
      { head: 'g/cc' },
      { head: weight.name },
      { head: 'kept' },
    ],
    rows: [
      ...parts.map(({ sign, name, shape, densityGcc, weightLb, share }) => [
        sign,
        name === shape ? name : `${name} (${shape})`,
        gcc(densityGcc),
        weightLb === null ? '' : weight.show(weightLb),
        share === null ? '' : `${decimals(100 * share, 0)} %`,
      ]),
      ['', `cover, ${bore.show(cover.thicknessIn)} ${bore.name}`, gcc(cover.densityGcc), '', ''],
      ...(numbers ? [['', 'filler, from the weight', gcc(numbers.fillerGcc), '', '']] : []),
    ],
  };
}

/** A core's numbers before drilling, beside what the ball's record says where one was named. */
export function coreNumbersGrid({ numbers, published }: CoreAnswer, units: Units): Grid {
  if (!numbers) return { columns: [{ head: '' }], rows: [] };
  const { gyration, arc, ounce, fineTape } = units;
  const compared = published !== null && Object.values(published).some((told) => told !== null);
  const row = (
    name: string,
    unit: DisplayUnit,
    ofCore: number,
    told: number | null | undefined,
  ): readonly string[] => [
    `${name}, ${unit.name}`,
    unit.show(ofCore),
    ...(compared
      ? [
          told === null || told === undefined ? '' : unit.show(told),
          told === null || told === undefined ? '' : changeShown(unit, told, ofCore),
        ]
      : []),
  ];
  return {
    columns: [
      { head: '' },
      { head: 'this core' },
      ...(compared ? [{ head: 'published' }, { head: 'difference' }] : []),
    ],
    rows: [
      row('RG', gyration, numbers.rgIn, published?.rgIn),
      row('total differential', gyration, numbers.differentialIn, published?.differentialIn),
      row(
        'intermediate differential',
        gyration,
        numbers.intermediateDifferentialIn,
        published?.intermediateDifferentialIn,
      ),
      row('pin to CG', arc, numbers.pinToCgIn, published?.pinToCgIn),
      row('top weight', ounce, numbers.topWeightOz, published?.topWeightOz),
      row('CG from the centre', fineTape, numbers.cgOffsetIn, undefined),
    ],
  };
}
