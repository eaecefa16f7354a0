/** A check as its author-facing words: for the site and for `explain`, with its example run. */

import { placer, type Severity } from '../diagnostics/index.ts';
import { type Check, type Edit, EXAMPLE_SHOP, familyOf, type Snippet, snippet } from '../rules/index.ts';
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
    bad: example.bad.map((edit) => snippet(edit, example.disk?.[edit.file])),
    good: (example.good ?? asItStands(example.bad)).map((edit) => snippet(edit)),
    diagnostics: diagnostics.map((d) => ({
      message: d.message,
      place: where(d.range),
      related: (d.related ?? []).map((r) => ({ message: r.message, place: where(r.range) })),
      ...(d.hint === undefined ? {} : { hint: d.hint }),
    })),
  };
}

/** The stretches of the sound example shop that the bad example changes. */
function asItStands(bad: readonly Edit[]): readonly Edit[] {
  return bad.flatMap(({ file, from }): Edit[] => {
    const text = from ?? EXAMPLE_SHOP[file];
    return text === undefined ? [] : [{ file, to: text }];
  });
}
