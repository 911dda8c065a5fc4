import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { CARD_FILE, cardSchema, MODEL_FILE } from '../../src/regression/card.js';
import { FEATURES } from '../../src/regression/features.js';
import { fingerprint } from '../../src/regression/fingerprint.js';
import { MODELS } from '../../src/regression/model-files.js';
import { openModel } from '../../src/regression/reaction-model.js';
import { TARGETS } from '../../src/regression/targets.js';
import { errorsBetween } from '../fit/appraise.js';
import { takeRows } from '../fit/rows.js';
import { shotRows } from '../fit/shot-rows.js';
import { runFit } from '../support/run-fit.js';

const card = cardSchema.parse(JSON.parse(await readFile(`${MODELS}${CARD_FILE}`, 'utf8')));
const committed = await readFile(`${MODELS}${MODEL_FILE}`);

/** Lanes of another seed: some four thousand shots. */
const FRESH_SEED = 2002;
const FRESH_LANES = 300;

test('on thousands of fresh shots the committed regression errs as its card says', async () => {
  const fresh = takeRows(shotRows(FRESH_SEED, 0, FRESH_LANES), () => true);
  const model = await openModel(committed, card.fit.basis, TARGETS.length);
  const features = { dims: [fresh.count, FEATURES.length], values: fresh.features };
  const errors = errorsBetween(await model.answer(features), fresh.answers);
  await model.close();
  expect(fresh.count).toBeGreaterThan(3000);
  card.outputs.forEach(({ name, heldOut }, j) => {
    // mean squares of a few thousand shots of lanes that differ, with rare outliers, scatter by up to a fifth
    expect(errors[j].rmse / heldOut.rmse, name).toBeGreaterThan(0.8);
    expect(errors[j].rmse / heldOut.rmse, name).toBeLessThan(1.2);
    expect(errors[j].p95 / heldOut.p95, name).toBeGreaterThan(0.85);
    expect(errors[j].p95 / heldOut.p95, name).toBeLessThan(1.15);
  });
});

/** A fit takes about a third of that on two idle cores. */
const HOUR = 3_600_000;

/** An engine whose probe shots differ, as far as `committed-model.test.ts` allows, gives another file, as good. */
const isItsEngine = fingerprint().hash === card.physics.hash;

describe('the whole fit, done again', () => {
  test.runIf(isItsEngine)(
    'gives the committed file, byte for byte, on the kind of processor it was fitted on',
    async () => {
      const folder = await mkdtemp(join(tmpdir(), 'flarewise-refit-'));
      const { seed, lanes } = card.data;
      const { code, err } = await runFit([
        ...['--seed', String(seed), '--lanes', String(lanes), '--epochs', String(card.fit.epochs)],
        ...['--workers', '2', '--data', join(folder, 'data'), '--out', join(folder, 'out')],
      ]);
      expect(code, err).toBe(0);
      const again = await readFile(join(folder, 'out', MODEL_FILE));
      await rm(folder, { recursive: true });
      expect(again.equals(committed)).toBe(true);
    },
    HOUR,
  );
});
