import { describe, expect, test } from 'vitest';
import { driller } from '../../../src/ball/drill/drill.js';
import { inertiaNumbers } from '../../../src/ball/drill/drilled-numbers.js';
import { INCH, to } from '../../../src/base/units.js';
import { placeLayout } from '../../../src/layout/placement.js';
import { ballProblem } from '../../../src/prepare/ball-problem.js';
import { type GridStep, USUAL_BUDGET } from '../../../src/prepare/budget.js';
import { toLayout } from '../../../src/prepare/to-layout.js';
import { demoShelf } from '../../../src/records/read/shelf.js';
import { loadPractice } from '../../../src/records/shared/shared-data.js';
import { gridCandidates, layoutOf } from '../../../src/search/candidates/candidates.js';
import { rejectByMarks } from '../../../src/search/candidates/constraints.js';
import { layoutQuantities } from '../../../src/search/voices/layout-quantities.js';
import { averageBowler } from '../../support/problems.js';
import { SMALL_BUDGET } from '../../support/small-budget.js';

const TRIED = 50;
const GRIT = 1500;
const practice = loadPractice();

/**
 * How far the fit may err, in. Beliefs go by ranges of 0.03 in of differential, 0.02 in of intermediate differential and 0.12 in of RG: a
 * belief's size is off by no more than 5 % around cores without lobes; where holes cut into a lobe, which is no smooth thing, by a quarter.
 */
const CLOSE = { differentialIn: 0.0015, intermediateDifferentialIn: 0.0015, rgIn: 0.0015 };
const LOBES = { differentialIn: 0.006, intermediateDifferentialIn: 0.006, rgIn: 0.0015 };

const { balls } = demoShelf();
const FAMILIES = ['plain-medium', 'lobed-strong', 'asymmetric-strong', 'own-solids', 'own-mesh'];

describe.each(FAMILIES)('layoutQuantities of %s', (id) => {
  const { record } = balls.find((ball) => ball.id === id)!;
  const ball = ballProblem(record, averageBowler, 'moment', undefined, { ...SMALL_BUDGET, cores: 1 });
  const { radius } = ball.published;
  const gridOf = (step: GridStep) =>
    gridCandidates(practice, radius, step, ['above'])
      .map((candidate) => layoutOf(candidate, practice, radius))
      .filter((layout) => layout !== null)
      .filter((layout) => rejectByMarks(layout, ball, practice) === null);
  const all = gridOf(SMALL_BUDGET.grid.finest);
  const prepared = () => layoutQuantities({ ball, grit: GRIT }, all);
  // of all that may be marked, spread by a stride that shares no factor with their number
  const markable = gridOf(USUAL_BUDGET.grid.finest);
  const tried = Array.from({ length: TRIED }, (_, i) => markable[(7919 * i + 13) % markable.length]);

  test('drilled numbers of fifty layouts are those of really drilling them, near enough', () => {
    const quantitiesOf = prepared();
    const drill = driller(ball.bodies[0], ball.rankingRays);
    const worst: Record<keyof typeof CLOSE, number> = {
      differentialIn: 0,
      intermediateDifferentialIn: 0,
      rgIn: 0,
    };
    for (const layout of tried) {
      const { R_BC } = placeLayout(toLayout(layout, radius), ball.pap_B);
      const { lowRg, differential, intermediateDifferential } = inertiaNumbers(drill(R_BC));
      const really = {
        differentialIn: to(differential, INCH),
        intermediateDifferentialIn: to(intermediateDifferential, INCH),
        rgIn: to(lowRg, INCH),
      };
      const said = quantitiesOf(layout);
      for (const key of Object.keys(worst) as (keyof typeof worst)[])
        worst[key] = Math.max(worst[key], Math.abs(said[key] - really[key]));
    }
    const most = id.startsWith('lobed') ? LOBES : CLOSE;
    for (const key of Object.keys(worst) as (keyof typeof worst)[])
      expect(worst[key], `${key}, at most ${most[key]}`).toBeLessThan(most[key]);
  });

  test('what the layout says itself is passed on, and the finish is the ball’s', () => {
    const quantitiesOf = prepared();
    for (const layout of tried) expect(quantitiesOf(layout)).toMatchObject({ ...layout, finishGrit: GRIT });
  });

  test('the mark lies where geometry puts it: a quarter of the ball from the pin, the drilling angle off the line to the PAP', () => {
    const quantitiesOf = prepared();
    const hasMark = ball.published.intermediateDifferential > 0.004 * INCH;
    for (const layout of tried) {
      const { drillingAngle, pinToPap } = toLayout(layout, radius);
      // law of cosines on the sphere; a mark and its opposite are one axis
      const arc = Math.acos(Math.abs(Math.sin(pinToPap) * Math.cos(drillingAngle)));
      expect(quantitiesOf(layout).markToPapIn).toBeCloseTo(hasMark ? to(radius * arc, INCH) : 0, 9);
    }
    expect(hasMark).toBe(id === 'asymmetric-strong' || id === 'own-solids');
  });
});
