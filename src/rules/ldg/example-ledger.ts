/** Ledgers for the examples, sealed and signed as the commands do it; made when an example is asked for. */

import { createPrivateKey, createPublicKey, type KeyObject } from 'node:crypto';
import {
  type Act,
  canonical,
  type Entry,
  HEAD,
  ISSUED,
  KEYS,
  LEDGER,
  linesOf,
  NO_SEAL,
  sha256,
} from '../../control/index.ts';
import { fingerprintOf } from '../../resolve/fingerprint.ts';
import { CLOSING, type Edit, OPENING } from '../example/example.ts';

/** What is done on which day, by whom it is signed. */
export interface Done {
  readonly on: string;
  readonly act: Act;
  readonly signed?: KeyObject;
}

export type Line = Entry;

/** Of whom the examples have keys. */
export const BEN = 'ben';

/** A key of the examples; it opens nothing. fill: the byte that it is made of. */
export function exampleKey(fill: number): KeyObject {
  // The head of every Ed25519 private key in PKCS #8 (RFC 8410, section 7), then its 32 bytes.
  const head = Buffer.from('302e020100300506032b657004220420', 'hex');
  return createPrivateKey({ key: Buffer.concat([head, Buffer.alloc(32, fill)]), format: 'der', type: 'pkcs8' });
}

export function publicPem(key: KeyObject): string {
  return createPublicKey(key).export({ type: 'spki', format: 'pem' }).toString();
}

/** Lines that follow one another, the first of them after `before`. */
export function lines(done: readonly Done[], before: readonly Entry[] = []): readonly Entry[] {
  const entries = [...before];
  for (const { on, act, signed } of done) {
    const ledger = { entries, head: entries.at(-1)?.seal ?? NO_SEAL };
    const sign = signed === undefined ? {} : { sign: { by: BEN, key: signed } };
    entries.push(...linesOf({ ledger, acts: [act], today: on, ...sign }));
  }
  return entries.slice(before.length);
}

/** The line of that number. */
export function lineOf(entries: readonly Entry[], seq: number): Entry {
  const found = entries.find((e) => e.seq === seq);
  if (found === undefined) throw new RangeError(`the example has no line ${seq}`);
  return found;
}

/** As it stands in the ledger, without the line end. */
export function lineText(entry: Entry): string {
  return canonical(entry);
}

/** The line with other words in it, and nothing else done about it. */
export function altered(entry: Entry, change: object): Entry {
  return { ...entry, ...change };
}

/** The line with other words in it and a seal of its own: what somebody makes who knows the program and has no key. */
export function resealed(entry: Entry, change: object): Entry {
  const { seal: _seal, ...rest } = { ...entry, ...change };
  return { ...entry, ...change, seal: sha256(canonical(rest)) };
}

/** Ledger, head and snapshot as the example needs them; not shown. */
export function ledgerAside(entries: readonly Entry[]): readonly Edit[] {
  return [
    { file: LEDGER, to: ledgerText(entries), aside: true },
    { file: HEAD, to: `${entries.length} ${entries.at(-1)?.seal ?? NO_SEAL}\n`, aside: true },
    { file: SNAPSHOT_FILE, to: SNAPSHOT, aside: true },
  ];
}

/** Some lines of it, one below the other, with another text in their place; the same, to show them. */
export function lineEdit(entries: readonly Entry[], to: string = ledgerText(entries)): Edit {
  return { file: LEDGER, from: ledgerText(entries), to };
}

/** A line that a check marks. */
export function markedLine(entry: Entry): string {
  return `${OPENING}${lineText(entry)}${CLOSING}\n`;
}

export function ledgerText(entries: readonly Entry[]): string {
  return entries.map((e) => `${lineText(e)}\n`).join('');
}

export function aside(edit: Edit): Edit {
  return { ...edit, aside: true };
}

export function keyEdit(key: KeyObject): Edit {
  return { file: `${KEYS}/${BEN}.pem`, to: publicPem(key) };
}

/** The checks of the ledger compare a snapshot's bytes and do not read it. */
export const SNAPSHOT = '{"document":{"doc":"MW-1","torque":"160 N·m"},"engine":"0.1.0","format":1}\n';
export const SNAPSHOT_FILE = `${ISSUED}/MW-1/A.json`;

const distribution = [{ bench: 'pumps', copy: 1 }];

function card(variant: string): Extract<Act, { kind: 'issue' }>['cards'][number] {
  const digest = sha256(`MW-1 A ${variant}`);
  const path = `C/MW-1/A/${variant.toUpperCase()}`;
  return { variant, label: variant, path, fingerprint: fingerprintOf(digest), digest, sides: 2 };
}

/** The issue of the example shop's one procedure, as its change record has it. format: of the snapshot. */
export function issued(format = 1): Done {
  return {
    on: '2026-01-09',
    act: {
      kind: 'issue',
      doc: 'MW-1',
      rev: 'A',
      title: 'Renew the cover gasket',
      change: { class: 'major', what: 'First issue', why: 'New pump' },
      affects: [],
      author: 'ada',
      approver: BEN,
      approved: '2026-01-08',
      effective: '2026-01-10',
      snapshot: { file: 'MW-1/A.json', sha256: sha256(SNAPSHOT), format, engine: '0.1.0' },
      cards: [card('small'), card('large')],
      distribution,
    },
  };
}

export function reviewed(on: string, finding: string): Done {
  return { on, act: { kind: 'review', doc: 'MW-1', rev: 'A', by: 'ada', on, finding } };
}

export function suspended(): Done {
  const reason = 'A cover cracked';
  return { on: '2026-02-01', act: { kind: 'suspend', doc: 'MW-1', reason, by: 'ada', distribution } };
}

export function reinstated(by: string, signed?: KeyObject): Done {
  const reason = 'The cover was a bad casting';
  return {
    on: '2026-02-03',
    act: { kind: 'reinstate', doc: 'MW-1', reason, by, approver: BEN, distribution },
    ...(signed === undefined ? {} : { signed }),
  };
}

export function withdrawn(): Done {
  const reason = 'The pump was scrapped';
  return {
    on: '2026-02-01',
    act: { kind: 'withdraw', doc: 'MW-1', reason, by: 'ada', approver: BEN, effective: '2026-02-01', distribution },
  };
}
