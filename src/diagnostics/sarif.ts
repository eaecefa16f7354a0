/** Diagnostics as SARIF 2.1.0 (OASIS standard, 27 March 2020), for tools that collect findings. */

import type { Code } from './codes.ts';
import type { Diagnostic, Range, Severity } from './diagnostic.ts';
import { lineStarts, placeOf } from './place.ts';
import type { TextOf } from './render.ts';

/** What the log says of a check. */
export interface SarifRule {
  readonly code: Code;
  readonly name: string;
  readonly severity: Severity;
  readonly title: string;
  readonly why: string;
}

export interface SarifInput {
  readonly diagnostics: readonly Diagnostic[];
  /** Warnings accepted beside their line: results with a suppression (3.35). */
  readonly accepted: readonly { readonly diagnostic: Diagnostic; readonly reason: string }[];
  readonly rules: readonly SarifRule[];
  readonly textOf: TextOf;
}

/** One run with every check as a rule (3.49) and every diagnostic as a result (3.27); places count UTF-16 units from 1. */
export function renderSarif({ diagnostics, accepted, rules, textOf }: SarifInput): string {
  const index = new Map(rules.map((r, i) => [r.code, i]));
  const known = new Map<string, readonly number[]>();
  const startsOf = (file: string): readonly number[] => {
    const starts = known.get(file) ?? lineStarts(textOf(file) ?? '');
    known.set(file, starts);
    return starts;
  };
  const location = (range: Range) => {
    const starts = startsOf(range.file);
    const from = placeOf(starts, range.start);
    const to = placeOf(starts, Math.max(range.start, range.end));
    return {
      physicalLocation: {
        artifactLocation: { uri: encodeURI(range.file) },
        region: { startLine: from.line, startColumn: from.column, endLine: to.line, endColumn: to.column },
      },
    };
  };
  const result = (d: Diagnostic) => ({
    ruleId: d.code,
    ruleIndex: index.get(d.code) ?? -1,
    level: d.severity,
    // What to do stands in the message: SARIF has no field for advice that is no machine-made change (3.55).
    message: { text: d.hint === undefined ? `${d.message}.` : `${d.message}. What to do: ${d.hint}.` },
    locations: [location(d.range)],
    ...(d.related === undefined || d.related.length === 0
      ? {}
      : {
          relatedLocations: d.related.map((r, i) => ({
            id: i + 1,
            ...location(r.range),
            message: { text: r.message },
          })),
        }),
  });
  const log = {
    $schema: 'https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json',
    version: '2.1.0',
    runs: [
      {
        tool: {
          driver: {
            name: 'Fettlebook',
            rules: rules.map((r) => ({
              id: r.code,
              name: r.name,
              shortDescription: { text: r.title },
              fullDescription: { text: `${r.title} ${r.why}` },
              defaultConfiguration: { level: r.severity },
            })),
          },
        },
        columnKind: 'utf16CodeUnits',
        results: [
          ...diagnostics.map(result),
          ...accepted.map(({ diagnostic, reason }) => ({
            ...result(diagnostic),
            suppressions: [{ kind: 'inSource', status: 'accepted', justification: reason }],
          })),
        ],
      },
    ],
  };
  return `${JSON.stringify(log, null, 2)}\n`;
}
