/** The build report: what was compiled, what was accepted and why, and what warnings stand. Facts, no marks out of ten. */

import { type Diagnostic, placer, type Range } from '../diagnostics/index.ts';
import { placeOf } from '../resolve/index.ts';
import { CHECKS } from '../rules/index.ts';
import type { Compiled } from './compile.ts';

export interface ReportedWarning {
  readonly code: string;
  readonly name: string;
  readonly message: string;
  /** From the shop's folder on, wherever that lies: `procedures/of-204.yaml:41:17`. */
  readonly place: string;
  readonly hint?: string;
}

export interface ReportedAcceptance extends ReportedWarning {
  readonly reason: string;
}

/** Counts of one procedure, or of one file that serves several. */
export interface ReportCount {
  readonly warnings: number;
  readonly accepted: number;
}

export interface ReportedProcedure extends ReportCount {
  readonly doc: string;
  readonly cards: number;
  /** Over all cards. */
  readonly steps: number;
  readonly joints: number;
  readonly measurements: number;
  readonly moves: number;
  readonly safetyWords: number;
}

export interface BuildReport {
  /** Number of checks that were run. */
  readonly checks: number;
  readonly procedures: readonly ReportedProcedure[];
  /** Files other than procedures in which something stands: machines, shared stages, registers. */
  readonly others: readonly (ReportCount & { readonly file: string })[];
  readonly warnings: readonly ReportedWarning[];
  readonly accepted: readonly ReportedAcceptance[];
}

export function buildReport({ diagnostics, accepted, resolved, textOf, shown }: Compiled): BuildReport {
  const place = placer(textOf);
  const inShop = (file: string): string => (file.startsWith(`${shown}/`) ? file.slice(shown.length + 1) : file);
  const reported = (d: Diagnostic): ReportedWarning => {
    const { line, column } = place(d.range);
    return {
      code: d.code,
      name: d.name,
      message: d.message,
      place: `${inShop(d.range.file)}:${line}:${column}`,
      ...(d.hint === undefined ? {} : { hint: d.hint }),
    };
  };
  const warnings = diagnostics.filter((d) => d.severity === 'warning');
  const perFile = new Map<string, { warnings: number; accepted: number }>();
  const count = ({ file }: Range, what: 'warnings' | 'accepted'): void => {
    const counts = perFile.get(file) ?? { warnings: 0, accepted: 0 };
    counts[what] += 1;
    perFile.set(file, counts);
  };
  for (const w of warnings) count(w.range, 'warnings');
  for (const a of accepted) count(a.diagnostic.range, 'accepted');
  const own = new Set<string>();
  const procedures = resolved.documents.map((d): ReportedProcedure => {
    const { file } = placeOf(d);
    own.add(file);
    const steps = d.variants.flatMap((v) => v.stages.flatMap((s) => s.steps));
    const sum = (of: (step: (typeof steps)[number]) => number): number => steps.reduce((n, s) => n + of(s), 0);
    return {
      doc: d.doc,
      cards: d.variants.length,
      steps: steps.length,
      joints: new Set(d.variants.flatMap((v) => v.joints.map((j) => j.id))).size,
      measurements: sum((s) => s.measures.length),
      moves: sum((s) => s.remove.length + s.fit.length),
      safetyWords: sum((s) => s.warnings.length),
      ...(perFile.get(file) ?? { warnings: 0, accepted: 0 }),
    };
  });
  return {
    checks: CHECKS.length,
    procedures,
    others: [...perFile]
      .filter(([file]) => !own.has(file))
      .map(([file, counts]) => ({ file: inShop(file), ...counts }))
      .sort((a, b) => (a.file < b.file ? -1 : 1)),
    warnings: warnings.map(reported),
    accepted: accepted.map((a) => ({ ...reported(a.diagnostic), reason: a.reason })),
  };
}
