import type { Reporter, TestModule } from 'vitest/node';
import { whyNoBrowser } from '../browser/chromium.js';

/** Prints `N passed, N failed` alone on a line once all tests ended, for whoever reads only that; before it, what was skipped. */
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
    const skipped = whyNoBrowser();
    if (skipped !== null) process.stdout.write(`\n${skipped}\n`);
    process.stdout.write(`\n${passed} passed, ${failed} failed\n`);
  }
}
