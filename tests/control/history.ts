/** A short history of three documents in memory, sealed and signed as the commands do it, and the hands that tamper with it. */

import { createPrivateKey, createPublicKey, type KeyObject } from 'node:crypto';
import { canonical, sha256 } from '../../src/control/canonical.ts';
import { HEAD, LEDGER, memoryFiles } from '../../src/control/files.ts';
import type { Act, ControlRead, Entry, IssueEntry } from '../../src/control/index.ts';
import { freeze } from '../../src/control/snapshot.ts';
import { NO_SEAL } from '../../src/control/types.ts';
import { verifyLedger } from '../../src/control/verify-ledger.ts';
import { linesOf } from '../../src/control/write-ledger.ts';
import { collector, type Diagnostic, placer } from '../../src/diagnostics/index.ts';
import { fingerprintOf } from '../../src/resolve/fingerprint.ts';
import type { ControlRules } from '../../src/resolve/types.ts';
import { CATALOGUE } from '../../src/rules/index.ts';
import { compileMini } from '../fixtures/mini-shop.ts';

export type Files = Map<string, string | Uint8Array>;

export const RULES: ControlRules = {
  scheme: 'letters',
  signed: ['major'],
  receiptDays: { suspension: 1, major: 3, minor: 7 },
  temporaryMost: 2,
  temporaryDays: 90,
  dueSoonDays: 60,
  freshDays: 30,
};

/** A key of the tests. fill: the byte that it is made of. */
export function keyOf(fill: number): KeyObject {
  const head = Buffer.from('302e020100300506032b657004220420', 'hex');
  return createPrivateKey({ key: Buffer.concat([head, Buffer.alloc(32, fill)]), format: 'der', type: 'pkcs8' });
}

export function pemOf(key: KeyObject): string {
  return createPublicKey(key).export({ type: 'spki', format: 'pem' }).toString();
}

export const BEN = keyOf(1);
export const CLEO = keyOf(2);
export const MALLORY = keyOf(3);

const distribution = [{ bench: 'pumps', copy: 1 }];

/** The mini shop's procedure, frozen. */
export function frozenMini(): string {
  const { resolved } = compileMini();
  const [document] = resolved.documents;
  if (document === undefined) throw new Error('the mini shop has no procedure');
  return freeze(resolved, document, '0.1.0');
}

export type IssueAct = Extract<Act, { kind: 'issue' }>;

export function issueAct(doc: string, rev: string, text: string, more: Partial<IssueAct> = {}): IssueAct {
  const card = (variant: string): IssueAct['cards'][number] => {
    const digest = sha256(`${doc} ${rev} ${variant}`);
    const path = `C/${doc}/${rev}${variant === '' ? '' : `/${variant.toUpperCase()}`}`;
    return { variant, label: variant, path, fingerprint: fingerprintOf(digest), digest, sides: 2 };
  };
  return {
    kind: 'issue',
    doc,
    rev,
    title: 'Renew the cover gasket',
    change: { class: 'major', what: `What ${rev} changes`, why: 'The bench asked for it' },
    affects: [],
    author: 'ada',
    approver: 'ben',
    approved: '2026-01-08',
    effective: '2026-01-10',
    snapshot: { file: `${doc}/${rev}.json`, sha256: sha256(text), format: 1, engine: '0.1.0' },
    cards: [card('small'), card('large')],
    distribution,
    ...more,
  };
}

interface Step {
  readonly on: string;
  readonly act: Act;
  readonly by?: 'ben' | 'cleo';
}

