/** A check as its author-facing words: for the site and for `explain`, with its example run. */

import { placer, type Severity } from '../diagnostics/index.ts';
import {
  type Check,
  type Edit,
  EXAMPLE_SHOP,
  familyOf,
  OPENING,
  type Snippet,
  snippet,
  unmarked,
} from '../rules/index.ts';
import { runExample } from './example.ts';

export interface ShownDiagnostic {
  readonly message: string;
  /** `shop/machines/pump.yaml:31:13` */
  readonly place: string;
  readonly hint?: string;
  readonly related: readonly { readonly message: string; readonly place: string }[];
}

export interface CheckWords {
  readonly code: string;
  readonly name: string;
  readonly severity: Severity;
  readonly family: string;
  readonly title: string;
  readonly why: string;
  readonly sources: readonly string[];
  readonly bad: readonly Snippet[];
  readonly good: readonly Snippet[];
  /** What the bad example reports, as computed by running it. */
  readonly diagnostics: readonly ShownDiagnostic[];
}

export function checkWords(check: Check): CheckWords {
  const { code, name, severity, title, why, sources, example } = check;
  const { diagnostics, textOf } = runExample(example.bad, example.disk);
  const place = placer(textOf);
  const where = (range: Parameters<typeof place>[0]): string => {
    const { line, column } = place(range);
    return `${range.file}:${line}:${column}`;
  };
  return {
    code,
    name,
    severity,
    family: familyOf(code),
    title,
    why,
    sources,
    bad: example.bad.filter(isShown).map((edit) => snippet(wholeLines(edit), example.disk?.[edit.file])),
    good: (example.good === undefined
      ? asItStands(example.bad)
      : changed(example.good.filter(isShown), example.bad)
    ).map((edit) => snippet(wholeLines(edit))),
    diagnostics: diagnostics.map((d) => ({
      message: d.message,
      place: where(d.range),
      related: (d.related ?? []).map((r) => ({ message: r.message, place: where(r.range) })),
      ...(d.hint === undefined ? {} : { hint: d.hint }),
    })),
  };
}

function isShown({ aside }: Edit): boolean {
  return aside !== true;
}

/** The stretches of the sound example shop that the bad example changes; one that was only added to says nothing. */
function asItStands(bad: readonly Edit[]): readonly Edit[] {
  return bad.flatMap((edit): Edit[] => {
    const { file, from, to } = edit;
    const text = from ?? EXAMPLE_SHOP[file];
    if (text === undefined) return [];
    const right: Edit = { file, ...(from === undefined ? {} : { from }), to: text };
    if (typeof to !== 'string' || to.includes(OPENING)) return [right];
    const wrong = new Set(linesOf(wholeLines(edit)));
    return linesOf(wholeLines(right)).every((line) => wrong.has(line)) ? [] : [right];
  });
}

/** What the good example does otherwise than the bad one; an edit that both make says nothing. */
function changed(good: readonly Edit[], bad: readonly Edit[]): readonly Edit[] {
  const wrong = new Set(bad.map(({ file, to }) => `${file} ${typeof to === 'string' ? unmarked(to) : ''}`));
  const other = good.filter(({ file, to }) => typeof to !== 'string' || !wrong.has(`${file} ${to}`));
  return other.length > 0 ? other : good;
}

/** The edit with the rest of its first and last line, as an author sees them in the file. */
function wholeLines(edit: Edit): Edit {
  const { file, from, to } = edit;
  const text = EXAMPLE_SHOP[file];
  if (from === undefined || typeof to !== 'string' || text === undefined) return edit;
  const start = text.indexOf(from);
  if (start < 0) return edit;
  const end = start + from.length;
  const lead = text.slice(text.lastIndexOf('\n', start - 1) + 1, start);
  const rest = from.endsWith('\n') ? '' : (text.slice(end).split('\n', 1)[0] ?? '');
  return { file, from, to: `${lead}${to}${rest}` };
}

function linesOf({ to }: Edit): readonly string[] {
  return typeof to === 'string' ? to.split('\n').map((line) => line.trim()) : [];
}
