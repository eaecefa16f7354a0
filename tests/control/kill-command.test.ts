/** The real `issue` command, killed at a dozen moments: a share of what `npm run kill-issue` does. */

import { expect, test } from 'vitest';
import { seeded } from '../../scripts/bench/random.ts';
import { killIssue } from '../../scripts/lib/kill-issue.ts';

test('the ledger holds, nothing is half issued, and the next issue works', async () => {
  const told: string[] = [];
  const count = await killIssue(12, seeded(20261125), (words) => told.push(words));
  expect(told.length).toBe(12);
  expect(count.before + count.within + count.after).toBe(12);
  // Two in three wait for the lock or for the first file.
  expect(count.within + count.after).toBeGreaterThanOrEqual(6);
}, 240_000);
