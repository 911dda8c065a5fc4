import { createHash } from 'node:crypto';
import { cp, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { regressionAnswer } from '../../../src/answer/parts/regression-answer.js';
import type { RegressionNotice } from '../../../src/records/answers/statements/regression-notices.js';
import { CARD_FILE, MODEL_FILE } from '../../../src/regression/card.js';
import { MODELS } from '../../../src/regression/model-files.js';
import { type Regression, shareRegression } from '../../../src/regression/open-regression.js';
import { UNITS } from '../../../src/report/text/display-units.js';
import { regressionText } from '../../../src/report/wording/regression-text.js';
import { gridCandidates, layoutOf } from '../../../src/search/candidates/candidates.js';
import { nominalShots } from '../../../src/search/candidates/nominal-shots.js';
import { targetsOf } from '../../../src/search/scoring/target.js';
import { problemScorer } from '../../../src/search/surrogate/problem-scorer.js';
import { survey } from '../../../src/search/surrogate/survey.js';
import { physicsVoice } from '../../../src/search/voices/physics-voice.js';
import { withSetting } from '../../../src/simulate/setting.js';
import { averageBowler, houseLane, plainBall } from '../../support/problems.js';
import { SMALL_BUDGET } from '../../support/small-budget.js';

let folder: string;
beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'flarewise-regression-'));
  await cp(MODELS, folder, { recursive: true });
});
afterEach(async () => {
  vi.doUnmock('onnxruntime-node');
  await rm(folder, { recursive: true });
});

const whyOf = (regression: Regression): RegressionNotice | null =>
  regression.kind === 'unusable' ? regression.why : null;

/** What an answer and its screen say of a search that had to do without. */
async function told(why: RegressionNotice): Promise<string> {
  const answer = await regressionAnswer({ surveyed: { why }, byRegression: () => null }, [], {
    marker: 'CG mark',
  });
  expect(answer).toEqual({
    notice: why,
    arithmetic: null,
    candidateWorlds: 0,
    tunedTo: 0,
    listed: [],
    difference: null,
  });
  return regressionText(answer, UNITS.trade);
}

describe('a regression that cannot be used is told in one line, and nothing is thrown', () => {
  test('not wanted', async () => {
    const why = whyOf(await shareRegression(null).open());
    expect(await told(why!)).toBe('Searched by physics alone: the fitted regression was switched off.');
  });

  test('missing', async () => {
    const why = whyOf(await shareRegression(join(folder, 'nowhere')).open());
    expect(await told(why!)).toBe('Searched by physics alone: the fitted regression is missing.');
  });

  test('damaged', async () => {
    await writeFile(join(folder, MODEL_FILE), 'not a model');
    const why = whyOf(await shareRegression(folder).open());
    expect(await told(why!)).toBe('Searched by physics alone: the fitted regression is damaged.');
  });

  test('no ONNX file though it is the file that its card names', async () => {
    const file = Buffer.from('not a model');
    await writeFile(join(folder, MODEL_FILE), file);
    const card = JSON.parse(await readFile(join(folder, CARD_FILE), 'utf8'));
    card.file.sha256 = createHash('sha256').update(file).digest('hex');
    await writeFile(join(folder, CARD_FILE), JSON.stringify(card));
    const why = whyOf(await shareRegression(folder).open());
    expect(await told(why!)).toBe(
      'Searched by physics alone: the file of the fitted regression cannot be read.',
    );
  });

  test('a problem outside what it was fitted on', async () => {
    const regression = await shareRegression(folder).open();
    if (regression.kind === 'unusable') throw new Error(regression.why.code);
    const elsewhere = {
      ...regression.card,
      inputs: regression.card.inputs.map((input) => ({
        ...input,
        least: input.most + 1,
        most: input.most + 2,
      })),
    };
    const inputs = { bowler: averageBowler, ball: plainBall, lane: houseLane, want: { totalHook: 4 } };
    const options = { seed: 1, workers: 1, pinSide: 'above', budget: SMALL_BUDGET } as const;
    await withSetting(inputs, options, async (setting) => {
      const rolled = nominalShots(setting);
      const { practice, sides, ball } = setting;
      const layouts = gridCandidates(practice, ball.published.radius, { arcIn: 1, angleDeg: 40 }, sides)
        .map((candidate) => layoutOf(candidate, practice, ball.published.radius))
        .filter((layout) => layout !== null);
      await rolled.roll(layouts);
      const nominal = rolled.allowed();
      const targets = targetsOf(
        inputs.want,
        nominal.map(({ outcome }) => outcome),
      );
      const outside = await problemScorer(layouts, nominal, setting, { ...regression, card: elsewhere });
      expect(outside).toEqual({ why: { code: 'outside-what-was-fitted', params: {} } });
      const inside = await problemScorer(layouts, nominal, setting, regression);
      if ('why' in inside) throw new Error(inside.why.code);
      const surveyed = await survey(inside, physicsVoice(targets), setting);
      expect(surveyed.ranked).toHaveLength(layouts.length);
    });
    await regression.model.close();
  });
});

test('what regression and physics expect of the layouts listed is told side by side, with the difference', async () => {
  const layout = { drillingAngleDeg: 50, pinToPapIn: 4.5, valAngleDeg: 35 };
  const row = (meanScore: number) => ({ layout, worlds: { meanScore } }) as never;
  const look = vi.fn(async () => undefined);
  const surveyed = {
    arithmetic: 'runtime',
    ranked: [],
    candidateWorlds: () => 1234,
    tunedTo: 700,
    shots: 400,
    look,
  } as never;
  const answer = await regressionAnswer({ surveyed, byRegression: () => 80 }, [row(83), row(76)], {
    marker: 'CG mark',
  });
  expect(look).toHaveBeenCalledWith([layout, layout]); // so that each is told from all worlds of the survey
  expect(answer.listed).toEqual([
    { layout: '50 x 4 1/2 x 35', byRegression: 80, byPhysics: 83 },
    { layout: '50 x 4 1/2 x 35', byRegression: 80, byPhysics: 76 },
  ]);
  expect(answer.difference).toEqual({ typical: Math.sqrt((9 + 16) / 2), worst: 4, layouts: 2 });
  expect(regressionText(answer, UNITS.trade)).toContain(
    'the regression expected and physics found mean scores of 80.0 and 83.0, 80.0 and 76.0: 3.5 points apart, at most 4.0.',
  );
  expect(regressionText(answer, UNITS.trade)).toContain('(1234 tries under plausible conditions)');
  const plain = 'onnxruntime-node is missing or does not load on this machine';
  expect(regressionText(answer, UNITS.trade)).not.toContain(plain);
  expect(regressionText({ ...answer, arithmetic: 'plain' }, UNITS.trade)).toContain(plain);
});

describe('without the runtime', () => {
  test('the regression is ready all the same, by plain arithmetic', async () => {
    vi.doMock('onnxruntime-node', () => {
      throw new Error('cannot find it');
    });
    const regression = await shareRegression(folder).open();
    expect(regression.kind === 'ready' && regression.model.arithmetic).toBe('plain');
    vi.doUnmock('onnxruntime-node');
    const usual = await shareRegression(folder).open();
    expect(usual.kind === 'ready' && usual.model.arithmetic).toBe('runtime');
  });
});
