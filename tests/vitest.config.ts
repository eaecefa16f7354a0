/** How the tests run: from the project's root, with a plain closing line for logs. */

import path from 'node:path';
import { defineConfig } from 'vitest/config';

export default defineConfig({
  root: path.resolve(import.meta.dirname, '..'),
  test: {
    include: ['tests/**/*.test.ts'],
    setupFiles: ['tests/property-seed.ts'],
    reporters: ['default', './tests/plain-reporter.ts'],
    testTimeout: 60_000,
    hookTimeout: 120_000,
    // Two cores: the browser and the site builder each want one.
    maxWorkers: 2,
  },
});
