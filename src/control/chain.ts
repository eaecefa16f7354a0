/** The lines of the ledger, each by itself and each with the one before it, and the head that says how many there are. */

import type { Range, Report } from '../diagnostics/index.ts';
import { canonical, sha256 } from './canonical.ts';
import { readEntry } from './entry-shapes.ts';
import { type ControlFiles, HEAD } from './files.ts';
import type { Lock } from './lock.ts';
import { type Entry, NO_SEAL } from './types.ts';

export const RESTORE =
  'take the file back from version control or from the last backup: what is issued is never edited';

const FORKED =
  'keep the lines of the branch that was published first, whole and in order, with its `issued/head`; take the lines of the other branch and their files out, and issue those documents once more';

export interface Line {
  readonly seq: number;
  readonly range: Range;
  /** Undefined when the line does not hold. */
  readonly entry: Entry | undefined;
}

/** What a merge leaves: the beginning of a conflict, its parts and its end. */
const MERGE_MARK = /^(<{7}|\|{7}|={7}|>{7})/;

/** text: the whole ledger. Reports lines that do not hold, and each that does not follow from the one before it. */
export function readLines(text: string, file: string, report: Report): readonly Line[] {
  const lines: Line[] = [];
  let start = 0;
  let before: Entry | undefined;
  /** After a fault, the next line cannot be compared. */
  let known = true;
  let merged = false;
  const raw = text.split('\n');
  const rest = raw.pop() ?? '';
  for (const line of raw) {
    const range = { file, start, end: start + line.length };
    start = range.end + 1;
    let entry: Entry | undefined;
    if (MERGE_MARK.test(line)) {
      // The first mark tells it; the others belong to it.
      if (!merged) {
        report('LDG004', range, 'two branches have both issued, and the merge has left its marks in the ledger', {
          hint: FORKED,
        });
      }
      merged = true;
    } else {
      entry = readLine(line, range, report);
      if (entry !== undefined && known) checkChain(before, entry, range, lines, report);
    }
    lines.push({ seq: entry?.seq ?? lines.length + 1, range, entry });
    known = entry !== undefined;
    before = entry;
  }
  if (rest !== '') {
    const range = { file, start, end: text.length };
    report('LDG001', range, 'the last line of the ledger is cut short', { hint: RESTORE });
    lines.push({ seq: lines.length + 1, range, entry: undefined });
  }
  return lines;
}

function readLine(line: string, range: Range, report: Report): Entry | undefined {
  let value: unknown;
  try {
    value = JSON.parse(line);
  } catch {
    report('LDG001', range, 'this line of the ledger is not JSON', { hint: RESTORE });
    return undefined;
  }
  const read = readEntry(value);
  if ('wrong' in read) {
    report('LDG001', range, `this line of the ledger is not one that was ever written: ${read.wrong}`, {
      hint: RESTORE,
    });
    return undefined;
  }
  if (!isSealed(line, read.entry)) {
    report('LDG002', range, `line ${read.entry.seq} of the ledger was altered after it was written`, {
      hint: RESTORE,
    });
    return undefined;
  }
  return read.entry;
}

/** The line is the one canonical spelling of what it says, and its seal is over that. */
function isSealed(line: string, entry: Entry): boolean {
  const { seal, ...rest } = entry;
  try {
    return canonical(entry) === line && sha256(canonical(rest)) === seal;
  } catch {
    // Half of a surrogate pair has no canonical form.
    return false;
  }
}

function checkChain(
  before: Entry | undefined,
  entry: Entry,
  range: Range,
  lines: readonly Line[],
  report: Report,
): void {
  const expected = before === undefined ? 1 : before.seq + 1;
  const prev = before?.seal ?? NO_SEAL;
  if (entry.seq === expected && entry.prev === prev) return;
  const twin = lines.find((l) => l.entry !== undefined && l.entry.prev === entry.prev);
  if (twin?.entry?.seal === entry.seal) {
    report('LDG003', range, `line ${entry.seq} of the ledger stands there twice`, {
      related: [{ range: twin.range, message: 'the first time' }],
      hint: RESTORE,
    });
    return;
  }
  if (twin !== undefined) {
    report(
      'LDG004',
      range,
      entry.seq === 1
        ? 'two lines of the ledger are both its first one: two branches have both issued'
        : `two lines of the ledger both follow line ${entry.seq - 1}: two branches have both issued`,
      { related: [{ range: twin.range, message: 'the other one' }], hint: FORKED },
    );
    return;
  }
  report('LDG003', range, misplaced(entry.seq, expected), { hint: RESTORE });
}

function misplaced(seq: number, expected: number): string {
  if (seq < expected) return `line ${seq} of the ledger stands behind line ${expected - 1}`;
  if (seq === expected) return `line ${seq} of the ledger does not follow from the line before it`;
  return seq - expected === 1
    ? `line ${expected} of the ledger is missing`
    : `lines ${expected} to ${seq - 1} of the ledger are missing`;
}

/** The head says how many lines there are: lines lost at the end would not be missed otherwise. */
export function checkHead(
  files: ControlFiles,
  lock: Lock | undefined,
  lines: readonly Line[],
  file: string,
  report: Report,
): void {
  const bytes = files.read(HEAD);
  const last = lines.at(-1);
  const range = last?.range ?? { file, start: 0, end: 0 };
  if (last !== undefined && last.entry === undefined) return;
  const head = bytes === undefined ? undefined : Buffer.from(bytes).toString('latin1');
  const now = headText(last?.seq ?? 0, last?.entry?.seal ?? NO_SEAL);
  if (head === now) return;
  if (lock !== undefined && isHeadBefore(lock, lines, head)) return;
  if (head === undefined) {
    if (last !== undefined) {
      report('LDG003', range, `\`${HEAD}\` is missing, which says how many lines the ledger has`, { hint: RESTORE });
    }
    return;
  }
  const count = Number(/^(\d{1,9}) [0-9a-f]{64}\n$/.exec(head)?.[1] ?? '0');
  report(
    'LDG003',
    range,
    count > (last?.seq ?? 0)
      ? `the ledger ends with line ${last?.seq ?? 0}, and it had ${count} lines`
      : `\`${HEAD}\` does not belong to this ledger`,
    { hint: RESTORE },
  );
}

/** A process died between the ledger and its head, which still tells of the lines before; of the first one, nothing. */
function isHeadBefore(lock: Lock, lines: readonly Line[], head: string | undefined): boolean {
  const last = lines.at(-1)?.entry;
  if (last?.seal !== lock.seal || last.seq !== lock.seq || lock.count >= lock.seq) return false;
  if (lock.count === 0) return head === undefined;
  return lines[lock.count - 1]?.entry?.seal === lock.prev && head === headText(lock.count, lock.prev);
}

/** `12 <seal>` and a line end. */
export function headText(count: number, seal: string): string {
  return `${count} ${seal}\n`;
}
