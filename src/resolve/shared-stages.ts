/** Shared stages: those that come before another, circles among them, and who uses which. */

import type { Range } from '../diagnostics/index.ts';
import { type Content, type Entry, items, optional, type SharedStageContent } from '../model/index.ts';
import { type Context, lookUp } from './context.ts';
import { READ_FROM } from './read-from.ts';
import type { Document, ResolvedShop } from './types.ts';

/** One entry of `first`: the stage `by` wants `calls` before it. */
interface Call {
  readonly by: string;
  readonly calls: string;
  readonly range: Range;
}

/**
 * The stage with those that come before it, in the order of work. `used` remembers what stands in the procedure already:
 * a stage that two others call for is done once. A circle is reported where it closes.
 */
export function expandStage(
  context: Context,
  id: string,
  used: Set<string>,
  on: readonly Call[] = [],
): readonly Entry<SharedStageContent>[] {
  const stage = context.content.stages.entries.get(id);
  if (stage === undefined) return [];
  const first = optional(stage, 'first');
  const before = (first === undefined ? [] : items(first)).flatMap((f) => {
    const calls = [...on, { by: id, calls: f.value, range: f.node.range }];
    const begin = calls.findIndex((c) => c.by === f.value);
    if (begin >= 0) {
      reportCircle(context, calls.slice(begin));
      return [];
    }
    if (lookUp(context, 'stage', context.content.stages, f.value, f.node.range) === undefined) return [];
    return used.has(f.value) ? [] : expandStage(context, f.value, used, calls);
  });
  // What is named by the procedure itself stands where it is named, as often as it is named.
  used.add(id);
  return [...before, stage];
}

/** The last call closes the circle. */
function reportCircle({ report }: Context, calls: readonly Call[]): void {
  const [first, ...rest] = calls;
  const last = rest.at(-1) ?? first;
  if (first === undefined || last === undefined) return;
  const names = [...calls.map((c) => c.by), first.by].map((n) => `\`${n}\``).join(' after ');
  if (rest.length === 0) {
    report('REF016', last.range, `the shared stage \`${first.by}\` is to come before itself`, {
      hint: `take \`${first.by}\` out of its own \`first\``,
    });
    return;
  }
  report('REF016', last.range, `the shared stages come before each other in a circle: ${names}`, {
    related: calls.slice(0, -1).map((c) => ({ range: c.range, message: `\`${c.calls}\` before \`${c.by}\`` })),
    hint: `one of them does not need the other before it: take \`${last.calls}\` out of \`first\` here, or mend one of the other places`,
  });
}

/** Every shared stage with the documents in which its steps stand. */
export function resolveStages(content: Content, documents: readonly Document[]): ResolvedShop['stages'] {
  const usedBy = new Map<string, string[]>();
  for (const d of documents) {
    const ids = new Set(d.variants.flatMap((v) => v.stages.map((s) => s.shared)));
    for (const id of ids) if (id !== undefined) usedBy.set(id, [...(usedBy.get(id) ?? []), d.doc]);
  }
  return [...content.stages.entries.values()].map(({ key, keyRange, node }) => ({
    id: key,
    usedBy: usedBy.get(key) ?? [],
    range: keyRange,
    [READ_FROM]: node,
  }));
}
