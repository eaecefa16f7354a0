/** Procedures resolved: one document with one variant a card, stages expanded, steps numbered, totals drawn up. */

import { didYouMean } from '../diagnostics/index.ts';
import { type At, type Entry, entries, field, items, optional, type ProcedureContent } from '../model/index.ts';
import { joinUnits } from '../units/index.ts';
import type { Context } from './context.ts';
import { lookUp } from './context.ts';
import { withFingerprint } from './fingerprint.ts';
import { jointAxes } from './joint-content.ts';
import type { MachineAtHand } from './machines.ts';
import { partQuantity } from './parts.ts';
import { type Names, resolveProse } from './prose.ts';
import { checkDate, defined, readQuantity, readSource } from './quantities.ts';
import { READ_FROM } from './read-from.ts';
import { expandStage } from './shared-stages.ts';
import { machineNames, resolveStep, type StepContent } from './steps.ts';
import { consumableTotals, partTotals, toolTotals } from './totals.ts';
import type { Choice, Document, JointPlan, Prose, Stage, Step, Variant } from './types.ts';
import { checkOnly, combinations, holdsFor, serialsOf, variantKey, variantLabel } from './variants.ts';

/** A stage before its steps are resolved: written here or taken from the shared ones. */
interface RawStage {
  readonly title: string;
  readonly intro: At<string> | undefined;
  readonly time: At<string> | undefined;
  readonly steps: readonly At<StepContent>[];
  readonly shared: string | undefined;
  readonly range: Stage['range'];
}

export function resolveDocument(context: Context, at: Entry<ProcedureContent>, hand: MachineAtHand): Document {
  const { content } = context;
  const v = at.value;
  const machine = hand.entry;
  checkHead(context, at, hand);
  const axes = v.applies ?? {};
  const chosenAxes = Object.keys(axes);
  const revisions = items(field(at, 'revisions')).map((r) => ({
    rev: r.value.rev,
    effective: r.value.effective,
    approved: r.value.approved,
    author: r.value.author,
    approver: r.value.approver,
    class: r.value.class ?? ('major' as const),
    affects: r.value.affects ?? [],
    what: joinUnits(r.value.what),
    why: joinUnits(r.value.why),
    range: r.node.range,
  }));
  const revision = revisions.at(-1);
  if (revision === undefined) throw new RangeError('the shape asks for at least one revision');
  const variants = combinations(axes).map((choices) =>
    resolveVariant(context, at, hand, choices, chosenAxes, revision.rev, () => head),
  );
  const purpose = resolveProse(context, field(at, 'purpose'), {
    ...machineNames(context, hand, [], undefined),
    step: () => undefined,
  });
  const head = headContent(context, at, hand, revision, purpose);
  return {
    doc: v.doc,
    slug: v.doc.toLowerCase(),
    title: joinUnits(v.title),
    machine: machine.key,
    machineName: machine.value.name,
    purpose,
    owner: v.owner,
    review: v.review,
    level: v.level,
    energy: (v.energy ?? machine.value.energy ?? []).map(joinUnits),
    people: v.people,
    formerly: v.formerly ?? [],
    sources: (v.sources ?? []).map((s) => readSource(s)).filter((s) => s !== undefined),
    revisions,
    revision,
    variants,
    benches: [...content.benches.entries].filter(([, b]) => b.value.binder.includes(v.doc)).map(([id]) => id),
    range: at.keyRange,
    [READ_FROM]: at.node,
    ...(isIncomplete(context, at, hand) ? { incomplete: true } : {}),
  };
}

/** Whether a fault in the procedure, in a shared stage that it uses or in its machine took something out before it was read. */
function isIncomplete(context: Context, at: Entry<ProcedureContent>, hand: MachineAtHand): boolean {
  const { entries } = context.content.stages;
  const seen = new Set<string>();
  const unread = (id: string): boolean => {
    if (seen.has(id)) return false;
    seen.add(id);
    const stage = entries.get(id);
    return stage === undefined || (stage.dropped?.size ?? 0) > 0 || (stage.value.first ?? []).some(unread);
  };
  const faulty = [at, hand.entry].some((entry) => (entry.dropped?.size ?? 0) > 0);
  return faulty || at.value.stages.some((s) => 'use' in s && unread(s.use));
}

/** People, dates and variants named at the head of the procedure. */
function checkHead(context: Context, at: Entry<ProcedureContent>, hand: MachineAtHand): void {
  const { content, report } = context;
  const person = (p: At<string>) => lookUp(context, 'person', content.people, p.value, p.node.range);
  person(field(at, 'owner'));
  for (const r of items(field(at, 'revisions'))) {
    person(field(r, 'author'));
    person(field(r, 'approver'));
    checkDate(report, field(r, 'effective'));
    checkDate(report, field(r, 'approved'));
    const affects = optional(r, 'affects');
    for (const d of affects === undefined ? [] : items(affects))
      lookUp(context, 'procedure', content.procedures, d.value, d.node.range);
  }
  const applies = optional(at, 'applies');
  checkOnly(context, hand.entry, applies, undefined);
  for (const axis of applies === undefined ? [] : entries(applies)) {
    const seen = new Set<string>();
    for (const value of items(axis)) {
      if (seen.has(value.value))
        report('REF011', value.node.range, `\`${value.value}\` stands twice`, { hint: 'keep one of them' });
      seen.add(value.value);
    }
  }
}

