/** An example as it is shown: the changed stretch of the file, line by line, with the marked places. */

import { CLOSING, type Edit, OPENING } from './example.ts';

export interface Segment {
  readonly text: string;
  readonly marked: boolean;
}

export interface Snippet {
  /** `machines/pump.yaml` */
  readonly file: string;
  readonly lines: readonly (readonly Segment[])[];
  /** What cannot be shown as text: `the file is not there`. */
  readonly note?: string;
}

/** More lines than this hide the point; those around the first mark are kept. */
const MOST_LINES = 16;
const LEAD = 4;

export function snippet({ file, to }: Edit, disk?: string): Snippet {
  if (to === null) return { file, lines: [], note: 'the file is not there' };
  if (disk === 'unreadable') return { file, lines: [], note: 'the file may not be read by this user' };
  if (disk === 'outside link')
    return { file, lines: [], note: 'the file is a link to a place outside the shop folder' };
  if (typeof to !== 'string') {
    const hex = [...to.slice(0, 8)].map((b) => b.toString(16).toUpperCase().padStart(2, '0')).join(' ');
    return { file, lines: [], note: `${to.length} bytes, beginning with ${hex}` };
  }
  const lines = /\.jsonl?$/.test(file)
    ? segments(shortened(to.replace(/\n$/, ''))).flatMap(wrapped)
    : segments(to.replace(/\n$/, ''));
  const outdent = Math.min(...lines.map((l) => indentOf(l)).filter((n) => Number.isFinite(n)));
  const shown = lines.map((l) => cutIndent(l, Number.isFinite(outdent) ? outdent : 0));
  if (shown.length <= MOST_LINES) return { file, lines: shown };
  const first = Math.max(
    0,
    shown.findIndex((l) => l.some((s) => s.marked)),
  );
  const from = Math.max(0, Math.min(first - LEAD, shown.length - MOST_LINES));
  return {
    file,
    lines: shown.slice(from, from + MOST_LINES),
    note: `${MOST_LINES} of ${shown.length} lines are shown`,
  };
}

/** Seals, digests and signatures by their beginning: what they are cannot be read, only compared. */
function shortened(text: string): string {
  return text
    .replace(/[0-9a-f]{64}/g, (hex) => `${hex.slice(0, 8)}…`)
    .replace(/[\w+/]{86}==/g, (s) => `${s.slice(0, 8)}…`);
}

/** Most signs of a row of a ledger's line. */
const ROW = 76;

/** A long line in rows that end behind a comma; those after the first are set in. */
function wrapped(line: readonly Segment[]): Segment[][] {
  const rows: Segment[][] = [[]];
  let width = 0;
  for (const { text, marked } of line) {
    for (const piece of text === '' ? [''] : (text.match(/.+?(?:,(?=["{])|$)/gu) ?? [])) {
      if (width > 0 && width + piece.length > ROW) {
        rows.push([{ text: '  ', marked: false }]);
        width = 2;
      }
      const row = rows.at(-1);
      const last = row?.at(-1);
      if (last?.marked === marked) row?.splice(-1, 1, { text: last.text + piece, marked });
      else row?.push({ text: piece, marked });
      width += piece.length;
    }
  }
  return rows;
}

function segments(text: string): Segment[][] {
  const lines: Segment[][] = [[]];
  let depth = 0;
  for (const piece of text.split(/([«»\n])/)) {
    if (piece === OPENING) {
      depth += 1;
      // A mark of no width still has to be seen.
      lines.at(-1)?.push({ text: '', marked: true });
    } else if (piece === CLOSING) depth -= 1;
    else if (piece === '\n') lines.push([]);
    else if (piece !== '') lines.at(-1)?.push({ text: piece, marked: depth > 0 });
  }
  return lines.map((l) => l.filter((s, i) => s.text !== '' || (s.marked && l[i + 1]?.marked !== true)));
}

function indentOf(line: readonly Segment[]): number {
  const text = line.map((s) => s.text).join('');
  return text.trim() === '' ? Number.POSITIVE_INFINITY : text.length - text.trimStart().length;
}

function cutIndent(line: readonly Segment[], by: number): Segment[] {
  const [first, ...rest] = line;
  return first === undefined ? [] : [{ ...first, text: first.text.slice(Math.min(by, indentOf([first]))) }, ...rest];
}
