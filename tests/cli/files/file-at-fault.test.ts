import { expect, test } from 'vitest';
import { withFileAtFault } from '../../../src/cli/files/file-at-fault.js';
import { Refusal } from '../../../src/records/refusals/refusal.js';

const meet = (field: string) =>
  new Refusal([
    { code: 'bores-meet', params: { field, hole: 'middle', other: 'ring', overlapIn: 0.01, depthIn: 0 } },
  ]);

test('a fault of the grip names the bowler’s file, and the field as it stands in it', () => {
  const found = withFileAtFault(meet('bowler.grip'), { bowler: 'me.json', ball: 'new.json' }) as Refusal;
  expect(found).toBeInstanceOf(Refusal);
  expect(found.source).toBe('me.json');
  expect(found.statements[0]?.params).toMatchObject({ field: 'grip', hole: 'middle' });
});

test('one of an earlier drilling names the ball’s', () => {
  const found = withFileAtFault(meet('ball.drilledBefore[0].grip'), { bowler: 'me.json', ball: 'old.json' });
  expect((found as Refusal).source).toBe('old.json');
});

test('of balls that are compared, the one at fault is named, and none where it is not known which', () => {
  const balls = { ball: ['plain-high', 'bad.json'] };
  const found = withFileAtFault(meet('balls[1].drilledBefore[0].grip'), balls) as Refusal;
  expect([found.source, found.statements[0]?.params]).toMatchObject([
    'bad.json',
    { field: 'drilledBefore[0].grip' },
  ]);
  const one = withFileAtFault(meet('ball.drilledBefore[0].grip'), { ball: ['bad.json'] });
  expect((one as Refusal).source).toBe('bad.json');
  const unknown = meet('ball.drilledBefore[0].grip');
  expect(withFileAtFault(unknown, balls)).toBe(unknown);
});

test('what names no record, or one that no flag named, is left as it is', () => {
  for (const error of [meet('bowler.grip'), meet('layout'), new Error('other')])
    expect(withFileAtFault(error, { ball: 'new.json' })).toBe(error);
});