function resolveVariant(
  context: Context,
  at: Entry<ProcedureContent>,
  hand: MachineAtHand,
  choices: readonly Choice[],
  chosenAxes: readonly string[],
  rev: string,
  head: () => unknown,
): Variant {
  const { doc } = at.value;
  const raw = expandStages(context, at, hand, choices, chosenAxes);
  const numbers = numberSteps(context, raw, doc);
  const unknown = stepNamesUnknown(context, at, raw);
  const local = {
    ...machineNames(context, hand, choices, undefined),
    step: stepNames(context, numbers, unknown, undefined),
  };
  const sharedNames: Names = {
    ...machineNames(context, hand, choices, `used by ${doc}`),
    step: stepNames(context, numbers, unknown, `used by ${doc}`),
  };
  let number = 0;
  const stages = raw.map((s, i): Stage => {
    const label = s.shared === undefined ? undefined : `used by ${doc}`;
    const names = s.shared === undefined ? local : sharedNames;
    const scene = { context, hand, choices, names, label };
    const intro: Prose | undefined = s.intro && resolveProse(context, s.intro, names);
    const steps = s.steps.map((step) => {
      number += 1;
      return resolveStep(scene, step, number);
    });
    return {
      number: i + 1,
      title: joinUnits(s.title),
      steps,
      range: s.range,
      ...defined({ shared: s.shared, intro, time: readQuantity(context.report, s.time, 'time') }),
    };
  });
  const steps = stages.flatMap((s) => s.steps);
  const joints = jointsOf(context, at, hand, choices, chosenAxes, steps);
  const key = variantKey(choices);
  const path = ['C', doc, rev, ...(key === '' ? [] : [key.toUpperCase()])].join('/');
  const serials = serialsOf(hand.entry.value, choices);
  const content = {
    label: variantLabel(choices),
    stages,
    joints,
    tools: toolTotals(context, steps),
    consumables: consumableTotals(context, steps),
    parts: partTotals(hand, steps),
  };
  const variant = {
    key,
    choices,
    serials,
    path,
    // Scheme and host ignore case, which keeps the printed symbol small; the folders of a static host do not.
    address: `${new URL(context.info.address).origin.toUpperCase()}${context.info.basePath}${path}/`,
    cardName: [doc, ...(key === '' ? [] : [key.toUpperCase()])].join('-'),
    ...content,
    ppe: [...new Set([...(at.value.ppe ?? []), ...content.consumables.flatMap((c) => c.ppe)])],
    inventory: inventoryOf(hand, choices),
    stepCount: number,
    workSeconds: stages.reduce((sum, s) => sum + (s.time?.si ?? s.steps.reduce((n, x) => n + (x.time?.si ?? 0), 0)), 0),
    waitSeconds: steps.reduce((sum, s) => sum + (s.wait?.time.si ?? 0), 0),
  };
  return withFingerprint(variant, () => ({ doc, rev, head: head(), serials, ppe: variant.ppe, ...content }));
}

/** What all cards of a document say beside their steps and lists: part of their digest. */
function headContent(
  context: Context,
  at: Entry<ProcedureContent>,
  hand: MachineAtHand,
  revision: Document['revision'],
  purpose: Prose,
): unknown {
  const v = at.value;
  const machine = hand.entry.value;
  const { name, safety, storedEnergy, report } = context.info;
  const named = (id: string): string => context.people.get(id)?.name ?? id;
  return {
    title: v.title,
    purpose,
    machine: [machine.name, machine.mark, machine.where],
    energy: v.energy ?? machine.energy ?? [],
    facts: [v.people, v.level, v.review, named(v.owner), v.formerly ?? []],
    sources: v.sources ?? [],
    revision: { ...revision, author: named(revision.author), approver: named(revision.approver) },
    shop: [name, safety, storedEnergy, report],
  };
}

