/** Tests that take seconds each, and so an hour if they were run for each of a thousand mutants; some have a shorter twin beside them. */
export const SLOW: readonly string[] = [
  'tests/**/*.slow.test.ts',
  ...[
    ...['drill-mesh', 'drill-report-rays', 'excavation-mesh', 'trade-facts'],
    ...['random-balls', 'random-balls-mesh', 'ray-rule-errors'],
  ].map((name) => `tests/ball/drill/${name}.test.ts`),
  ...['build', 'ensemble', 'own-body', 'solve-core'].map((name) => `tests/ball/core/${name}.test.ts`),
  'tests/motion/kernel/same-as-classes.test.ts',
];

/** Quick tests of whole shots, which try the code that computes them best. */
const WHOLE_SHOTS = [
  'convergence',
  'free-rotation',
  'independent-integrator',
  'invalid',
  'kernel/few-as-classes',
  'offset-centre',
  'slip-to-roll',
  'symmetry',
].map((name) => `tests/motion/${name}.test.ts`);

/** Tests that are run for a folder besides those beside it. */
const BESIDES: Readonly<Record<string, readonly string[]>> = {
  'motion/kernel': WHOLE_SHOTS,
  'motion/shot': WHOLE_SHOTS,
};

/** Patterns of the tests that are run for mutants of a folder of `src`: those beside it, and some besides. */
export const testsOf = (folder: string): readonly string[] => [
  `tests/${folder}/**/*.test.ts`,
  ...(BESIDES[folder] ?? []),
];
