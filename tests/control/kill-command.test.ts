/** The real `issue` command, killed at six moments: a share of what `npm run kill-issue` does. */

import { expect, test } from 'vitest';
import { seeded } from '../../scripts/bench/random.ts';
import { killIssue } from '../../scripts/lib/kill-issue.ts';

test('the ledger holds, nothing is half issued, and the next issue works', async () => {
  const told: string[] = [];
  const count = await killIssue(6, seeded(20261125), (words) => told.push(words));
  expect(told.length).toBe(6);
  expect(count.before + count.within + count.after).toBe(6);
  // Two in three wait for the lock or for the first file.
  expect(count.within + count.after).toBeGreaterThanOrEqual(3);
}, 240_000);
