/** Tests that take seconds each, and so an hour if they were run for each of a thousand mutants; some have a shorter twin beside them. */
export const SLOW: readonly string[] = [
  'tests/**/*.slow.test.ts',
  ...['drill', 'drill-mesh', 'excavation', 'random-balls', 'random-balls-mesh', 'ray-rule'].map(
    (name) => `tests/ball/drill/${name}.test.ts`,
  ),
  'tests/motion/kernel/same-as-classes.test.ts',
];

/** Tests of whole shots that are run besides, for folders whose code is best tried by them. */
const WHOLE_SHOTS: Readonly<Record<string, readonly string[]>> = {
  'motion/kernel': ['convergence', 'free-rotation', 'independent-integrator', 'offset-centre', 'symmetry'],
  'motion/shot': ['convergence', 'free-rotation', 'invalid', 'symmetry'],
};

/** Patterns of the tests that are run for mutants of a folder of `src`: those beside it, and for some those of whole shots. */
export const testsOf = (folder: string): readonly string[] => [
  `tests/${folder}/**/*.test.ts`,
  ...(WHOLE_SHOTS[folder] ?? []).map((name) => `tests/motion/${name}.test.ts`),
];
