/** Findings of all variants taken together: the same change is told once, with the variants that it concerns. */

import { capitalised, listed } from '../../resolve/words.ts';
import type { Change } from '../types.ts';
import type { Finding, Form, Subject } from './types.ts';

/** The order of the list: most telling first. */
export const SUBJECTS: readonly Subject[] = [
  'torque',
  'limit',
  'pattern',
  'joint',
  'warning',
  'energy',
  'step',
  'tool',
  'consumable',
  'part',
  'time',
  'variant',
  'document',
];

const FORMS: readonly Form[] = ['whole', 'new', 'removed', 'at', 'moved'];

/** The finding in each of the variants that have it. */
interface Group {
  readonly first: Finding;
  readonly of: { readonly label: string; readonly finding: Finding }[];
}

/** Gathers findings variant after variant, in the order of the newer issue. */
export class Gatherer {
  readonly #groups = new Map<string, Group>();
  readonly #rows: { readonly finding: Finding; readonly change: Change }[] = [];

  /** label: empty for the only card of a document. */
  addVariant(label: string, findings: Iterable<Finding>): void {
    for (const [key, finding] of onceACard(findings)) {
      const known = this.#groups.get(key);
      if (known === undefined) this.#groups.set(key, { first: finding, of: [{ label, finding }] });
      else known.of.push({ label, finding });
    }
  }

  /** A finding that belongs to no variant, or to the ones named. */
  add(finding: Finding, variants: readonly string[]): void {
    this.#rows.push({ finding, change: changeOf(finding, capitalised(finding.say), variants) });
  }

  /** labels: of all variants of the newer issue. former: revision of the older issue. */
  changes(labels: readonly string[], former: string): readonly Change[] {
    const rows = [...this.#groups.values()].map((group) => {
      const of = group.of.map((o) => o.label);
      const variants = of.length === labels.length ? [] : of;
      return { finding: group.first, change: changeOf(group.first, wordsOf(group, former), variants) };
    });
    return [...this.#rows, ...rows].sort(byOrder).map((r) => r.change);
  }
}

/**
 * Findings of one card by key. What changed alike at several steps is told once with all of them; steps that are new,
 * taken out or moved stay apart, the first of one variant with the first of the others.
 */
function onceACard(findings: Iterable<Finding>): ReadonlyMap<string, Finding> {
  const found = new Map<string, Finding>();
  const counts = new Map<string, number>();
  for (const finding of findings) {
    const alike = keyOf(finding);
    const known = found.get(`${alike} 1`);
    if (finding.form === 'at' && known !== undefined) {
      found.set(`${alike} 1`, {
        ...known,
        stepsBefore: together(known.stepsBefore, finding.stepsBefore),
        stepsAfter: together(known.stepsAfter, finding.stepsAfter),
      });
      continue;
    }
    const count = (counts.get(alike) ?? 0) + 1;
    counts.set(alike, count);
    found.set(`${alike} ${count}`, finding);
  }
  return found;
}

function together(a: readonly number[], b: readonly number[]): readonly number[] {
  return [...new Set([...a, ...b])].sort((x, y) => x - y);
}

/** Numbers of steps differ between variants, in the words of references too. */
function keyOf({ kind, of, form, say, before, after }: Finding): string {
  return JSON.stringify([kind, of, form, say, before, after]).replace(/step\u00a0\d+/g, 'step');
}

function changeOf(f: Finding, words: string, variants: readonly string[]): Change {
  const [stepBefore] = f.stepsBefore;
  const [stepAfter] = f.stepsAfter;
  return {
    kind: f.kind,
    of: f.of,
    words,
    ...(f.before === undefined ? {} : { before: f.before }),
    ...(f.after === undefined ? {} : { after: f.after }),
    ...(stepBefore === undefined ? {} : { stepBefore }),
    ...(stepAfter === undefined ? {} : { stepAfter }),
    variants,
  };
}

function byOrder(a: { readonly finding: Finding }, b: { readonly finding: Finding }): number {
  const step = ({ stepsAfter, stepsBefore }: Finding): number => stepsAfter[0] ?? stepsBefore[0] ?? 0;
  return (
    SUBJECTS.indexOf(a.finding.of) - SUBJECTS.indexOf(b.finding.of) ||
    step(a.finding) - step(b.finding) ||
    FORMS.indexOf(a.finding.form) - FORMS.indexOf(b.finding.form)
  );
}

function wordsOf({ first, of }: Group, former: string): string {
  if (first.form === 'whole' || first.stepsAfter.length + first.stepsBefore.length === 0) return capitalised(first.say);
  const place = (f: Finding): string => placeWords(f);
  const main = place(first);
  const others = new Map<string, string[]>();
  for (const { label, finding } of of) {
    const words = place(finding);
    if (words !== main) others.set(words, [...(others.get(words) ?? []), label]);
  }
  const where =
    others.size === 0 ? main : `${main} (${[...others].map(([words, l]) => `${l.join('; ')}: ${words}`).join('; ')})`;
  switch (first.form) {
    case 'new':
      return `New ${where}: ${first.say}`;
    case 'removed':
      return `${capitalised(where)} of revision ${former} removed: ${first.say}`;
    case 'moved':
      return capitalised(where);
    case 'at':
      return `${capitalised(where)}: ${first.say}`;
  }
}

function placeWords({ form, stepsBefore, stepsAfter }: Finding): string {
  if (form === 'removed') return steps(stepsBefore);
  if (form !== 'moved') return steps(stepsAfter.length > 0 ? stepsAfter : stepsBefore);
  const [before = 0] = stepsBefore;
  const [after = 0] = stepsAfter;
  if (before === after) return `step ${after} keeps its number and is done in another order among its neighbours`;
  return `step ${before} is now step ${after}`;
}

function steps(numbers: readonly number[]): string {
  return `${numbers.length === 1 ? 'step' : 'steps'} ${listed(numbers.map(String))}`;
}
