/** Shared stages: those that come before another, circles among them, and who uses which. */

import { type Content, type Entry, items, optional, type SharedStageContent } from '../model/index.ts';
import { type Context, lookUp } from './context.ts';
import type { Document, ResolvedShop } from './types.ts';

/**
 * The stage with those that come before it, in the order of work. `used` remembers what stands in the procedure already:
 * a stage that two others call for is done once. A circle is reported where it closes.
 */
export function expandStage(
  context: Context,
  id: string,
  used: Set<string>,
  on: readonly string[] = [],
): readonly Entry<SharedStageContent>[] {
  const stage = context.content.stages.entries.get(id);
  if (stage === undefined) return [];
  const first = optional(stage, 'first');
  const before = (first === undefined ? [] : items(first)).flatMap((f) => {
    const circle = [...on, id];
    if (circle.includes(f.value)) {
      const names = [...circle.slice(circle.indexOf(f.value)), f.value].map((n) => `\`${n}\``).join(', ');
      context.report('REF016', f.node.range, `the shared stages come before each other in a circle: ${names}`, {
        hint: `take \`${f.value}\` out of \`first\` here, or \`${id}\` out of the \`first\` of \`${f.value}\``,
      });
      return [];
    }
    if (lookUp(context, 'stage', context.content.stages, f.value, f.node.range) === undefined) return [];
    return used.has(f.value) ? [] : expandStage(context, f.value, used, circle);
  });
  // What is named by the procedure itself stands where it is named, as often as it is named.
  used.add(id);
  return [...before, stage];
}

/** Every shared stage with the documents in which its steps stand. */
export function resolveStages(content: Content, documents: readonly Document[]): ResolvedShop['stages'] {
  const usedBy = new Map<string, string[]>();
  for (const d of documents) {
    const ids = new Set(d.variants.flatMap((v) => v.stages.map((s) => s.shared)));
    for (const id of ids) if (id !== undefined) usedBy.set(id, [...(usedBy.get(id) ?? []), d.doc]);
  }
  return [...content.stages.entries.values()].map(({ key, keyRange }) => ({
    id: key,
    usedBy: usedBy.get(key) ?? [],
    range: keyRange,
  }));
}
