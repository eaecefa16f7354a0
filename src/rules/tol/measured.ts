/** Limits of a step with the tool that judges each, and their places in the file. */

import type { Range } from '../../diagnostics/index.ts';
import {
  type Choice,
  type Measure,
  placeOf,
  READ_FROM,
  type ResolvedShop,
  type Step,
  type Tool,
  type Variant,
} from '../../resolve/index.ts';
import { entryOf, type Node } from '../../source/index.ts';
import type { Fault, Run } from '../check.ts';
import { eachVariant, lookUp } from '../rule.ts';

export interface Judged {
  readonly measure: Measure;
  readonly tool: Tool;
  readonly shop: ResolvedShop;
  /** Place of a key of the measurement: `with`, `limit`. */
  readonly place: (key: string) => Range;
}

/** A check of one limit and its tool at a time; tools that no register knows are left to the references. */
export function eachJudged(find: (judged: Judged) => Fault | undefined): Run {
  return eachVariant(function* ({ shop, variant, steps }) {
    for (const step of measuringSteps(variant, steps)) {
      for (const [i, measure] of step.measures.entries()) {
        const tool = lookUp(shop).tool(measure.tool);
        if (tool === undefined) continue;
        const fault = find({ measure, tool, shop, place: (key) => measurePlace(step, i, variant.choices, key) });
        if (fault !== undefined) yield step.label === undefined ? fault : { label: step.label, ...fault };
      }
    }
  });
}

const measuring = new WeakMap<Variant, readonly Step[]>();

/** Most steps measure nothing; five checks ask for those that do. */
function measuringSteps(variant: Variant, steps: readonly Step[]): readonly Step[] {
  const known = measuring.get(variant);
  if (known !== undefined) return known;
  const made = steps.filter((s) => s.measures.length > 0);
  measuring.set(variant, made);
  return made;
}

/** Place of a key of the measurement `i` of the resolved step. */
export function measurePlace(step: Step, i: number, choices: readonly Choice[], key: string): Range {
  return placeOf(step, 'measure', writtenIndex(step, i, choices), key);
}

/** Measurements of other variants are not in the resolved step: the index in the file may be a later one. */
function writtenIndex(step: Step, i: number, choices: readonly Choice[]): number {
  const list = entryOf(step[READ_FROM], 'measure')?.value;
  if (list?.kind !== 'sequence') return 0;
  const held = [...list.items.keys()].filter((n) => holds(list.items[n], choices));
  return held[i] ?? i;
}

function holds(item: Node | undefined, choices: readonly Choice[]): boolean {
  const only = item && entryOf(item, 'only')?.value;
  if (only === undefined) return true;
  return choices.every(({ axis, value }) => {
    const wanted = entryOf(only, axis)?.value;
    if (wanted === undefined) return true;
    const values = wanted.kind === 'sequence' ? wanted.items : [wanted];
    return values.some((v) => v.kind === 'scalar' && v.value === value);
  });
}

const judges = new WeakMap<ResolvedShop, ReadonlySet<string>>();

/** Ids of the tools that judge a limit somewhere. */
export function judgingTools(shop: ResolvedShop): ReadonlySet<string> {
  const known = judges.get(shop);
  if (known !== undefined) return known;
  const made = new Set<string>();
  for (const document of shop.documents)
    for (const variant of document.variants)
      for (const stage of variant.stages)
        for (const step of stage.steps) for (const measure of step.measures) made.add(measure.tool);
  judges.set(shop, made);
  return made;
}
