/** Turns diagnostics into text: in full with excerpts, one line each, or JSON. */

import type { Diagnostic, Range } from './diagnostic.ts';
import { lineStarts, type Place, placeOf } from './place.ts';

/** Text of a file by its path as in the diagnostics; undefined when it could not be read. */
export type TextOf = (file: string) => string | undefined;

/** An excerpt longer than this is cut around its column. */
const EXCERPT_WIDTH = 100;

export interface DiagnosticJson {
  readonly code: string;
  readonly name: string;
  readonly severity: string;
  readonly message: string;
  readonly file: string;
  readonly line: number;
  readonly column: number;
  readonly hint: string | null;
  /** The other sides of a conflict. */
  readonly related: readonly {
    readonly message: string;
    readonly file: string;
    readonly line: number;
    readonly column: number;
  }[];
}

/** Keeps the line starts of each file, so that many diagnostics of one file cost one scan. */
export function placer(textOf: TextOf): (range: Range) => Place {
  const known = new Map<string, readonly number[]>();
  return (range) => {
    let starts = known.get(range.file);
    if (starts === undefined) {
      starts = lineStarts(textOf(range.file) ?? '');
      known.set(range.file, starts);
    }
    return placeOf(starts, range.start);
  };
}

export function renderJson(diagnostics: readonly Diagnostic[], textOf: TextOf): string {
  const place = placer(textOf);
  const rows: DiagnosticJson[] = diagnostics.map((d) => ({
    code: d.code,
    name: d.name,
    severity: d.severity,
    message: d.message,
    file: d.range.file,
    ...place(d.range),
    hint: d.hint ?? null,
    related: (d.related ?? []).map((r) => ({ message: r.message, file: r.range.file, ...place(r.range) })),
  }));
  return `${JSON.stringify(rows, null, 2)}\n`;
}

/** `content/procedures/gland.yaml:41:17: error REF002: consumable ... is not in the register`, one line each. */
export function renderShort(diagnostics: readonly Diagnostic[], textOf: TextOf): string {
  const place = placer(textOf);
  return diagnostics
    .map((d) => {
      const { line, column } = place(d.range);
      const others = (d.related ?? []).map((r) => {
        const other = place(r.range);
        return `; ${r.message}: ${r.range.file}:${other.line}:${other.column}`;
      });
      const hint = d.hint === undefined ? '' : ` (${d.hint})`;
      const words = printable(`${d.message}${others.join('')}${hint}`);
      return `${d.range.file}:${line}:${column}: ${d.severity} ${d.code}: ${words}\n`;
    })
    .join('');
}

/** Headline, place, excerpt with caret, related places and hint; complete without colour. */
export function renderFull(diagnostics: readonly Diagnostic[], textOf: TextOf): string {
  const place = placer(textOf);
  return diagnostics.map((d) => renderOne(d, textOf, place)).join('\n');
}

function renderOne(d: Diagnostic, textOf: TextOf, place: (range: Range) => Place): string {
  const { line, column } = place(d.range);
  const lines = [`${d.severity} ${d.code} ${d.name}: ${printable(d.message)}`, `  ${d.range.file}:${line}:${column}`];
  const text = textOf(d.range.file);
  const row = text === undefined ? undefined : (text.split(/\r\n|\r|\n/u, line)[line - 1] ?? '');
  if (row !== undefined && text !== '') {
    const margin = ' '.repeat(String(line).length);
    const cut = excerpt(row, column, Math.max(1, d.range.end - d.range.start));
    lines.push(
      `${margin} |`,
      `${line} | ${cut.text}`,
      `${margin} | ${cut.caret}${d.label === undefined ? '' : ` ${d.label}`}`,
    );
  }
  for (const r of d.related ?? []) {
    const other = place(r.range);
    lines.push(`  = ${printable(r.message)} (${r.range.file}:${other.line}:${other.column})`);
  }
  if (d.hint !== undefined) lines.push(`  hint: ${printable(d.hint)}`);
  return `${lines.join('\n')}\n`;
}

function excerpt(row: string, column: number, length: number): { text: string; caret: string } {
  const from =
    row.length <= EXCERPT_WIDTH ? 0 : Math.max(0, Math.min(column - 1 - EXCERPT_WIDTH / 2, row.length - EXCERPT_WIDTH));
  const shown = printable(row.slice(from, from + EXCERPT_WIDTH));
  const before = printable(row.slice(from, column - 1));
  const marked = Math.max(1, Math.min(length, from + EXCERPT_WIDTH - (column - 1), row.length - (column - 1)));
  const text = `${from > 0 ? '…' : ''}${shown}${from + EXCERPT_WIDTH < row.length ? '…' : ''}`;
  return { text, caret: `${' '.repeat(before.length + (from > 0 ? 1 : 0))}${'^'.repeat(Math.max(1, marked))}` };
}

/** Content is somebody's text: control characters must not reach the terminal. Tabs become one space to keep carets true. */
export function printable(text: string): string {
  return text.replace(/\t/g, ' ').replace(/[\p{Cc}\u202a-\u202e\u2066-\u2069]/gu, '\ufffd');
}