function expandStages(
  context: Context,
  at: Entry<ProcedureContent>,
  hand: MachineAtHand,
  choices: readonly Choice[],
  chosenAxes: readonly string[],
): readonly RawStage[] {
  const keep = (s: At<StepContent>, check: boolean): boolean => {
    if (check) checkOnly(context, hand.entry, optional(s, 'only') as Parameters<typeof checkOnly>[2], chosenAxes);
    return holdsFor(s.value.only, choices);
  };
  const used = new Set<string>();
  return items(field(at, 'stages'))
    .flatMap((stage): RawStage[] => {
      checkOnly(context, hand.entry, optional(stage, 'only') as Parameters<typeof checkOnly>[2], chosenAxes);
      if (!holdsFor(stage.value.only, choices)) return [];
      if ('use' in stage.value) {
        const use = field(stage as At<{ use: string }>, 'use');
        const shared = lookUp(context, 'stage', context.content.stages, use.value, use.node.range);
        if (shared === undefined) return [];
        return expandStage(context, use.value, used).map((entry) => ({
          title: entry.value.title,
          intro: optional(entry, 'intro'),
          time: optional(entry, 'time'),
          // A shared stage knows no axes of its own machine: `only` on its steps is checked against each user.
          steps: items(field(entry, 'steps')).filter((s) => keep(s, true)),
          shared: entry.key,
          range: use.node.range,
        }));
      }
      const own = stage as At<Exclude<typeof stage.value, { use: string }>>;
      return [
        {
          title: own.value.title,
          intro: optional(own, 'intro'),
          time: optional(own, 'time'),
          steps: items(field(own, 'steps')).filter((s) => keep(s, true)),
          shared: undefined,
          range: field(own, 'title').node.range,
        },
      ];
    })
    .filter((s) => s.steps.length > 0);
}

/** Step ids to their numbers; an id used twice is reported at its second place. */
function numberSteps(context: Context, raw: readonly RawStage[], doc: string): ReadonlyMap<string, number> {
  const numbers = new Map<string, { number: number; range: Stage['range'] }>();
  let number = 0;
  for (const s of raw.flatMap((r) => r.steps)) {
    number += 1;
    const id = optional(s, 'id');
    if (id === undefined) continue;
    const first = numbers.get(id.value);
    if (first !== undefined && first.range.start !== id.node.range.start) {
      context.report('REF011', id.node.range, `step id \`${id.value}\` is already taken in ${doc}`, {
        related: [{ range: first.range, message: `\`${id.value}\` first stands here` }],
        hint: 'give one of the two another id',
      });
    } else if (first === undefined) numbers.set(id.value, { number, range: id.node.range });
  }
  return new Map([...numbers].map(([id, n]) => [id, n.number]));
}

/** Whether a step id may stand in what could not be read: in a stage that is missing, or among steps taken out as faulty. */
function stepNamesUnknown(
  context: Context,
  at: Entry<ProcedureContent>,
  raw: readonly RawStage[],
): (id: string) => boolean {
  const { stages } = context.content;
  const missing = at.value.stages.some((s) => 'use' in s && !stages.entries.has(s.use));
  const dropped = [
    at.dropped,
    ...raw.map((s) => (s.shared === undefined ? undefined : stages.entries.get(s.shared)?.dropped)),
  ];
  return (id) => missing || dropped.some((d) => d?.has(id));
}

function stepNames(
  context: Context,
  numbers: ReadonlyMap<string, number>,
  unknown: (id: string) => boolean,
  label: string | undefined,
): Names['step'] {
  return (id, range) => {
    const number = numbers.get(id);
    if (number !== undefined) return { number, anchor: `step-${number}` };
    if (unknown(id)) return undefined;
    context.report('REF006', range, `step \`${id}\` is not in this procedure`, {
      label,
      hint: didYouMean(id, numbers.keys()) ?? `give the step \`id: ${id}\`, or name one that has an id`,
    });
    return undefined;
  };
}

/** Parts of the machine in this variant. */
function inventoryOf(hand: MachineAtHand, choices: readonly Choice[]): Variant['inventory'] {
  const joints = [...hand.joints.values()];
  return [...hand.parts.values()]
    .filter((p) => holdsFor(p.value.only, choices))
    .map((p) => ({ id: p.key, quantity: partQuantity(p, joints, choices) ?? 1 }));
}

/** Plans of the joints used, in order of use; a joint that differs by an axis on which no card is chosen is reported. */
function jointsOf(
  context: Context,
  at: Entry<ProcedureContent>,
  hand: MachineAtHand,
  choices: readonly Choice[],
  chosenAxes: readonly string[],
  steps: readonly Step[],
): readonly JointPlan[] {
  const used = [...new Set(steps.flatMap((s) => [s.loosen, s.tighten]).filter((j) => j !== undefined))];
  return used.flatMap((id) => {
    const joint = hand.joints.get(id);
    const open = joint === undefined ? [] : jointAxes(joint).filter((axis) => !chosenAxes.includes(axis));
    for (const axis of open) {
      const values = hand.entry.value.variants?.[axis];
      if (values === undefined) continue;
      context.report(
        'REF013',
        field(at, 'machine').node.range,
        `joint \`${id}\` differs by \`${axis}\`, and the procedure makes no card for each`,
        {
          hint: `add \`applies: { ${axis}: [${values.join(', ')}] }\``,
        },
      );
    }
    const plan = hand.plan(id, choices);
    return plan === undefined ? [] : [plan];
  });
}
