/** Two matched steps compared, and the marks of a new one. */

import type { Prose, Step, StepMark } from '../../resolve/types.ts';
import { proseChange } from './phrases.ts';
import { compareConsumables, compareParts, compareTools, swapOf } from './step-lists.ts';
import { compareMeasures, compareRecords } from './step-measures.ts';
import { comparePoints, compareTimes } from './step-points.ts';
import { compareWarnings } from './step-warnings.ts';
import { likeness, stepsNamed } from './texts.ts';
import type { PartResult, Scene, StepPair, Swap, Told } from './types.ts';

/** All marks in the order in which a step shows what they stand for. */
export const MARKS: readonly StepMark[] = [
  'warnings',
  'text',
  'note',
  'lists',
  'joint',
  'wait',
  'measures',
  'records',
  'points',
];

/** What differs between two matched steps, joints apart: those are compared once for the whole card. */
export function compareStep(scene: Scene, pair: StepPair): PartResult {
  const { older, newer } = pair;
  const parts = [
    compareJointUse(scene, pair),
    compareMeasures(scene, pair),
    compareTools(scene, pair),
    compareConsumables(scene, pair),
    compareParts(scene, pair),
    comparePoints(pair),
    compareTimes(pair),
    compareRecords(pair),
  ];
  const swaps = parts.flatMap((p) => p.swaps);
  const warnings = compareWarnings(scene, pair, swaps);
  const text = compareProse(scene, 'text', 'text', older.text, newer.text, swaps);
  const note = compareProse(scene, 'note', 'note', older.note ?? [], newer.note ?? [], swaps);
  const all = [warnings, text, note, ...parts, renamedInLists(scene, newer)];
  const marks = new Set(all.flatMap((p) => p.marks));
  return { told: all.flatMap((p) => p.told), marks: MARKS.filter((m) => marks.has(m)), swaps };
}

/** A thing that got another name is printed otherwise wherever the step lists it. */
function renamedInLists(scene: Scene, step: Step): PartResult {
  const listed = [
    ...step.tools.map((id) => `tool:${id}`),
    ...step.consumables.map((c) => `consumable:${c.id}`),
    ...[...step.remove, ...step.fit, ...step.facing, ...step.reuse].map((p) => `part:${p.id}`),
  ];
  const found = scene.renamed.some((swap) => listed.includes(swap.to));
  return { told: [], marks: found ? ['lists'] : [], swaps: [] };
}

function compareProse(
  scene: Scene,
  mark: StepMark,
  name: string,
  older: Prose,
  newer: Prose,
  swaps: readonly Swap[],
): PartResult {
  const found = scene.likeness(older, newer, swaps);
  if (found === 'same') return { told: [], marks: [], swaps: [] };
  const told = found === 'names' ? [] : proseChange('step', name, older, newer);
  return { told, marks: [mark], swaps: [] };
}

/** Whether the step tightens or loosens another joint than before. */
function compareJointUse(scene: Scene, { older, newer }: StepPair): PartResult {
  const acts = (['loosen', 'tighten'] as const).filter((act) => older[act] !== newer[act]);
  const swaps: Swap[] = [];
  const told = acts.flatMap((act): readonly Told[] => {
    const before = thing(older[act], (id) => scene.olderName('joint', id));
    const after = thing(newer[act], (id) => scene.newerName('joint', id));
    if (before !== undefined && after !== undefined) swaps.push(swapOf('joint', before, after));
    return jointTold(`${act}s`, before?.name, after?.name);
  });
  swaps.push(...toolSwaps(scene, { older, newer }));
  return { told, marks: told.length > 0 ? ['joint'] : [], swaps };
}

/** Wrench and socket that the joint of the step exchanged: said at the joint. */
function toolSwaps(scene: Scene, { older, newer }: StepPair): readonly Swap[] {
  const before = scene.older.joints.find((j) => j.id === (older.tighten ?? older.loosen));
  const after = scene.newer.joints.find((j) => j.id === (newer.tighten ?? newer.loosen));
  if (before === undefined || after === undefined) return [];
  return [
    [before.wrench, after.wrench],
    [before.socket, after.socket],
  ].flatMap(([a, b]) => {
    if (a === undefined || b === undefined || a === b) return [];
    return [swapOf('tool', { id: a, name: scene.olderName('tool', a) }, { id: b, name: scene.newerName('tool', b) })];
  });
}

function thing(
  id: string | undefined,
  name: (id: string) => string,
): { readonly id: string; readonly name: string } | undefined {
  return id === undefined ? undefined : { id, name: name(id) };
}

function jointTold(act: string, before: string | undefined, after: string | undefined): readonly Told[] {
  if (after === undefined) {
    if (before === undefined) return [];
    return [{ kind: 'removed', of: 'joint', say: `no longer ${act} the ${before}`, before }];
  }
  if (before === undefined) return [{ kind: 'added', of: 'joint', say: `now ${act} the ${after}`, after }];
  return [{ kind: 'exchanged', of: 'joint', say: `now ${act} the ${after} instead of the ${before}`, before, after }];
}

/** Marks of everything that a new step holds. */
export function marksOfNew(step: Step): readonly StepMark[] {
  const holds: Readonly<Record<StepMark, boolean>> = {
    text: true,
    note: step.note !== undefined,
    warnings: step.warnings.length > 0,
    joint: step.loosen !== undefined || step.tighten !== undefined,
    measures: step.measures.length > 0,
    lists:
      step.lubricate !== undefined ||
      [step.tools, step.consumables, step.remove, step.fit, step.reuse, step.facing].some((list) => list.length > 0),
    wait: step.wait !== undefined || step.time !== undefined,
    points:
      [step.hold, step.witness, step.lift, step.heat].some((p) => p !== undefined) ||
      [step.release, step.prove, step.closeOut].some((list) => list.length > 0),
    records: step.records.length > 0,
  };
  return MARKS.filter((m) => holds[m]);
}

/** Whether a step that says the same but for numbers of steps still means the same steps. */
export function meansSameSteps({ older, newer }: StepPair, nowAt: Scene['nowAt']): boolean {
  return textsOf(older).every((text, i) => {
    if (stepsNamed(text).length === 0) return true;
    return likeness(text, textsOf(newer)[i] ?? [], nowAt, []) === 'same';
  });
}

function textsOf(step: Step): readonly Prose[] {
  return [
    step.text,
    step.note ?? [],
    ...step.warnings.flatMap((w) => [w.hazard, w.avoid]),
    ...step.measures.map((m) => m.ifOut),
  ];
}
