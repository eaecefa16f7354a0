/** Turns documents round: for each tool, consumable, part and joint the steps that use it. */

import type { Document, Use, WhereUsed } from './types.ts';

export function whereUsed(documents: readonly Document[]): WhereUsed {
  const tools: Record<string, Use[]> = {};
  const consumables: Record<string, Use[]> = {};
  const parts: Record<string, Use[]> = {};
  const joints: Record<string, Use[]> = {};
  for (const d of documents) {
    for (const v of d.variants) {
      const use = (into: Record<string, Use[]>, key: string, steps: readonly number[]): void => {
        const list = into[key] ?? [];
        into[key] = list;
        list.push({ doc: d.doc, title: d.title, variantKey: v.key, variantLabel: v.label, path: v.path, steps });
      };
      for (const t of v.tools) use(tools, t.id, t.steps);
      for (const c of v.consumables) use(consumables, c.id, c.steps);
      for (const p of v.parts) use(parts, `${d.machine}/${p.id}`, p.steps);
      const steps = v.stages.flatMap((s) => s.steps);
      for (const j of v.joints) {
        use(
          joints,
          `${d.machine}/${j.id}`,
          steps.filter((s) => s.loosen === j.id || s.tighten === j.id).map((s) => s.number),
        );
      }
    }
  }
  return { tools, consumables, parts, joints };
}
