import { describe, expect, test } from 'vitest';
import { ties } from '../../src/search/ties.js';
import { type Sizes, visibility } from '../../src/search/visibility.js';
import { physicsVoice } from '../../src/search/voices/physics-voice.js';
import { layoutAt, outcomeOf } from '../support/outcomes.js';

const scatter: Sizes = { hookStartFt: 2, sharpnessDegPerFt: 0.04, totalHookBoards: 3 };
const none: Sizes = { hookStartFt: 0, sharpnessDegPerFt: 0, totalHookBoards: 0 };

describe('visibility: 30 shots of each show half of their scatter (2 √(2/30)), 8 show all of it (2 √(2/8))', () => {
  test.each([
    { size: { hookStartFt: 0 }, seen: 'unseen' },
    { size: { hookStartFt: 0.99 }, seen: 'unseen' },
    { size: { hookStartFt: 1 }, seen: 'barely' },
    { size: { hookStartFt: -1 }, seen: 'barely' },
    { size: { hookStartFt: 1.99 }, seen: 'barely' },
    { size: { hookStartFt: 2 }, seen: 'seen' },
    { size: { hookStartFt: -7 }, seen: 'seen' },
    { size: { hookStartFt: 0.5, sharpnessDegPerFt: -0.03 }, seen: 'barely' }, // the greater of both counts
    { size: { hookStartFt: 0.5, totalHookBoards: 40 }, seen: 'unseen' }, // hook was not wished for
  ] as const)('$size: $seen', ({ size, seen }) => {
    expect(visibility({ ...none, ...size }, scatter, ['hookStartFt', 'sharpnessDegPerFt'])).toBe(seen);
  });

  test('shots that do not vary at all show any difference, and none where there is none', () => {
    expect(visibility({ ...none, hookStartFt: 1e-6 }, none, ['hookStartFt'])).toBe('seen');
    expect(visibility(none, none, ['hookStartFt'])).toBe('unseen');
  });
});

describe('ties', () => {
  const shotAt = (hookStartFt: number) => ({
    layout: layoutAt(hookStartFt),
    outcome: outcomeOf({ hookStartFt }),
  });
  const shots = [36, 37.5, 38, 38.9, 39.1].map(shotAt);

  test('counts the layouts that lie within half a scatter, on either side, by what is wished for', () => {
    const voice = physicsVoice([]);
    expect(ties(shotAt(38), shots, voice, ['hookStartFt'], scatter)).toBe(3); // 37.5, 38, 38.9
    expect(ties(shotAt(38), shots, voice, ['totalHookBoards'], scatter)).toBe(5);
  });

  test('a voice that moves numbers moves what ties', () => {
    const doubled = {
      ...physicsVoice([]),
      outcome: (_effects: unknown, _world: number, { reaction, ...rest }: ReturnType<typeof outcomeOf>) => ({
        ...rest,
        reaction: { ...reaction, hookStart: 3 * reaction.hookStart },
      }),
    };
    expect(ties(shotAt(38), shots, doubled, ['hookStartFt'], scatter)).toBe(1);
  });
});
