import { expect, test } from 'vitest';
import type { RecommendAnswer } from '../../../src/records/answers/answer.js';
import { firstScreen, whyTexts } from '../../../src/report/screens/first-screen.js';
import { rankingNote } from '../../../src/report/screens/recommendation-report.js';
import { UNITS } from '../../../src/report/text/display-units.js';
import {
  alsoTexts,
  apartTexts,
  askedText,
  sizeTexts,
  sureText,
} from '../../../src/report/wording/answer-facts.js';
import { reachHeading } from '../../../src/report/wording/page-headings.js';
import { pageOf } from '../../support/page.js';
import { recommendAnswer as answer } from '../../support/recommend-answer.js';

const [best] = answer.layouts;
const withoutWish = { ...answer, inputs: { ...answer.inputs, want: {} }, targets: [] };

test('without a wish an answer says by what layouts are ranked, and of no wish that it is met', () => {
  const texts = (given: typeof answer): string =>
    [
      ...firstScreen(given, [], pageOf(80)),
      sureText(given, best, UNITS.trade),
      rankingNote(given, UNITS.trade),
    ].join('\n');
  expect(texts(answer)).toMatch(/Nearer to the wish[\s\S]*exactly the reaction asked for/);
  expect(texts(answer)).not.toContain('entry angles');
  expect(texts(withoutWish)).toContain('Asked for: no particular reaction, so ranked by entry angle');
  expect(texts(withoutWish)).toMatch(
    /Nearer to the best entry angles[\s\S]*100 is one of the best entry angles/,
  );
  expect(texts(withoutWish)).not.toMatch(/the wish|reaction asked for/);
});

test('without a wish the entry angle is said first of why, beside the best ones and the usual layout’s', () => {
  const noWish = { code: 'no-wish', params: { entryDeg: { least: 4, most: 6 } } } as const;
  const middle = { ...answer.middle, reaction: { ...answer.middle.reaction, entryAngleDeg: 6.64 } };
  const [first, ...others] = answer.layouts;
  const layouts: typeof answer.layouts = [
    { ...first, reaction: { ...first.reaction, entryAngleDeg: 5.21 } },
    ...others,
  ];
  const given = { ...withoutWish, layouts, middle, assumptions: [noWish] };
  const screen = firstScreen(given, [], pageOf(200)).join('\n');
  expect(screen).toMatch(/WHY +Entry angle 5\.2 deg, where 4 to 6 are best; the usual layout’s is 6\.6\./);
  expect(firstScreen(answer, [], pageOf(200)).join('\n')).not.toContain('Entry angle');
});

test('that a difference is not seen is said of what it says: of both combined where physics and practice differ', () => {
  const [both] = sizeTexts(answer, best, UNITS.trade);
  expect(both).toMatch(
    /^Compared with the usual 45 x 4 x 45: by physics .*; by practice .*\. With both combined, you would /,
  );
  const [physics] = sizeTexts({ ...answer, voices: null }, best, UNITS.trade);
  expect(physics).toMatch(/^Compared with the usual 45 x 4 x 45: \d[^.]*(\.\d[^.]*)*; you would /);
});

test('how often the first is ahead of the next is said in words', () => {
  const [also] = alsoTexts(answer);
  expect(also).toMatch(/ \(the first is ahead of it in \d+ of 100 tries\)[,:]? /);
});

test('one cause of several differences that makes more of one than is left is not called a part of it', () => {
  const because = (reading: 'hookStartFt' | 'totalHookBoards', total: number, byCause: number) => ({
    code: 'cause-of-difference' as const,
    params: { reading, total, cause: 'flare' as const, byCause, without: total - byCause },
  });
  const why = (byCause: number): string | undefined =>
    whyTexts(
      { targets: [] },
      {
        ...best,
        reasons: [because('hookStartFt', 0.8, 0.7), because('totalHookBoards', -0.6, byCause)],
      },
      UNITS.trade,
    )[0];
  const differences = 'By physics, one steady shot against the usual: 0.8 ft later, 0.6 boards less';
  expect(why(-0.5)).toBe(`${differences}, 0.7 ft and 0.5 boards of it from flare.`);
  expect(why(-0.9)).toBe(`${differences} (by flare alone 0.7 ft and 0.9 boards).`);
});