function steps(): { readonly steps: readonly Step[]; readonly files: Files } {
  const first = frozenMini();
  const texts = {
    'MW-1/A.json': first,
    'MW-2/A.json': first.replaceAll('MW-1', 'MW-2'),
    'MW-1/B.json': first.replaceAll('MW-1/A', 'MW-1/B'),
    'MW-3/A.json': first.replaceAll('MW-1', 'MW-3'),
    'MW-1/B.changes.json': `${canonical({ format: 1, doc: 'MW-1', from: 'A', to: 'B', changes: [], marks: {} })}\n`,
  };
  const comparison = { file: 'MW-1/B.changes.json', sha256: sha256(texts['MW-1/B.changes.json']) };
  const files: Files = new Map(Object.entries(texts).map(([name, text]) => [`issued/${name}`, text]));
  return {
    files,
    steps: [
      { on: '2026-01-09', act: issueAct('MW-1', 'A', texts['MW-1/A.json']), by: 'ben' },
      { on: '2026-01-09', act: issueAct('MW-2', 'A', texts['MW-2/A.json'], { approver: 'cleo' }), by: 'cleo' },
      {
        on: '2026-01-12',
        act: { kind: 'receipt', notice: 'CN-1', bench: 'pumps', copy: 1, by: 'ada', on: '2026-01-11' },
      },
      {
        on: '2026-02-01',
        act: issueAct('MW-1', 'B', texts['MW-1/B.json'], {
          approved: '2026-01-30',
          effective: '2026-02-10',
          comparison,
        }),
        by: 'ben',
      },
      {
        on: '2026-02-02',
        act: { kind: 'review', doc: 'MW-1', rev: 'B', by: 'ada', on: '2026-02-02', finding: 'Sound' },
      },
      { on: '2026-02-03', act: { kind: 'suspend', doc: 'MW-2', reason: 'A cover cracked', by: 'ada', distribution } },
      {
        on: '2026-02-04',
        act: issueAct('MW-3', 'A', texts['MW-3/A.json'], {
          change: { class: 'minor', what: 'Spelling', why: 'Reported' },
        }),
      },
      {
        on: '2026-02-05',
        act: { kind: 'reinstate', doc: 'MW-2', reason: 'A bad casting', by: 'ada', approver: 'ben', distribution },
        by: 'ben',
      },
      {
        on: '2026-02-06',
        act: { kind: 'receipt', notice: 'CN-4', bench: 'pumps', copy: 1, by: 'ada', on: '2026-02-06' },
      },
    ],
  };
}

/** Lines after `before`, each with its signature. */
export function append(before: readonly Entry[], on: string, act: Act, by?: 'ben' | 'cleo' | 'mallory'): Entry[] {
  const ledger = { entries: before, head: before.at(-1)?.seal ?? NO_SEAL };
  const key = by === undefined ? undefined : { ben: BEN, cleo: CLEO, mallory: MALLORY }[by];
  const sign = by === undefined || key === undefined ? {} : { sign: { by, key } };
  return [...before, ...linesOf({ ledger, acts: [act], today: on, ...sign })];
}

export interface History {
  readonly entries: readonly Entry[];
  /** Ledger, head, snapshots, comparison and keys. */
  readonly files: Files;
}

let made: History | undefined;

/** Nine lines over three documents; made once, handed out as a copy. */
export function history(): History {
  if (made === undefined) {
    const { steps: all, files } = steps();
    let entries: readonly Entry[] = [];
    for (const { on, act, by } of all) entries = append(entries, on, act, by);
    files.set('keys/ben.pem', pemOf(BEN));
    files.set('keys/cleo.pem', pemOf(CLEO));
    made = { entries, files: withLedger(files, entries) };
  }
  return { entries: made.entries, files: new Map(made.files) };
}

export function ledgerText(entries: readonly Entry[]): string {
  return entries.map((e) => `${canonical(e)}\n`).join('');
}

/** The same files with these lines and the head that belongs to them. */
export function withLedger(files: Files, entries: readonly Entry[]): Files {
  return new Map(files)
    .set(LEDGER, ledgerText(entries))
    .set(HEAD, `${entries.length} ${entries.at(-1)?.seal ?? NO_SEAL}\n`);
}

/** What somebody can do who has the program and no key: change a line and seal it and all later ones anew. */
export function forged(entries: readonly Entry[], seq: number, change: (entry: Entry) => object): readonly Entry[] {
  const out: Entry[] = [];
  for (const entry of entries) {
    const prev = out.at(-1)?.seal ?? NO_SEAL;
    const { seal: _seal, ...rest }: Omit<Entry, 'seal'> & { seal?: string } = {
      ...entry,
      ...(entry.seq === seq ? change(entry) : {}),
      prev,
    };
    out.push({ ...rest, seal: sha256(canonical(rest)) } as Entry);
  }
  return out;
}

export function issueIn(entries: readonly Entry[], seq: number): IssueEntry {
  const found = entries[seq - 1];
  if (found?.kind !== 'issue') throw new Error(`line ${seq} is no issue`);
  return found;
}

export interface Checked {
  readonly read: ControlRead;
  readonly found: readonly Diagnostic[];
  /** `LDG003 issued/ledger.jsonl:2 line 2 of the ledger is missing` */
  readonly said: readonly string[];
}

export function check(files: Files, rules: ControlRules = RULES): Checked {
  const { report, list } = collector(CATALOGUE);
  const read = verifyLedger(memoryFiles(files), 'shop', rules, report);
  const found = list();
  const place = placer(read.textOf);
  const said = found.map((d) => {
    const { line } = place(d.range);
    return `${d.code} ${d.range.file.replace('shop/', '')}:${line} ${d.message}`;
  });
  return { read, found, said };
}
