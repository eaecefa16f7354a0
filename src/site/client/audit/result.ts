/** The result of an audit as a file: CSV for a spreadsheet, JSON for a program. */

import { csvText } from '../../../lists/csv.ts';
import type { Mark, Outcome } from './compare.ts';

export interface AuditHead {
  readonly bench: string;
  readonly benchName: string;
  readonly copy: number;
  /** Day for which the site says what must hang there, and the seal of its ledger's last line. */
  readonly asOf: string;
  readonly ledger: string;
  readonly started: string;
  /** Date and time at which the file was made, in ISO 8601. */
  readonly made: string;
  readonly by: string;
}

const COLUMNS = [
  'Result',
  'Document',
  'Variant',
  'Revision that must hang',
  'Fingerprint that must hang',
  'Revision found',
  'Fingerprint found',
  'Seen at',
  'Bench',
  'Copy',
  'Audited by',
  'Date',
  'Site as of',
];

interface Line {
  readonly result: string;
  readonly doc: string;
  readonly label: string;
  readonly expected?: { readonly rev: string; readonly fingerprint: string };
  readonly found?: Pick<Mark, 'rev' | 'fingerprint' | 'at'>;
  /** What was typed, where no card bears it. */
  readonly typed?: string;
}

function lines({ rows, others }: Outcome): readonly Line[] {
  return [
    ...rows.map(
      ({ card, state, mark }): Line => ({
        result: state,
        doc: card.doc,
        label: card.label,
        expected: { rev: card.rev, fingerprint: card.fingerprint },
        ...(mark === undefined ? {} : { found: mark }),
      }),
    ),
    ...others
      // An old card in the place of an expected one has its line already.
      .filter((o) => !rows.some((r) => r.mark === o.mark))
      .map(
        ({ path, mark, kind }): Line => ({
          result: kind === 'strange' ? (mark.standing === 'unknown' ? 'unknown' : 'strange') : mark.standing,
          doc: mark.doc,
          label: mark.label,
          found: mark,
          ...(mark.standing === 'unknown' ? { typed: path } : {}),
        }),
      ),
  ];
}

/** One line a card, each with bench, copy, person and date, so that files of several benches can be put together. */
export function auditCsv(head: AuditHead, outcome: Outcome): string {
  const day = head.made.slice(0, 10);
  return csvText([
    COLUMNS,
    ...lines(outcome).map(({ result, doc, label, expected, found, typed }) => [
      result,
      doc,
      label,
      expected?.rev ?? '',
      expected?.fingerprint ?? '',
      found?.rev ?? '',
      typed ?? found?.fingerprint ?? '',
      found?.at ?? '',
      head.benchName,
      String(head.copy),
      head.by,
      day,
      head.asOf,
    ]),
  ]);
}

export function auditJson(head: AuditHead, outcome: Outcome): string {
  const { current, wrong, missing, strange } = outcome;
  return `${JSON.stringify({ format: 1, ...head, counts: { current, wrong, missing, strange }, cards: lines(outcome) }, undefined, 2)}\n`;
}

/** `audit-heat-exchange-2026-11-25.csv` */
export function auditFile({ bench, made }: AuditHead, ending: 'csv' | 'json'): string {
  return `audit-${bench}-${made.slice(0, 10)}.${ending}`;
}
