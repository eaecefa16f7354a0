/** The one place that knows the order of the stages: folder in, checked shop with laid-out cards out, or diagnostics. */

import {
  type ControlFiles,
  type ControlRead,
  checkDrafts,
  diskFiles,
  NO_FILES,
  verifyLedger,
} from '../control/index.ts';
import { collector, type Diagnostic, hasErrors, type Report, type TextOf } from '../diagnostics/index.ts';
import { type CardLayout, layoutCard, layoutCards, needsLayout } from '../layout/card/index.ts';
import { loadFaces } from '../layout/type/index.ts';
import { readContent } from '../model/index.ts';
import { type CheckedShop, type ResolvedShop, resolveShop } from '../resolve/index.ts';
import { type AcceptedWarning, applyAcceptances, CATALOGUE, CHECKS, runChecks } from '../rules/index.ts';
import { readFiles, type SourceFile } from '../source/index.ts';

export interface CompileOptions {
  /** The shop folder, as a path for the file system. */
  readonly folder: string;
  /** How the folder is called in diagnostics: `content`. */
  readonly shown: string;
  /**
   * Which cards are laid out: all, to be published, or only those that could report a fault; the others are shown to be
   * sound without it. Default: all.
   */
  readonly cards?: 'all' | 'suspect';
  /** The ledger and what it seals; default: nothing was ever issued. */
  readonly issued?: ControlFiles;
  /** Called when a stage begins, with the number of things that it handles. */
  readonly onStage?: (stage: string, count: number) => void;
}

export interface Compiled {
  /** What stands against the shop; accepted warnings are not among them. */
  readonly diagnostics: readonly Diagnostic[];
  /** Warnings that an author accepted beside their line, with the reason. */
  readonly accepted: readonly AcceptedWarning[];
  readonly textOf: TextOf;
  /** How the shop's folder is called in diagnostics. */
  readonly shown: string;
  /** Present only when there is no error. */
  readonly checked: CheckedCards | undefined;
  /** The ledger as verified, and the files that it was read from. */
  readonly control: ControlRead & { readonly files: ControlFiles };
  /** What could be resolved in spite of errors; for counts and for the preview, never for publishing. */
  readonly resolved: ResolvedShop;
}

/** `cards` is empty when only suspect cards were laid out: such a shop may be counted and shown, and not published. */
export interface CheckedCards {
  readonly shop: CheckedShop;
  readonly cards: readonly CardLayout[];
}

/** Runs every stage and gathers every fault. Never throws on an author's mistake. */
export function compileShop({ folder, shown, ...options }: CompileOptions): Compiled {
  return compileFiles((report) => readFiles(folder, shown, report), shown, { issued: diskFiles(folder), ...options });
}

/** The same over files that come from somewhere else. read: hands them over and reports what it cannot. */
export function compileFiles(
  read: (report: Report) => readonly SourceFile[],
  shown: string,
  { cards: wanted = 'all', issued = NO_FILES, onStage }: Omit<CompileOptions, 'folder' | 'shown'> = {},
): Compiled {
  const { report, list } = collector(CATALOGUE);
  onStage?.('read', 0);
  const files = read(report);
  onStage?.('model', files.length);
  const content = readContent(files, shown, report);
  onStage?.('resolve', content.procedures.entries.size);
  const resolved = resolveShop(content, report);
  onStage?.('ledger', 0);
  const control = verifyLedger(issued, shown, resolved.info.control, report);
  checkDrafts(resolved, control.ledger, report);
  onStage?.('check', CHECKS.length);
  runChecks(resolved, report);
  let cards: readonly CardLayout[] = [];
  // Cards of a shop with errors would be laid out from half-resolved steps; their faults would only be echoes.
  if (!hasErrors(list())) {
    onStage?.(
      'lay out cards',
      resolved.documents.reduce((n, d) => n + d.variants.length, 0),
    );
    cards = wanted === 'all' ? layoutCards(resolved, loadFaces(), report) : checkCards(resolved, report);
  }
  const { accepted } = applyAcceptances(files, list(), report);
  const taken = new Set<Diagnostic>(accepted.map((a) => a.diagnostic));
  const diagnostics = list().filter((d) => !taken.has(d));
  return {
    diagnostics,
    accepted,
    shown,
    textOf: (file) => content.textOf(file) ?? control.textOf(file),
    control: { ...control, files: issued },
    resolved,
    checked: hasErrors(diagnostics) ? undefined : { shop: resolved as CheckedShop, cards },
  };
}

/** Lays out the cards that may hold a fault, for its report alone. */
function checkCards(shop: ResolvedShop, report: Report): readonly CardLayout[] {
  for (const document of shop.documents) {
    for (const variant of document.variants) {
      // Faces are parsed once a process, and mostly not at all.
      if (needsLayout(shop, document, variant)) layoutCard(shop, document, variant, loadFaces(), report);
    }
  }
  return [];
}
