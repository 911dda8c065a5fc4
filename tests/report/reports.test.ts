import { describe, expect, test } from 'vitest';
import { fromKeys } from '../../src/base/from-keys.js';
import type { Objection } from '../../src/records/answers/statements/objections.js';
import { SECTION_IDS } from '../../src/records/schemas/recommend-sections.js';
import { drilledReport } from '../../src/report/screens/drilled-report.js';
import type { NextStep } from '../../src/report/screens/next-steps.js';
import {
  recommendationReport,
  recommendationSections,
} from '../../src/report/screens/recommendation-report.js';
import { rollReport } from '../../src/report/screens/roll-report.js';
import { UNITS } from '../../src/report/text/display-units.js';
import type { Page } from '../../src/report/text/page.js';
import { columnsOf } from '../../src/report/text/wrap.js';
import { pageOf } from '../support/page.js';
import { drilledAnswer, lane, recommendAnswer, rollAnswer } from '../support/recommend-answer.js';
import { said } from '../support/said.js';

const reports: readonly [string, (page: Page) => string][] = [
  ['recommendation', (page) => recommendationReport(recommendAnswer, page, { sections: SECTION_IDS })],
  ['drilled', (page) => drilledReport(drilledAnswer, page)],
  ['roll', (page) => rollReport(rollAnswer, 'right', lane, page)],
];
const ESCAPE = '\u001b';
const oneLine = (text: string): string => text.replace(/\s+/g, ' ');

