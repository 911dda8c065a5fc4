import { createHash } from 'node:crypto';
import { expect, test } from 'vitest';
import { fitEnsemble, SEARCH_EDITION } from '../../../src/ball/core/ensemble.js';
import { EDGE_BALLS, USUAL_BALLS } from '../../support/balls.js';

test('SEARCH_EDITION: is the fingerprint of what a search finds; a change of the fit must change it', () => {
  const found = [...USUAL_BALLS, ...EDGE_BALLS].map((wanted) => fitEnsemble(wanted, 64).points);
  const fingerprint = createHash('sha256').update(JSON.stringify(found)).digest('hex').slice(0, 16);
  expect(fingerprint, 'the fit has changed: set SEARCH_EDITION to what was received').toBe(SEARCH_EDITION);
});
