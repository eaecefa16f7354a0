/** Turns the shop into search entries: procedures first, then everything that has a page of its own. */

import type { Document, JointPlan, ResolvedShop, Step, Variant } from '../../resolve/types.ts';
import { formatQuantity } from '../../units/index.ts';
import { paths } from '../html/paths.ts';
import { proseText } from '../html/prose.ts';
import { capital, joinUnits } from '../html/words.ts';
import type { IndexedEntry } from './entry.ts';
import { FactList } from './facts.ts';

function sentence(parts: readonly (string | undefined)[]): string {
  return parts.filter((p) => p !== undefined && p !== '').join(', ');
}

/** `16 × M16 8.8, 120 N·m (88.5 lbf·ft), 24 mm socket`. */
function jointSize(joint: JointPlan): string {
  const size = `${joint.count}\u00a0×\u00a0${joint.thread.designation} ${joint.grade.id}`;
  const torque = `${formatQuantity(joint.target)} (${formatQuantity(joint.targetSecond)})`;
  return sentence([size, torque, joint.socketName]);
}

function stepWords(step: Step): string {
  return [
    proseText(step.text),
    ...step.warnings.map((w) => `${proseText(w.hazard)} ${proseText(w.avoid)}`),
    step.note === undefined ? '' : proseText(step.note),
    ...step.measures.map((m) => `${m.what} ${m.limitText} ${m.toolName}`),
    ...step.records,
    ...step.facing.map((f) => f.facing),
    step.wait?.why ?? '',
    step.hold ?? '',
  ].join(' ');
}

function procedureEntry(document: Document, shop: ResolvedShop): IndexedEntry {
  const facts = new FactList();
  const toolById = new Map(shop.tools.map((t) => [t.id, t]));
  const consumableById = new Map(shop.consumables.map((c) => [c.id, c]));
  const words: string[] = [proseText(document.purpose)];
  const spellings = new Set<string>();
  document.variants.forEach((variant, i) => {
    for (const former of document.formerly) facts.add(`Formerly or also: ${former}`, i);
    for (const serial of variant.serials) facts.add(`Serial numbers ${serial}`, i);
    for (const joint of variant.joints) {
      facts.add(`${capital(joint.name)}: ${jointSize(joint)}`, i);
      for (const spelling of joint.thread.searchTerms) spellings.add(spelling);
    }
    for (const part of variant.parts) facts.add(`Part: ${sentence([part.name, part.number, part.kit])}`, i);
    for (const tool of variant.tools) {
      const also = toolById.get(tool.id)?.alsoCalled ?? [];
      facts.add(`Tool: ${sentence([tool.name, tool.detail, ...also])}`, i);
    }
    for (const use of variant.consumables) {
      const register = consumableById.get(use.id);
      facts.add(`Consumable: ${sentence([use.name, register?.number, ...(register?.alsoCalled ?? [])])}`, i);
    }
    for (const stage of variant.stages) words.push(stage.title, ...stage.steps.map(stepWords));
  });
  const labelled = document.variants.filter((v) => v.label !== '');
  return {
    kind: 'procedure',
    mark: document.doc,
    title: document.title,
    rev: document.revision.rev,
    detail: capital(document.machineName),
    path: landing(document),
    variants: labelled.map((v: Variant) => ({ label: v.label, path: paths.variant(v.path) })),
    facts: facts.list(document.variants.length).map((f) => ({ ...f, text: joinUnits(f.text) })),
    words: words.join(' '),
    spellings: [...spellings].join(' '),
  };
}

/** A document with one page is opened at once; one with several asks for the variant first. */
function landing(document: Document): string {
  const [only] = document.variants;
  return document.variants.length === 1 && only !== undefined
    ? paths.variant(only.path)
    : paths.procedure(document.slug);
}

/** An entry of a register: nothing but its head and its facts, each once. */
function plain(
  entry: Omit<IndexedEntry, 'variants' | 'words' | 'spellings' | 'facts'>,
  facts: readonly string[],
): IndexedEntry {
  return {
    ...entry,
    variants: [],
    words: '',
    spellings: '',
    facts: [...new Set(facts.filter((f) => f !== ''))].map((text) => ({ text: joinUnits(text) })),
  };
}