test('wishes that no layout meets together: said below them with what is missed and the scatter, and not where another layout does', () => {
  const missed = [
    { reading: 'hookStartFt', by: 0.8, shareOfRange: 0.3 },
    { reading: 'sharpnessDegPerFt', by: -0.02, shareOfRange: 0.2 },
  ] as const;
  const missing = (code: 'wish-missed' | 'wishes-do-not-join', size = 1) => ({
    ...answer,
    limits: [{ code, params: { missed: missed.map((each) => ({ ...each, by: size * each.by })) } }],
  });
  const screen = firstScreen(missing('wishes-do-not-join'), [], pageOf(200));
  const asked = screen.findIndex((line) => line.startsWith('Asked for'));
  expect(screen[asked + 1]).toMatch(
    /^No layout tried has .*: this one is 0\.8 ft later, 0\.020 deg\/ft smoother than asked; your shots vary by ±/,
  );
  expect(apartTexts(missing('wish-missed'), UNITS.trade)).toEqual([]);
  expect(apartTexts(missing('wishes-do-not-join', 1e-3), UNITS.trade)).toEqual([]); // it would be shown as 0
  expect(apartTexts(answer, UNITS.trade)).toEqual([]);
});

test('a number that no layout reaches is missed by how far it is from what was asked for, not from the nearest', () => {
  const target = { ...answer.targets[0]!, wish: 'hookStart', reading: 'hookStartFt', step: null } as const;
  const far = {
    ...answer,
    targets: [{ ...target, asked: 50, value: 45.3 }],
    limits: [
      {
        code: 'wishes-do-not-join',
        params: { missed: [{ reading: 'hookStartFt', by: -0.8, shareOfRange: 0.3 }] },
      },
    ],
  } as typeof answer;
  expect(apartTexts(far, UNITS.trade)[0]).toMatch(/: this one is 5\.5 ft earlier than asked; /);
  const { reaction } = best!;
  const heading = reachHeading(
    far.targets,
    'It',
    { ...reaction, hookStartFt: 44.5 },
    answer.scatter,
    UNITS.trade,
  );
  expect(heading).toBe('It misses what was asked for by 5.5 ft of hook start');
});

test('a number that was asked for stands as it was asked, also where no layout reaches it', () => {
  const target = {
    ...answer.targets[0]!,
    wish: 'hookStart',
    reading: 'hookStartFt',
    step: null,
    value: 45.3,
  } as const;
  expect(askedText([{ ...target, asked: 50 }], UNITS.trade)).toBe(
    'hook start 50.0 ft (out of reach: the nearest is 45.3 ft)',
  );
  expect(askedText([{ ...target, asked: 45.31 }], UNITS.trade)).toBe('hook start 45.3 ft');
  expect(whyTexts({ targets: [{ ...target, asked: 50 }] }, best, UNITS.trade)[0]).toMatch(/\(wanted 50\.0\)/);
});

test('what moves the ball more than its shots vary is told with its size, and whether it leads away from the wish', () => {
  const at = (grit: number, hookStartFt: number, score: number): RecommendAnswer['levers'][number] => ({
    kind: 'surface',
    change: { code: 'finish-at', params: { grit, insteadOf: 2000 } },
    score,
    reaction: { ...best!.reaction, hookStartFt: best!.reaction.hookStartFt + hookStartFt },
  });
  const moved = (levers: RecommendAnswer['levers'], given: Partial<RecommendAnswer> = {}): string =>
    firstScreen({ ...answer, levers, ...given }, [], pageOf(200)).join('\n');
  const { score } = best!;
  expect(moved([at(500, -2.5, score - 30)])).toMatch(
    /MOVES MORE +cover at 500 grit, not 2000: 2\.5 ft earlier, farther from the wish/,
  );
  expect(moved([at(4000, 2.5, score + 3)])).toMatch(
    /MOVES MORE +cover at 4000 grit, not 2000: 2\.5 ft later$/m,
  );
  expect(moved([at(500, -2.5, score - 30)], { targets: [] })).not.toContain('farther');
  expect(moved([at(500, -0.9 * answer.scatter.hookStartFt, score - 30)])).not.toContain('MOVES MORE');
});
