import type { Reporter, TestModule } from 'vitest/node';

/** Prints `N passed, N failed` alone on a line once all tests ended, for whoever reads only that. */
export default class ClosingLine implements Reporter {
  onTestRunEnd(modules: readonly TestModule[]): void {
    let passed = 0;
    let failed = 0;
    for (const module of modules) {
      const states = [...module.children.allTests()].map((test) => test.result().state);
      const failures = states.filter((state) => state === 'failed').length;
      passed += states.filter((state) => state === 'passed').length;
      // a file that cannot be loaded, or whose set-up fails, fails without any failed test
      failed += module.state() === 'failed' ? Math.max(1, failures) : failures;
    }
    process.stdout.write(`\n${passed} passed, ${failed} failed\n`);
  }
}