function registerEntries(shop: ResolvedShop): IndexedEntry[] {
  const tools = shop.tools.map((t) =>
    plain(
      { kind: 'tool', mark: t.serial ?? '', title: capital(t.name), detail: capital(t.kind), path: paths.tool(t.id) },
      [
        t.size === undefined ? '' : `Size ${formatQuantity(t.size)}`,
        t.alsoCalled.length === 0 ? '' : `Also called ${t.alsoCalled.join(', ')}`,
        t.kept === undefined ? '' : `Kept: ${t.kept}`,
      ],
    ),
  );
  const consumables = shop.consumables.map((c) =>
    plain(
      {
        kind: 'consumable',
        mark: c.number ?? '',
        title: capital(c.name),
        detail: capital(c.kind),
        path: paths.consumable(c.id),
      },
      [c.alsoCalled.length === 0 ? '' : `Also called ${c.alsoCalled.join(', ')}`],
    ),
  );
  const machines = shop.machines.flatMap((m) => [
    plain(
      { kind: 'machine', mark: m.mark ?? '', title: capital(m.name), detail: m.where ?? '', path: paths.machine(m.id) },
      [m.about ?? '', ...m.serials.map((s) => `Serial numbers ${s.from} to ${s.to}`)],
    ),
    ...m.parts.map((p) =>
      plain(
        {
          kind: 'part',
          mark: p.number ?? '',
          title: capital(p.name),
          detail: capital(m.name),
          path: paths.part(m.id, p.id),
        },
        [p.kit === undefined ? '' : `Kit ${p.kit}`, p.material ?? ''],
      ),
    ),
    ...jointEntries(m.id, m.name, m.joints),
  ]);
  const tables = shop.tables.map((t) =>
    plain(
      {
        kind: 'table',
        mark: '',
        title: `Torque table ${t.grade.id}, ${t.series}`,
        detail: capital(t.condition.name),
        path: paths.table(t.id),
      },
      [
        ...t.rows.map(
          (r) => `${r.thread.designation}: ${formatQuantity(r.printedNm)} (${formatQuantity(r.printedLbfFt)})`,
        ),
      ],
    ),
  );
  return [...machines, ...tools, ...consumables, ...tables];
}

function jointEntries(
  machine: string,
  name: string,
  joints: ResolvedShop['machines'][number]['joints'],
): IndexedEntry[] {
  const byId = new Map<string, JointPlan[]>();
  for (const { plan } of joints) byId.set(plan.id, [...(byId.get(plan.id) ?? []), plan]);
  return [...byId.values()].flatMap((plans) => {
    const [first] = plans;
    if (first === undefined) return [];
    const entry = plain(
      {
        kind: 'joint',
        mark: '',
        title: capital(first.name),
        detail: capital(name),
        path: paths.joint(machine, first.id),
      },
      plans.map(jointSize),
    );
    return [{ ...entry, spellings: plans.flatMap((p) => p.thread.searchTerms).join(' ') }];
  });
}

/** A document that must not be worked from: found by number and title, so that nobody looks for it in vain. */
export interface StoppedDocument {
  readonly doc: string;
  readonly title: string;
  /** `suspended` */
  readonly standing: string;
  /** Name of its machine. */
  readonly machine: string;
}

function stoppedEntry({ doc, title, standing, machine }: StoppedDocument): IndexedEntry {
  return {
    kind: 'procedure',
    mark: doc,
    title: `${title} (${standing})`,
    detail: machine,
    path: paths.procedure(doc.toLowerCase()),
    variants: [],
    facts: [],
    words: '',
    spellings: '',
  };
}

/** Everything that the search finds. */
export function searchEntries(shop: ResolvedShop, stopped: readonly StoppedDocument[] = []): IndexedEntry[] {
  return [
    ...shop.documents.map((d) => procedureEntry(d, shop)),
    ...stopped.map(stoppedEntry),
    ...registerEntries(shop),
  ];
}
