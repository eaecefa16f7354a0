/** Reads the ledger and everything that it seals, and reports whatever does not hold. */

import type { Range, Report } from '../diagnostics/index.ts';
import type { ControlRules } from '../resolve/index.ts';
import { sha256 } from './canonical.ts';
import { checkHead, RESTORE, readLines } from './chain.ts';
import { checkActs } from './check-acts.ts';
import { type ControlFiles, HEAD, ISSUED, KEYS, LEDGER, LOCK } from './files.ts';
import { type Lock, readLock } from './lock.ts';
import { holds, type KeyRing, readKeys } from './signature.ts';
import { SNAPSHOT_FORMAT } from './snapshot.ts';
import { EMPTY_LEDGER, type Entry, type FileSeal, type IssueEntry, type Ledger, NO_SEAL } from './types.ts';

export interface ControlRead {
  readonly ledger: Ledger;
  readonly keys: KeyRing;
  /** Place of each line, for diagnostics about it; by `seq`. */
  readonly placeOf: (entry: Entry) => Range;
  /** Text of the ledger's file, for the excerpts of diagnostics. */
  readonly textOf: (file: string) => string | undefined;
  /** Something is being written, or was when its process died. */
  readonly lock: Lock | undefined;
  /** Nothing was reported. */
  readonly sound: boolean;
}

/**
 * Every byte counts: each line has a seal over itself and the line before, each snapshot its digest, each approval of a class
 * that the shop has signed its signature. shown: the shop folder's name in diagnostics.
 */
export function verifyLedger(files: ControlFiles, shown: string, rules: ControlRules, tell: Report): ControlRead {
  let sound = true;
  const report: Report = (...fault) => {
    sound = false;
    tell(...fault);
  };
  // In this order: what is listed now and not in the ledger below was there before its line, and its lock with it.
  const list = files.list();
  const lock = readLock(files.read(LOCK));
  const bytes = files.read(LEDGER);
  const keys = readKeys(files, list);
  for (const name of keys.unreadable) {
    report('LDG009', atStart(shown, name), `\`${name}\` holds something else than Ed25519 public keys`, {
      hint: 'put the PEM text of the public key there as it was made, one below the other, in `<person>.pem`; or take the file away',
    });
  }
  const file = `${shown}/${LEDGER}`;
  const isThere = bytes !== undefined || list.includes(LEDGER);
  const text = isThere ? decode(bytes) : '';
  if (text === undefined) {
    const what = bytes === undefined ? 'the ledger cannot be read' : 'the ledger is not UTF-8 text';
    report('LDG001', { file, start: 0, end: 0 }, what, { hint: RESTORE });
    return { ledger: EMPTY_LEDGER, keys, placeOf: () => atStart(shown, LEDGER), textOf: () => undefined, lock, sound };
  }
  const before = sound;
  sound = true;
  const lines = readLines(text, file, report);
  const entries = lines.flatMap((l) => l.entry ?? []);
  const places = new Map(lines.map((l) => [l.entry, l.range]));
  const placeOf = (entry: Entry): Range => places.get(entry) ?? { file, start: 0, end: 0 };
  if (sound) checkHead(files, lock, lines, file, report);
  const whole = sound;
  sound = before && whole;
  const named = checkFiles(files, entries, placeOf, report);
  checkSignatures(entries, keys, rules, placeOf, report);
  // Of a ledger with a gap, the rest would only be told what the gap has swallowed.
  if (whole) {
    checkUnrecorded(list, named, lock, shown, report);
    checkActs(entries, placeOf, report);
  }
  return {
    ledger: { entries, head: entries.at(-1)?.seal ?? NO_SEAL },
    keys,
    placeOf,
    textOf: (name) => (name === file ? text : undefined),
    lock,
    sound,
  };
}

function atStart(shown: string, name: string): Range {
  return { file: `${shown}/${name}`, start: 0, end: 0 };
}

function decode(bytes: Uint8Array | undefined): string | undefined {
  if (bytes === undefined) return undefined;
  try {
    return new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    return undefined;
  }
}

