/** What zod found, laid flat: unions replaced by the branch that the author most likely meant. */

import type { z } from 'zod';
import { type Node, nodeAt } from '../source/index.ts';

export type Issue = z.core.$ZodIssue;

export interface PlacedIssue {
  readonly issue: Issue;
  /** From the root of the file. */
  readonly path: readonly PropertyKey[];
}

export function flatIssues(issues: readonly Issue[], root: Node, base: readonly PropertyKey[] = []): PlacedIssue[] {
  return issues.flatMap((issue) => {
    const path = [...base, ...issue.path];
    if (issue.code === 'invalid_union') {
      const branch = bestBranch(issue.errors, nodeAt(root, path));
      if (branch !== undefined) return flatIssues(branch, root, path);
    }
    return [{ issue, path }];
  });
}

/** The right kind of value first, then most keys known, then fewest faults. */
function bestBranch(branches: readonly (readonly Issue[])[], node: Node): readonly Issue[] | undefined {
  const own = node.kind === 'map' ? node.entries.length : 0;
  const score = (issues: readonly Issue[]): number =>
    issues.reduce((sum, i) => {
      if (i.path.length > 0) return sum + 2;
      if (i.code === 'invalid_type') return sum + 1000;
      if (i.code === 'unrecognized_keys') return sum + (i.keys.length >= own ? 500 : 10 * i.keys.length);
      return sum + 1;
    }, 0);
  return [...branches].sort((a, b) => score(a) - score(b))[0];
}
