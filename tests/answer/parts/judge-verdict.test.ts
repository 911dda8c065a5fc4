import { describe, expect, test } from 'vitest';
import { judgeVerdict } from '../../../src/answer/parts/judge-verdict.js';
import type { LayoutDifference } from '../../../src/records/answers/answer.js';
import { differs } from '../../support/recommend-answer.js';

type Visibility = LayoutDifference['weighed']['visibility'];

const difference = (weighed: Visibility, physics: Visibility): LayoutDifference => {
  const each = differs(1, weighed);
  return { ...each, physics: { ...each.physics, visibility: physics } };
};

describe('judgeVerdict: what the best found is against the layout judged', () => {
  test.each([
    { ahead: 0.95, weighed: 'seen', physics: 'seen', verdict: 'clearly-worse' },
    { ahead: 0.9, weighed: 'seen', physics: 'unseen', verdict: 'clearly-worse' },
    { ahead: 115 / 128, weighed: 'seen', physics: 'seen', verdict: 'clearly-worse' }, // shown as 90 of 100
    { ahead: 114 / 128, weighed: 'seen', physics: 'seen', verdict: 'probably-worse' },
    { ahead: 0.95, weighed: 'barely', physics: 'seen', verdict: 'probably-worse' },
    { ahead: 0.95, weighed: 'barely', physics: 'unseen', verdict: 'probably-worse' },
    { ahead: 0.95, weighed: 'unseen', physics: 'barely', verdict: 'probably-worse' },
    { ahead: 0.7, weighed: 'seen', physics: 'seen', verdict: 'probably-worse' },
    { ahead: 1, weighed: 'unseen', physics: 'unseen', verdict: 'no-difference-seen' },
    { ahead: 0.7, weighed: 'unseen', physics: 'unseen', verdict: 'no-difference-seen' },
    { ahead: 89 / 128, weighed: 'seen', physics: 'seen', verdict: 'probably-worse' }, // shown as 70 of 100
    { ahead: 0.69, weighed: 'seen', physics: 'seen', verdict: 'as-good' },
    { ahead: 0.69, weighed: 'unseen', physics: 'unseen', verdict: 'as-good' },
    { ahead: 0.2, weighed: 'seen', physics: 'seen', verdict: 'as-good' },
  ] as const)('ahead in $ahead of worlds, weighed $weighed, by physics $physics: $verdict', (row) => {
    const { ahead, weighed, physics, verdict } = row;
    expect(judgeVerdict(false, ahead, difference(weighed, physics))).toBe(verdict);
    expect(judgeVerdict(true, ahead, difference(weighed, physics))).toBe('not-allowed');
  });
});
