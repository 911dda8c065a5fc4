import { describe, expect, test } from 'vitest';
import { mapCsv } from '../../../src/report/csv/map-csv.js';
import { mapReport } from '../../../src/report/screens/map-report.js';
import { UNITS } from '../../../src/report/text/display-units.js';
import { columnsOf } from '../../../src/report/text/wrap.js';
import { mapAnswer as answer } from '../../support/map-answer.js';
import { pageOf } from '../../support/page.js';

const { rows } = answer;

/** No difference on the lane, nor of flare. */
const SAME = { hookStartFt: 0, sharpnessDegPerFt: 0, totalHookBoards: 0, entryAngleDeg: 0, flareIn: 0 };

const oneLine = (text: string): string => text.replace(/\s+/g, ' ');

describe('mapReport', () => {
  test.each([40, 60, 80, 120, 200])('keeps within %i columns', (width) => {
    for (const line of mapReport(answer, pageOf(width), true).split('\n'))
      expect(columnsOf(line), line).toBeLessThanOrEqual(width);
  });

  test('says in words whether the number matters, first; assumptions and cautions stand in the full screen', () => {
    const text = oneLine(mapReport(answer, pageOf(80)));
    expect(text).toContain(
      'The drilling angle matters for the numbers of this ball: it moves the intermediate differential most',
    );
    expect(text).toContain('by 0.009 in (0.008 to 0.017); 0.003 in is enough to matter');
    expect(text).not.toContain('simulated tries');
    const full = oneLine(mapReport(answer, pageOf(80), true));
    expect(full).toContain('The CG lies on the pin');
    expect(full).toContain('The rules of your local body decide');
    const still = { ...answer, reach: { ...answer.reach, matters: false } };
    expect(oneLine(mapReport(still, pageOf(80)))).toContain('hardly matters for the numbers of this ball');
    expect(text).toContain('but less than 0.1 ft of hook start');
    const metric = oneLine(mapReport(answer, pageOf(80, { units: UNITS.metric })));
    expect(metric).toContain('but less than 0.03 m of hook start');
  });

  test('a VAL angle that may have been meant as a pin buffer is questioned, but not where pin buffers are mapped', () => {
    const small = rows.map((row) => ({ ...row, layout: { ...row.layout, pinToPapIn: 4.5, valAngleDeg: 3 } }));
    const at = (over: typeof answer.over) =>
      oneLine(mapReport({ ...answer, over, rows: small as never }, pageOf(80)));
    expect(at('drilling-angle')).toContain('meant as a pin buffer, write its unit: 50 x 4 1/2 x 3 in.');
    expect(at('pin-to-pap')).toContain('meant as a pin buffer, write its unit');
    expect(at('buffer')).not.toContain('meant as a pin buffer');
    expect(oneLine(mapReport(answer, pageOf(80)))).not.toContain('meant as a pin buffer');
  });

  test('the glance fits a screen of 24 lines at 80 columns', () => {
    const lines = mapReport(answer, pageOf(80)).split('\n');
    expect(lines.findIndex((line) => line.includes('this ball over the layouts'))).toBeLessThan(24);
  });

  test('bars stand on scales of all balls: each from its least to its most, to a column', () => {
    const lines = mapReport(answer, pageOf(120)).split('\n');
    const bar = lines.find((line) => line.includes('moves 0.009 in'))?.split('│')[1] ?? '';
    const { least, most } = answer.reach.numbers.intermediateDifferentialIn;
    const end = answer.scales.intermediateDifferentialIn.most;
    expect(Math.abs(bar.indexOf('█') - (least / end) * bar.length)).toBeLessThanOrEqual(1);
    expect(Math.abs(bar.lastIndexOf('█') - (most / end) * bar.length)).toBeLessThanOrEqual(1);
    expect(bar.indexOf('×')).toBe(0);
  });

  test.each([
    ['unseen', 'You would not see that in a night of shots with each'],
    ['barely', 'You would need a night of shots with each to see that'],
    ['seen', 'You would see that in a game with each'],
  ] as const)(
    'on a lane the ends are told in feet and boards beside the scatter (%s)',
    (visibility, words) => {
      const numbers = { ...SAME, hookStartFt: 0.4, totalHookBoards: -0.7, flareIn: -0.32 };
      const scatter = {
        hookStartFt: 1.2,
        sharpnessDegPerFt: 0.03,
        totalHookBoards: 2.2,
        entryAngleDeg: 0.6,
        flareIn: 0.12,
      };
      const onLane = {
        lane: 'House',
        from: 'A',
        to: 'B',
        size: numbers,
        scatter,
        visibility,
        centreHeld: null,
        worlds: 64,
      };
      const inMm = oneLine(mapReport({ ...answer, onLane }, pageOf(80, { units: UNITS.metric })));
      expect(inMm).toContain('Flare is 8 mm less; from shot to shot it varies by ±3 mm.');
      const alike = { ...onLane, size: SAME };
      expect(oneLine(mapReport({ ...answer, onLane: alike }, pageOf(80)))).toContain(
        'Flare is no different;',
      );
      expect(oneLine(mapReport({ ...answer, onLane }, pageOf(80)))).toContain(
        'Compared with A, B is 0.4 ft later, 0.7 boards less (mean of 64 simulated tries). ' +
          `${words}: the shots vary by ±1.2 ft, ±0.030 deg/ft, ±2.2 boards and ±0.6 deg. ` +
          'Flare is 0.3 in less; from shot to shot it varies by ±0.1 in.',
      );
    },
  );

  test.each([
    [
      0.2,
      'Most of that comes from the drilled ball’s centre of mass (static weight): with one centre of mass',
    ],
    [-1.1, 'Most of that comes from RG, differentials and flare: with one centre of mass (static weight)'],
  ])(
    'where the difference is seen, its cause is told by what is left with one centre of mass (%s ft)',
    (left, words) => {
      const numbers = { ...SAME, hookStartFt: -1.2 };
      const told = (visibility: 'seen' | 'unseen'): string =>
        mapReport(
          {
            ...answer,
            onLane: {
              ...{
                lane: 'House',
                from: 'A',
                to: 'B',
                size: numbers,
                scatter: numbers,
                worlds: 64,
                visibility,
              },
              centreHeld: { reading: 'hookStartFt', total: -1.2, left },
            },
          },
          pageOf(80),
        ).replace(/\s+/g, ' ');
      expect(told('seen')).toContain(
        `${words} for both, hook start would change by ${left > 0 ? '+' : ''}${left} ft instead of -1.2 ft (one steady shot).`,
      );
      expect(told('unseen')).not.toContain('Most of that');
    },
  );

  test('in full each row’s mark stands where its number lies on the scale of all balls', () => {
    const lines = mapReport(answer, pageOf(80), true).split('\n');
    const first = lines.findIndex((line) => line.startsWith('Intermediate differential')) + 1;
    const bars = rows.map((_, i) => lines[first + i].split('│')[1]);
    const { most } = answer.scales.intermediateDifferentialIn;
    bars.forEach((bar, i) => {
      const at = bar.indexOf('●') / (bar.length - 1);
      const want = rows[i].drilled.intermediateDifferentialIn / most;
      expect(Math.abs(at - want)).toBeLessThanOrEqual(0.5 / (bar.length - 1) + 1e-9);
    });
  });

  test('draws with ASCII alone when asked', () => {
    expect(mapReport(answer, pageOf(80, { ascii: true }), true)).toMatch(/^[\n -~]*$/);
  });
});

test('mapCsv: a head and one row a layout, each with as many fields', () => {
  const lines = mapCsv(answer).trimEnd().split('\r\n');
  expect(lines).toHaveLength(1 + rows.length);
  const width = lines[0].split(',').length;
  for (const line of lines) expect(line.split(',')).toHaveLength(width);
  const column = lines[0].split(',').indexOf('intermediateDifferentialIn');
  expect(Number(lines[2].split(',')[column])).toBe(rows[1].drilled.intermediateDifferentialIn);
});