/** Snapshots and comparisons, byte for byte. Returns their paths. */
function checkFiles(
  files: ControlFiles,
  entries: readonly Entry[],
  placeOf: ControlRead['placeOf'],
  report: Report,
): ReadonlySet<string> {
  const named = new Set<string>();
  for (const entry of entries) {
    if (entry.kind !== 'issue') continue;
    const { format, engine } = entry.snapshot;
    if (format !== SNAPSHOT_FORMAT) {
      report(
        'LDG011',
        placeOf(entry),
        `the snapshot of ${entry.doc} Rev ${entry.rev} has the format ${format}, written by version ${engine}, and this version does not know it`,
        { hint: 'build with the version that wrote it, or a later one' },
      );
    }
    for (const seal of sealsOf(entry)) {
      const name = `${ISSUED}/${seal.file}`;
      named.add(name);
      const bytes = files.read(name);
      const of = `revision ${entry.rev} of ${entry.doc}`;
      if (bytes === undefined) {
        report('LDG005', placeOf(entry), `\`${name}\` of ${of} is missing or cannot be read`, { hint: RESTORE });
      } else if (sha256(bytes) !== seal.sha256) {
        report('LDG005', placeOf(entry), `\`${name}\` of ${of} is not the file that was issued: its bytes differ`, {
          hint: RESTORE,
        });
      }
    }
  }
  return named;
}

function sealsOf(entry: IssueEntry): readonly FileSeal[] {
  return entry.comparison === undefined ? [entry.snapshot] : [entry.snapshot, entry.comparison];
}

function checkUnrecorded(
  list: readonly string[],
  named: ReadonlySet<string>,
  lock: Lock | undefined,
  shown: string,
  report: Report,
): void {
  const known = new Set([LEDGER, HEAD, LOCK, ...named, ...(lock?.files ?? [])]);
  for (const name of list) {
    // What a writing process names with a dot in front is swept by the next one.
    if (!name.startsWith(`${ISSUED}/`) || known.has(name) || /\/\.[^/]*$/.test(name)) continue;
    if (name.endsWith('/')) {
      report('LDG006', atStart(shown, name), `the folder \`${name}\` cannot be read`, {
        hint: 'give this user the right to read it, or take it back from version control',
      });
      continue;
    }
    report('LDG006', atStart(shown, name), `\`${name}\` is in no line of the ledger`, {
      hint: 'when lines of the ledger were lost, take it back from version control; a file that was put here by hand is to be taken away',
    });
  }
}

function checkSignatures(
  entries: readonly Entry[],
  keys: KeyRing,
  rules: ControlRules,
  placeOf: ControlRead['placeOf'],
  report: Report,
): void {
  for (const entry of entries) {
    const approver = 'approver' in entry ? entry.approver : undefined;
    const { signature } = entry;
    const what = `line ${entry.seq} of the ledger (${actText(entry)})`;
    if (signature === undefined) {
      const level = entry.kind === 'issue' ? entry.change.class : 'major';
      const owed =
        approver !== undefined && rules.signed.includes(level) && entry.recorded >= (rules.signedSince ?? '');
      if (owed) {
        report('LDG008', placeOf(entry), `${what} is not signed, and the shop has ${level} changes signed`, {
          hint: RESTORE,
        });
      }
      continue;
    }
    if (signature.by !== approver) {
      report('LDG007', placeOf(entry), `${what} is signed by \`${signature.by}\`, who is not its approver`, {
        hint: RESTORE,
      });
      continue;
    }
    // Said of the file already.
    if (keys.unreadable.includes(`${KEYS}/${signature.by}.pem`)) continue;
    const key = keys.find(signature.by, signature.key);
    if (key === undefined) {
      report(
        'LDG009',
        placeOf(entry),
        `${what} is signed with the key ${signature.key}, which \`keys/${signature.by}.pem\` does not hold`,
        {
          hint: 'keys of former days stay in the file below the present one; take it back from version control',
        },
      );
    } else if (!holds(entry, signature, key)) {
      report(
        'LDG007',
        placeOf(entry),
        `the signature of ${what} does not hold: \`${signature.by}\` did not sign these words`,
        {
          hint: RESTORE,
        },
      );
    }
  }
}

/** `issue of OF-204 Rev C`: what a line does, in words. */
export function actText(entry: Entry): string {
  switch (entry.kind) {
    case 'issue':
      return `issue of ${entry.doc} Rev ${entry.rev}`;
    case 'suspend':
      return `suspension of ${entry.doc}`;
    case 'reinstate':
      return `reinstatement of ${entry.doc}`;
    case 'withdraw':
      return `withdrawal of ${entry.doc}`;
    case 'temporary':
      return `temporary change ${entry.number} of ${entry.doc}`;
    case 'temporary-end':
      return `end of temporary change ${entry.number}`;
    case 'receipt':
      return `receipt of ${entry.notice} from ${entry.bench}`;
    case 'review':
      return `review of ${entry.doc}`;
  }
}
