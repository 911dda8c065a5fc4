import { expect, test } from 'vitest';
import { fitEnsemble } from '../../src/ball/core/ensemble.js';
import type { PublishedNumbers } from '../../src/ball/core/published.js';
import { publishedNumbers } from '../../src/prepare/published-numbers.js';
import { sharedFits } from '../../src/prepare/shared-fits.js';
import type { PublishedBall } from '../../src/records/schemas/ball.js';
import { plainBall } from '../support/problems.js';

const published: PublishedNumbers = publishedNumbers(plainBall as PublishedBall, 'moment');

test('sharedFits: the same question is fitted once, another anew, and both as without it', () => {
  let fits = 0;
  const fitter = sharedFits((...asked) => {
    fits += 1;
    return fitEnsemble(...asked);
  });
  expect(fitter(published, 3)).toEqual(fitEnsemble(published, 3));
  expect(fitter({ ...published }, 3)).toEqual(fitEnsemble(published, 3));
  expect(fits).toBe(1);
  expect(fitter(published, 4)).toEqual(fitEnsemble(published, 4));
  expect(fits).toBe(2);
});

test('sharedFits: of very many it keeps those asked for last', () => {
  const asked: number[] = [];
  const nothing = { bodies: [], points: [], tried: 0, misfits: {} };
  const fitter = sharedFits((_, count) => {
    asked.push(count);
    return nothing;
  });
  for (let count = 1; count <= 40; count++) fitter(published, count);
  fitter(published, 1); // the oldest is asked for again
  fitter(published, 41);
  fitter(published, 1);
  fitter(published, 2);
  expect(asked.slice(40)).toEqual([41, 2]);
});
