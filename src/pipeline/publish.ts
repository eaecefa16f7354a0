/** A compiled shop as it is published on a day: the issues in force with their cards laid out, and what is known of control. */

import { type PublishedDocument, type PublishedShop, publishShop } from '../control/index.ts';
import { collector, type Diagnostic, hasErrors, type Report } from '../diagnostics/index.ts';
import { type CardLayout, layoutCard } from '../layout/card/index.ts';
import { loadFaces } from '../layout/type/index.ts';
import type { CheckedShop, Document, ResolvedShop } from '../resolve/index.ts';
import { CATALOGUE } from '../rules/index.ts';
import type { Compiled } from './compile.ts';

export interface PublishedCard {
  readonly layout: CardLayout;
  /** Of which it was laid out: the registers as they were when it was issued. */
  readonly shop: ResolvedShop;
}

export interface Published extends Pick<PublishedShop, 'view' | 'comparisons'> {
  readonly shop: CheckedShop;
  /** In force, and drafts where they are wanted. */
  readonly cards: readonly PublishedCard[];
  /** Issued and not yet effective. */
  readonly coming: readonly PublishedCard[];
  /** Cards that differ at one bench, because a temporary change holds there alone; by bench. */
  readonly atBench: ReadonlyMap<string, readonly PublishedCard[]>;
}

export interface PublishFor {
  /** Day for which it is published. */
  readonly asOf: string;
  readonly drafts: boolean;
  /** The shop folder's name in diagnostics. */
  readonly shown: string;
}

/** Undefined, with the faults, when a frozen card or snapshot can no longer be read or laid out. */
export function publishCompiled(
  { checked, control }: Compiled,
  options: PublishFor,
): { readonly published: Published | undefined; readonly diagnostics: readonly Diagnostic[] } {
  const { report, list } = collector(CATALOGUE);
  if (checked === undefined) return { published: undefined, diagnostics: [] };
  const made = publishShop(checked.shop, control, control.files, options, report);
  const atBench = new Map<string, PublishedCard[]>();
  const cards: PublishedCard[] = [];
  for (const published of made.documents) {
    // The loose card serves all benches: it bears what holds everywhere.
    const loose = published.atBench.get('') ?? published.document;
    cards.push(...laidOut(published, loose, report));
    for (const [bench, document] of published.atBench) {
      if (bench !== '') atBench.set(bench, [...(atBench.get(bench) ?? []), ...laidOut(published, document, report)]);
    }
  }
  const coming = made.coming.flatMap((p) => laidOut(p, p.document, report));
  const diagnostics = list();
  const published: Published = {
    shop: made.shop as CheckedShop,
    cards,
    coming,
    atBench,
    view: made.view,
    comparisons: made.comparisons,
  };
  return { published: hasErrors(diagnostics) ? undefined : published, diagnostics };
}

function laidOut({ shop }: PublishedDocument, document: Document, report: Report): readonly PublishedCard[] {
  return document.variants.map((variant) => ({
    layout: layoutCard(shop, document, variant, loadFaces(), report),
    shop,
  }));
}
