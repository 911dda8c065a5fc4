import { expect, test } from 'vitest';
import { InputError } from '../../../src/base/errors.js';
import { formatBowlerList } from '../../../src/records/read/bowler-list.js';
import { demoShelf } from '../../../src/records/read/shelf.js';
import { inputErrorOf } from '../../support/faults-of.js';
import { readBowlerList } from '../../support/read-bowler-list.js';

const HEADS = 'name,hand,thumbHole,speedMph,revRateRpm,axisTiltDeg,axisRotationDeg,papOverIn,papUpIn';

function faultsOf(text: string): string[] {
  try {
    readBowlerList(text, 'list.csv');
  } catch (error) {
    if (error instanceof InputError) return error.faults.map(({ field, rule }) => `${field} ${rule}`);
    throw error;
  }
  return [];
}

test('readBowlerList: cells are typed as a person writes them', () => {
  const [kim, lee] = readBowlerList(
    `${HEADS},laydownBoard,skill\r\n"Kim, senior",right,yes,17,310,14,45,4 7/8,1/4 down,,\r\nLee,left,no,18.5,450,8,60,5 1/4,3/8,22,advanced\r\n`,
    'list.csv',
  );
  expect(kim).toEqual({
    schema: 'flarewise/bowler/1',
    name: 'Kim, senior',
    hand: 'right',
    thumbHole: true,
    speedMph: 17,
    revRateRpm: 310,
    axisTiltDeg: 14,
    axisRotationDeg: 45,
    pap: { overIn: 4.875, upIn: -0.25 },
  });
  expect(lee).toMatchObject({ thumbHole: false, laydownBoard: 22, skill: 'advanced', pap: { overIn: 5.25 } });
});

