/** The acts of control, from a shop's folder to its ledger: compile, judge, freeze, write. */

import type { KeyObject } from 'node:crypto';
import {
  type Act,
  type ActFacts,
  type Comparison,
  ControlFault,
  type ControlRead,
  checkClock,
  checkIssue,
  diskFiles,
  draftOf,
  ENGINE,
  type Entry,
  freezeDraft,
  type IssueEntry,
  issueAct,
  keyIdOf,
  latestIssue,
  type Snapshot,
  shopOf,
  snapshotOf,
  temporaryAct,
  thaw,
  verifyLedger,
  type Writing,
  withMarks,
  writeLines,
} from '../control/index.ts';
import { collector, type Diagnostic, hasErrors } from '../diagnostics/index.ts';
import { layoutCard } from '../layout/card/index.ts';
import { loadFaces } from '../layout/type/index.ts';
import type { Document, ResolvedShop } from '../resolve/index.ts';
import { CATALOGUE } from '../rules/index.ts';
import type { Compiled } from './compile.ts';

export interface ControlOptions {
  /** The shop folder, and how it is called in diagnostics. */
  readonly folder: string;
  readonly shown: string;
  /** Day of the clock. */
  readonly today: string;
  /** The approver's private key, when the act is to be signed. */
  readonly key?: KeyObject;
}

export interface Issued {
  readonly entry: IssueEntry;
  readonly comparison: Comparison | undefined;
}

/**
 * Issues the draft of a procedure. compiled: the shop without errors. Throws ControlFault with what is in the way; the folder is
 * then as it was.
 */
export function issueDocument(compiled: Compiled, doc: string, options: ControlOptions): Issued {
  const shop = soundShop(compiled);
  const document = draftOf(shop, doc);
  let comparison: Comparison | undefined;
  const [entry] = act(shop, options, document.revision.approver, document.revision.class, (facts, files) => {
    checkIssue(facts, document);
    const latest = latestIssue(facts, doc);
    const before = latest === undefined ? undefined : snapshotOf(files, latest, options.shown);
    const frozen = freezeDraft(shop, document, ENGINE, before);
    comparison = frozen.comparison;
    const snapshot = thaw(frozen.text, options.shown);
    if (snapshot === undefined) throw new RangeError('a snapshot of this version is not read by it');
    const { act: made, files: written } = issueAct(
      facts,
      document,
      frozen,
      ENGINE,
      countSides(shop, snapshot, frozen.comparison, document),
    );
    return { acts: [made], files: written };
  });
  return { entry: entry as IssueEntry, comparison };
}

/** Issues a temporary change that stands in temporary.yaml. */
export function issueTemporary(compiled: Compiled, number: string, options: ControlOptions): Entry | undefined {
  const shop = soundShop(compiled);
  const draft = shop.temporaryChanges.find((t) => t.number === number);
  if (draft === undefined) throw new RangeError(`${number} is no temporary change`);
  return act(shop, options, draft.approver, 'major', (facts, files) => {
    const latest = latestIssue(facts, draft.doc);
    const changed = facts.ledger.entries.find(
      (e): e is IssueEntry => e.kind === 'issue' && e.doc === draft.doc && e.rev === draft.rev,
    );
    const of = changed ?? latest;
    return { acts: [temporaryAct(facts, draft, of && snapshotOf(files, of, options.shown))], files: [] };
  })[0];
}

/** Any other act. approver: whose signature it needs, if anybody's. */
export function recordActs(
  compiled: Compiled,
  options: ControlOptions,
  approver: string | undefined,
  make: (facts: ActFacts) => readonly Act[],
): readonly Entry[] {
  return act(compiled.resolved, options, approver, 'major', (facts) => ({ acts: make(facts), files: [] }));
}

function soundShop(compiled: Compiled): ResolvedShop {
  if (compiled.checked === undefined)
    throw new ControlFault('the content has errors', 'mend them: only what holds is issued');
  return compiled.checked.shop;
}

/** Judges under the lock, by the ledger as it is then. */
function act(
  shop: ResolvedShop,
  { folder, shown, today, key }: ControlOptions,
  approver: string | undefined,
  level: 'major' | 'minor',
  make: (
    facts: ActFacts,
    files: ReturnType<typeof diskFiles>,
  ) => { readonly acts: readonly Act[]; readonly files: Writing['files'] },
): readonly Entry[] {
  return writeLines(folder, () => {
    const files = diskFiles(folder);
    const { report, list } = collector(CATALOGUE);
    // The lock is ours: what it leaves behind is not there yet.
    const read = verifyLedger(files, shown, shop.info.control, report);
    refuseFaulty(list());
    const facts: ActFacts = { ledger: read.ledger, shop, today };
    checkClock(facts);
    const made = make(facts, files);
    const sign = signatory(shop, read, approver, level, today, key);
    return { ledger: read.ledger, today, ...made, ...(sign === undefined ? {} : { sign }) };
  });
}

function refuseFaulty(found: readonly Diagnostic[]): void {
  const errors = found.filter((d) => d.severity === 'error');
  if (errors.length === 0) return;
  throw new ControlFault(
    `the ledger does not hold: ${errors[0]?.message ?? ''}${errors.length > 1 ? ` (and ${errors.length - 1} more)` : ''}`,
    'run `npm run check`, and mend it before anything is added',
  );
}

function signatory(
  shop: ResolvedShop,
  { keys }: ControlRead,
  approver: string | undefined,
  level: 'major' | 'minor',
  today: string,
  key: KeyObject | undefined,
): Writing['sign'] {
  const rules = shop.info.control;
  if (key === undefined) {
    const owed = approver !== undefined && rules.signed.includes(level) && today >= (rules.signedSince ?? '');
    if (!owed) return undefined;
    throw new ControlFault(
      `the shop has ${level} changes signed, and \`${approver}\` has not signed`,
      'give the approver’s private key with `--key FILE`; `npm run new-key -- PERSON` makes a pair',
    );
  }
  if (approver === undefined) throw new ControlFault('this act has no approver who could sign', 'leave `--key` out');
  if (keys.find(approver, keyIdOf(key)) === undefined) {
    throw new ControlFault(
      `the key is not one of \`${approver}\`: \`keys/${approver}.pem\` does not hold its public half`,
      'the approver signs, with a key of their own',
    );
  }
  return { by: approver, key };
}

/** The card as it will be published: with its change bars and its panel. */
function countSides(
  now: ResolvedShop,
  snapshot: Snapshot,
  comparison: Comparison | undefined,
  draft: Document,
): ReadonlyMap<string, number> {
  const { report, list } = collector(CATALOGUE);
  const document = withMarks(snapshot.document, comparison);
  const shop = shopOf(snapshot, now);
  const sides = new Map<string, number>();
  for (const variant of document.variants) {
    sides.set(variant.key, layoutCard(shop, document, variant, loadFaces(), report).sides.length);
  }
  const faults = list();
  if (hasErrors(faults)) {
    throw new ControlFault(
      `the cards of ${draft.doc} do not hold: ${faults[0]?.message ?? ''}`,
      faults[0]?.hint ?? 'run `npm run check`',
    );
  }
  return sides;
}
