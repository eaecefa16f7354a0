/** One fault or warning, kept as data; line, column and excerpt are worked out only when it is printed. */

import type { Catalogue, Code } from './codes.ts';

/** A stretch of one file. `start` and `end` are offsets in UTF-16 units; `end` is exclusive. */
export interface Range {
  /** Path as the author knows it: `content/procedures/gland.yaml`, with `/` on every system. */
  readonly file: string;
  readonly start: number;
  readonly end: number;
}

export type Severity = 'error' | 'warning';

export interface Diagnostic {
  readonly code: Code;
  /** `undefined-tool` */
  readonly name: string;
  readonly severity: Severity;
  /** Lower case, no full stop, names the value in backticks, understandable alone. */
  readonly message: string;
  readonly range: Range;
  /** A few words under the caret, such as `used by step 12`. */
  readonly label?: string;
  /** What to do about it. */
  readonly hint?: string;
  /** The other side of a conflict. */
  readonly related?: readonly { readonly range: Range; readonly message: string }[];
}

export interface DiagnosticDetails {
  readonly label?: string | undefined;
  readonly hint?: string | undefined;
  readonly related?: readonly { readonly range: Range; readonly message: string }[] | undefined;
}

/** Where stages report; they carry on after it, so that one run names every fault. */
export type Report = (code: Code, range: Range, message: string, details?: DiagnosticDetails) => void;

/** Gathers reports; the same code at the same place with the same words is kept once. */
export function collector(catalogue: Catalogue): { readonly report: Report; readonly list: () => Diagnostic[] } {
  const found = new Map<string, Diagnostic>();
  const report: Report = (code, range, message, details = {}) => {
    const key = `${code} ${range.file} ${range.start} ${message}`;
    if (found.has(key)) return;
    found.set(key, {
      code,
      name: catalogue[code].name,
      severity: catalogue[code].severity,
      message,
      range,
      ...(details.label === undefined ? {} : { label: details.label }),
      ...(details.hint === undefined ? {} : { hint: details.hint }),
      ...(details.related === undefined ? {} : { related: details.related }),
    });
  };
  return { report, list: () => [...found.values()].sort(byPlace) };
}

/** By file, then position, then code: the order in which an author works through them. */
export function byPlace(a: Diagnostic, b: Diagnostic): number {
  if (a.range.file !== b.range.file) return a.range.file < b.range.file ? -1 : 1;
  return a.range.start - b.range.start || (a.code < b.code ? -1 : a.code > b.code ? 1 : 0);
}

export function hasErrors(diagnostics: readonly Diagnostic[]): boolean {
  return diagnostics.some((d) => d.severity === 'error');
}