test.each([
  '=1+1',
  '+1',
  '-1',
  '@SUM(1)',
  '＝1',
  "'=1",
  "''=1",
  "'tis",
  "O'Hara",
  '=HYPERLINK("x";"y")',
  '- , "',
])('formatBowlerList: a name of %j is text to a spreadsheet, and comes back the same', (name) => {
  const [kim] = demoShelf().bowlers;
  const text = formatBowlerList([{ ...kim.record, name, note: name }]);
  const [bowler] = readBowlerList(text, 'list.csv');
  expect([bowler.name, bowler.note]).toEqual([name, name]);
  for (const cell of text.split(/[\r\n,]+"?/)) expect(cell).not.toMatch(/^[=+@＝]|^-\D|^-1$/);
});

test('readBowlerList: empty rows are passed over, and faults name rows as a spreadsheet counts them', () => {
  const kim = 'Kim;right;yes;17,5;310;14;45;4 7/8;0';
  const list = (rows: readonly string[]) => [HEADS.replaceAll(',', ';'), ...rows, ''].join('\r\n');
  const empty = [';;;;;;;;', '', ' ; ;;;;;;;'];
  expect(readBowlerList(list([kim, ...empty, kim, ...empty]), 'list.csv')).toHaveLength(2);
  const two = `"Kim\nsenior"${kim.slice(3)}`; // a cell of two lines is one row
  expect(faultsOf(list([two, ...empty, kim.replace('310', '3100')]))).toEqual([
    'row 6 (Kim): revRateRpm must be 30 to 700 rpm',
  ]);
  expect(faultsOf(list(empty))).toEqual(['file must have a row for each bowler below its heads']);
});

test.each([
  { what: 'an empty first line', spoil: (list: string) => `\r\n${list}` },
  { what: 'a line that names the separator', spoil: (list: string) => `\uFEFFsep=;\r\n${list}` },
  { what: 'an empty last column', spoil: (list: string) => list.replaceAll('\r', ';\r') },
])('readBowlerList: $what does not count', ({ spoil }) => {
  const list = `${HEADS.replaceAll(',', ';')}\r\nKim;right;yes;17,5;310;14;45;4 7/8;0\r\n`;
  expect(readBowlerList(spoil(list), 'list.csv')).toEqual(readBowlerList(list, 'list.csv'));
  expect(faultsOf(`${HEADS},\nKim,right,yes,17,310,14,45,4.875,0,left behind\n`)).toHaveLength(1);
});

test('readBowlerList: known columns are listed once, however many are unknown; each has a remedy', () => {
  const list = `${HEADS},Speed (km/h),PAP over (mm),Revs (rpm)\nKim,right,yes,17,310,14,45,4.875,0,28,124,310\n`;
  const { message, faults } = inputErrorOf(() => readBowlerList(list, 'list.csv'));
  expect(message).toMatch(/^(?!.*Known columns.*Known columns).*Known columns/s);
  expect(faults.map(({ hint }) => hint ?? 'none')).not.toContain('none');
  expect(faults).toHaveLength(3);
});

test('readBowlerList: a column that is there twice is named; of very many unknown ones the first are', () => {
  expect(faultsOf(`${HEADS},name\nKim,right,yes,17,310,14,45,4.875,0,Lee\n`)).toEqual([
    'column name must be there once',
  ]);
  const many = Array.from({ length: 30_000 }, (_, i) => `unknown ${i}`).join(',');
  expect(faultsOf(`${HEADS},${many}\n${'1,'.repeat(30_008)}1\n`)).toHaveLength(20);
});

test('readBowlerList: more rows than a club has are refused before they are all read', () => {
  expect(faultsOf(`${HEADS}\n${'Kim,right,yes,17,310,14,45,4.875,0\n'.repeat(20_001)}`)).toEqual([
    'file must have at most 20,000 rows',
  ]);
  const start = process.cpuUsage();
  expect(faultsOf(`name,hand\n${'x,y\n'.repeat(2_000_000)}`)).toEqual(['file must have at most 20,000 rows']);
  expect(process.cpuUsage(start).user / 1e6).toBeLessThan(2);
});

test('formatBowlerList: signs that cannot be seen stay out of cells; a PAP below the midline stays a number', () => {
  const [kim] = demoShelf().bowlers;
  const text = formatBowlerList([{ ...kim.record, name: '\t=1\u202e', pap: { overIn: 5, upIn: -0.25 } }]);
  expect(text).not.toMatch(/[\t\u202e]/);
  expect(text).toContain(',5,-0.25,');
  expect(readBowlerList(text, 'list.csv')[0].name).toBe('=1');
});

test.each([';', '\t'])('readBowlerList: cells parted by %j are read as well', (sign) => {
  const text = `${HEADS}\nKim,right,yes,17,310,14,45,4.875,0\n`.replaceAll(',', sign);
  expect(readBowlerList(text, 'list.csv')).toHaveLength(1);
});

test('readBowlerList: faults of all rows are told at once, each with its row and name', () => {
  const faults = faultsOf(
    `${HEADS}\nKim,right,perhaps,45,310,14,45,4.875,0\nLee,both,no,17,,14,45,4 7/8,x\n`,
  );
  expect(faults).toEqual([
    'row 2 (Kim): thumbHole must be true or false',
    'row 2 (Kim): speedMph must be 8 to 26 mph',
    'row 3 (Lee): hand must be "right" or "left"',
    'row 3 (Lee): revRateRpm must be a number, 30 to 700 rpm',
    'row 3 (Lee): pap.upIn must be a number, -3 to 3 in',
  ]);
});

test('readBowlerList: a column that is unknown or missing is named', () => {
  expect(faultsOf(`${HEADS.replace('speedMph', 'speed')}\nKim,right,yes,17,310,14,45,4.875,0\n`)).toEqual([
    'column speedMph must be there',
    'column speed must not be there: no such column is known',
  ]);
});

test('readBowlerList: a row with too few cells, and a list without rows, are told', () => {
  expect(faultsOf(`${HEADS}\nKim,right\n`)[0]).toContain('as many cells in each row as heads');
  expect(faultsOf(HEADS)[0]).toContain('must have a row for each bowler');
  expect(faultsOf('')[0]).toContain('must have a row for each bowler');
});

test('formatBowlerList: what it writes reads back the same, but for grips and scatters', () => {
  const bowlers = demoShelf().bowlers.map(({ record: { grip, scatter, ...rest } }) => rest);
  expect(readBowlerList(formatBowlerList(bowlers), 'list.csv')).toEqual(bowlers);
});

test('readBowlerList: axis tilt, axis rotation and PAP may be unknown or left out; they are guessed by kind, and said to be', () => {
  const [ann, ben, cid] = readBowlerList(
    `${HEADS},kind\nAnn,right,yes,17,310,?,45,,1/4 up,\nBen,right,no,18,450,,unknown,?,?,two-handed\nCid,left,yes,16,250,14,45,4 7/8,0,straight\n`,
    'list.csv',
  );
  expect(ann).toMatchObject({ axisTiltDeg: 14, axisRotationDeg: 45, pap: { overIn: 4.875, upIn: 0.25 } });
  expect(ann.uncertainty).toEqual({ axisTiltDeg: 5, papOverIn: 0.4 });
  expect(ben).toMatchObject({ axisTiltDeg: 8, axisRotationDeg: 62, pap: { overIn: 5.375, upIn: 1 } });
  expect(ben.uncertainty).toEqual({ axisTiltDeg: 5, axisRotationDeg: 11, papOverIn: 0.4, papUpIn: 0.45 });
  expect(cid.uncertainty).toBeUndefined();
  const [lee] = readBowlerList(
    'name,hand,thumbHole,speedMph,revRateRpm\nLee,right,yes,17-18,310\n',
    'list.csv',
  );
  expect(lee.uncertainty).toEqual({
    speedMph: 0.5,
    axisTiltDeg: 5,
    axisRotationDeg: 11,
    papOverIn: 0.4,
    papUpIn: 0.45,
  });
});

test('formatBowlerList: a guess stays a guess when it is read back', () => {
  const guessed = readBowlerList(`${HEADS},kind\nAnn,right,yes,about 17,310,?,45,,,straight\n`, 'list.csv');
  const again = readBowlerList(formatBowlerList(guessed), 'list.csv');
  expect(again).toEqual(guessed);
  expect(Object.keys(again[0].uncertainty ?? {}).sort()).toEqual([
    'axisTiltDeg',
    'papOverIn',
    'papUpIn',
    'speedMph',
  ]);
});

test('readBowlerList: speed and rev rate are not guessed; a kind that is none is told with its row', () => {
  expect(faultsOf(`${HEADS},kind\nAnn,right,yes,?,,?,45,,,strait\n`)).toEqual([
    'row 2 (Ann): speedMph must be a number, 8 to 26 mph',
    'row 2 (Ann): revRateRpm must be a number, 30 to 700 rpm',
    'row 2 (Ann): kind must be one of usual, straight, many-revs, two-handed, young',
  ]);
});

test.each(['speedMph +/-', 'speedMph ±', 'speedMph±', ' speedMph +- '])(
  'readBowlerList: a column headed %j says how far off the speed may be, in the units a person types',
  (head) => {
    const [ann, ben, cid] = readBowlerList(
      `${HEADS},${head}\nAnn,right,yes,17,310,14,45,5,0,0.5\nBen,right,yes,17,310,14,45,5,0,1 km/h\nCid,right,yes,17,310,?,45,5,0,?\n`,
      'list.csv',
    );
    expect(ann.uncertainty).toEqual({ speedMph: 0.5 });
    expect(ben.uncertainty?.speedMph).toBeCloseTo(1 / 1.609344, 9); // the international mile, 1959
    expect(cid.uncertainty).toEqual({ axisTiltDeg: 5 });
  },
);

test('readBowlerList: what the column says of a guess counts; of a number typed as a range it is refused', () => {
  const [ann] = readBowlerList(`${HEADS},axisTiltDeg ±\nAnn,right,yes,17,310,?,45,5,0,8\n`, 'list.csv');
  expect(ann).toMatchObject({ axisTiltDeg: 14, uncertainty: { axisTiltDeg: 8 } });
  expect(faultsOf(`${HEADS},speedMph ±\nAnn,right,yes,16-18,310,14,45,5,0,2\n`)).toEqual([
    'row 2 (Ann): speedMph must be a number, 8 to 26 mph',
  ]);
  expect(faultsOf(`${HEADS},speedMph ±\nAnn,right,yes,17,310,14,45,5,0,9\n`)).toEqual([
    'row 2 (Ann): uncertainty.speedMph must be 0 to 5 mph',
  ]);
});

test('heads and words of a list may have capitals, as spreadsheets write them', () => {
  const [kim] = readBowlerList(
    'Name,Hand,ThumbHole,SpeedMph,REVRATERPM,Skill,Kind,SpeedMph ±\nKim,Left,Yes,17,300,League,Young,1\n',
    'club.csv',
  );
  expect(kim).toMatchObject({
    name: 'Kim',
    hand: 'left',
    thumbHole: true,
    skill: 'league',
    uncertainty: { speedMph: 1 },
  });
});