describe.each(reports)('%s report', (_name, report) => {
  test.each([40, 60, 80, 120, 200])('no line is wider than %i columns, with colour or without', (width) => {
    for (const page of [pageOf(width), pageOf(width, { level: 1 }), pageOf(width, { ascii: true })])
      for (const line of report(page).split('\n')) expect(columnsOf(line), line).toBeLessThanOrEqual(width);
  });

  test('without colour there is no escape code, with colour the words are the same', () => {
    const plain = report(pageOf(80));
    const coloured = report(pageOf(80, { level: 1 }));
    expect(plain).not.toContain(ESCAPE);
    expect(coloured).toContain(ESCAPE);
    // biome-ignore lint/suspicious/noControlCharactersInRegex: colour codes are what is removed
    expect(coloured.replace(/\u001b\[\d+m/g, '')).toBe(plain);
  });

  test('an ASCII page holds ASCII only', () => {
    expect(report(pageOf(80, { ascii: true }))).toMatch(/^[\x20-\x7e\n]*$/);
  });

  test('ends in one line break and has no trailing blanks or double empty lines', () => {
    const text = report(pageOf(80));
    expect(text).toMatch(/[^\n]\n$/);
    expect(text).not.toMatch(/ \n|\n\n\n/);
  });

  test('ends with every caution', () => {
    const text = oneLine(report(pageOf(80)));
    const cautions = text.slice(text.indexOf('Before drilling'));
    for (const caution of recommendAnswer.cautions) expect(cautions).toContain(said([caution]));
  });

  test('never shows NaN or undefined', () => {
    expect(report(pageOf(80))).not.toMatch(/NaN|undefined|null/);
  });
});

const next: readonly NextStep[] = [
  {
    code: 'sheet',
    words: [
      ['sheet'],
      ['--bowler', 'me'],
      ['--ball', 'new'],
      ['--lane', 'house'],
      ['--layout', '70 x 4 1/2 x 30'],
    ],
  },
];

describe('recommendation report', () => {
  const text = recommendationReport(recommendAnswer, pageOf(80), { sections: SECTION_IDS });

  test('the best layout stands in the first screenful, in words as well', () => {
    const top = oneLine(text.split('\n').slice(0, 8).join('\n'));
    expect(top).toContain('70 x 4 1/2 x 30');
    expect(top).toContain('Drilling angle 70°, pin 4 1/2 in from the PAP, VAL angle 30°.');
    expect(top).toContain('HOW SURE Compared with the usual 45 x 4 x 45: 2.7 ft later');
  });

  test('the ranking lists every layout with its numbers and the usual one last', () => {
    const lines = text.split('\n');
    const first = lines.find((line) => line.startsWith('  1 ')) as string;
    expect(first.trim().split(/ {2,}/)).toEqual([
      '1 70 x 4 1/2 x 30',
      '2',
      '82',
      '38.2',
      '0.41',
      '12.3',
      '5.1',
      '3.9',
      '87',
    ]);
    const table = lines.slice(
      lines.indexOf('Ranked'),
      lines.findIndex((line) => line.startsWith('How ')),
    );
    const ranked = table.flatMap((line) => /^ {2}(\d|\*) (\d.*?) {2}/.exec(line)?.[2] ?? []);
    expect(ranked).toEqual(['70 x 4 1/2 x 30', '85 x 3 3/4 x 45', '55 x 5 1/4 x 35', '45 x 4 x 45']);
  });

  test.each([60, 80, 120, 200])(
    'without sections it is one screen of at most 23 lines at %i columns',
    (width) => {
      const lines = recommendationReport(recommendAnswer, pageOf(width), { next }).trimEnd().split('\n');
      expect(lines.length).toBeLessThanOrEqual(23);
      const first = lines.join('\n');
      for (const label of ['DRILL', 'HOW SURE', 'WHY', 'PRACTICE', 'ALSO GOOD'])
        expect(first).toMatch(new RegExp(`^${label} `, 'm'));
      expect(oneLine(first.replaceAll('\\\n', ''))).toContain('flarewise sheet --bowler me');
    },
  );

  test('holes that meet old ones are told before how sure the answer is', () => {
    const [best, ...others] = recommendAnswer.layouts;
    const webs = [{ widthIn: 0.1, hole: 'ring' as const, oldHole: 'middle' as const, drilling: null }];
    const findings = [{ code: 'thin-webs' as const, params: { leastIn: 0.25, webs } }];
    const redrilled = { ...best, legality: { ...best.legality, findings } };
    const text = oneLine(
      recommendationReport({ ...recommendAnswer, layouts: [redrilled, ...others] }, pageOf(80)),
    );
    expect(text).toContain('New holes meet old ones, whose plugs may chip or crack: see --show marks.');
    expect(text.indexOf('meet old ones')).toBeLessThan(text.indexOf('HOW SURE'));
  });

  test('a guessed PAP is told before how sure the answer is', () => {
    const bowler = { ...recommendAnswer.inputs.bowler, uncertainty: { papOverIn: 0.4, papUpIn: 0.45 } };
    const guessed = { ...recommendAnswer, inputs: { ...recommendAnswer.inputs, bowler } };
    for (const width of [40, 60, 80]) {
      const text = oneLine(recommendationReport(guessed, pageOf(width)));
      expect(text).toContain('FIRST Your PAP is a guess (± 0.45 in). Have it measured before drilling.');
      expect(text.indexOf('FIRST')).toBeLessThan(text.indexOf('HOW SURE'));
    }
    const metric = oneLine(recommendationReport(guessed, pageOf(80, { units: UNITS.metric })));
    expect(metric).toContain('Your PAP is a guess (± 11.4 mm).');
  });

  test('marks are given to a sixteenth, and a distance that has no meaning is left out', () => {
    const pin = text.split('\n').find((line) => /^ {2}pin {2}/.test(line)) as string;
    expect(pin.trim().split(/ {2,}/)).toEqual(['pin', '2 5/16', '4 1/2']);
  });

  test('shares say their sign and add up to the whole', () => {
    const score = text.split('\n').find((line) => line.startsWith('  score, points')) as string;
    expect(score.trim().split(/ {2,}/).slice(1)).toEqual(['+17', '+24', '-7', '+34']);
  });

  test('says so when the usual layout itself comes out best', () => {
    const [first, ...others] = recommendAnswer.layouts;
    const usual = { ...first, text: recommendAnswer.middle.text };
    const headline = {
      code: 'is-the-usual' as const,
      params: { usual: recommendAnswer.middle.text, ties: 12, of: 300 },
    };
    const text = oneLine(
      recommendationReport({ ...recommendAnswer, headline, layouts: [usual, ...others] }, pageOf(80)),
    );
    expect(text).toContain(
      'Drill the usual 45 x 4 x 45: no other layout is ahead of it in most simulated tries.',
    );
    expect(text).toContain('12 of 300 layouts tie:');
    expect(text).not.toContain('Compared with the usual');
  });

  test('where the usual layout comes out best, nothing is shared out between it and itself', () => {
    const none = { total: 0, drillingAngle: 0, pinToPap: 0, valAngle: 0 };
    const [first, ...others] = recommendAnswer.layouts;
    const shares = fromKeys(Object.keys(first.shares) as (keyof typeof first.shares)[], () => none);
    const why = (layouts: typeof recommendAnswer.layouts): string =>
      recommendationSections({ ...recommendAnswer, layouts }, ['why'], pageOf(80));
    expect(why([first, ...others])).toContain('Contribution of each layout number');
    expect(why([{ ...first, shares }, ...others])).not.toContain('Contribution of each layout number');
  });

  test('says when the usual layout it compares with would itself be set aside', () => {
    const objections: Objection[] = [{ code: 'ring-near-hole', params: {} }];
    const text = oneLine(
      recommendationReport(
        { ...recommendAnswer, middle: { ...recommendAnswer.middle, objections } },
        pageOf(80),
        { sections: ['compare'] },
      ),
    );
    expect(text).toContain(
      'The usual layout would itself be set aside: an oil ring would run over or too near to a hole.',
    );
  });
});

describe('drilled report', () => {
  const text = oneLine(drilledReport(drilledAnswer, pageOf(80)));

  test('an illegal layout is called so in words', () => {
    expect(text).toContain('NOT within Fixture rules');
    expect(text).toContain('Top weight 3.4 oz exceeds 3 oz');
  });

  test('an uncertain axis is called so', () => {
    expect(text).toContain('This place is uncertain');
  });

  test('a redrilled ball is called so, with the weight of its plugs and where they lie; a new one is not', () => {
    const redrilled = {
      oldHoles: 3,
      plugOz: 4.72,
      plugTakenOz: 0.31,
      oldMarks: [{ mark: 'old thumb hole', fromGripCentreIn: 2.75, fromPapIn: 7.3, fromPinIn: 6.4 }],
      plugged: { massLb: 14.94, rgIn: 2.536, differentialIn: 0.043, intermediateDifferentialIn: 0.002 },
    };
    for (const width of [60, 80, 200]) {
      const report = drilledReport({ ...drilledAnswer, redrilled }, pageOf(width));
      for (const line of report.split('\n')) expect(columnsOf(line), line).toBeLessThanOrEqual(width);
      expect(oneLine(report)).toContain('numbers of a redrilled ball. Its 3 old holes hold 4.7 oz of plug');
      expect(oneLine(report)).toContain('holes take 0.3 oz');
      expect(report).toMatch(/old thumb hole +2 3\/4 +7 5\/16 +6 3\/8/);
    }
    expect(text).not.toContain('redrilled');
  });

  test('static weights name the heavier side and even ones', () => {
    expect(text).toContain(
      '1.2 oz to the top (grip side); 0.5 oz to the side away from the PAP; finger side even',
    );
  });
});

describe('roll report', () => {
  test('the path is listed every five feet to the pins', () => {
    const lines = rollReport(rollAnswer, 'right', lane, pageOf(80)).split('\n');
    const from = lines.indexOf('Every 5 ft') + 3;
    const rows = lines.slice(from, lines.indexOf('', from)).filter((line) => /^ *\d+ .*\d$/.test(line));
    const feet = rows.map((line) => Number(line.trim().split(/ +/)[0]));
    expect(feet).toEqual([0, 5, 10, 15, 20, 25, 30, 35, 40, 45, 50, 55, 60]);
  });

  test('without a full roll before the pins none is claimed', () => {
    const skidding = { ...rollAnswer, reaction: { ...rollAnswer.reaction, rollsBeforePins: false } };
    const text = rollReport(skidding, 'right', lane, pageOf(80));
    expect(text).toContain('not before the pins');
    expect(text.slice(0, text.indexOf('Reaction'))).not.toMatch(/[●](?! roll)/);
  });
});
