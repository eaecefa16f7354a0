/** Prints `N passed, N failed, N skipped` as the last line, for logs that are read by a program. */

import type { Reporter, TestModule } from 'vitest/node';

export default class PlainReporter implements Reporter {
  onTestRunEnd(modules: readonly TestModule[]): void {
    const counts = { passed: 0, failed: 0, skipped: 0 };
    for (const module of modules) {
      for (const test of module.children.allTests()) {
        const { state } = test.result();
        if (state === 'passed' || state === 'failed') counts[state] += 1;
        else counts.skipped += 1;
      }
      if (module.errors().length > 0) counts.failed += 1;
    }
    process.stdout.write(`\n${counts.passed} passed, ${counts.failed} failed, ${counts.skipped} skipped\n`);
  }
}
