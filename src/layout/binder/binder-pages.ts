/** A bench's binder: cover, list of effective pages, and behind a divider for each document its cards. */

import type { Bench, ResolvedShop } from '../../resolve/types.ts';
import { formatOf, leftOf } from '../card/format.ts';
import type { CardLayout, PlacedBlock } from '../card/index.ts';
import type { Setting } from '../card/setting.ts';
import type { Faces } from '../type/index.ts';
import { boundCards } from './bound.ts';
import { coverPages } from './cover.ts';
import { divider } from './divider.ts';
import { effectivePages } from './effective-pages.ts';
import { listRows } from './list-rows.ts';
import { blankSide, sheetFoot } from './sheets.ts';
import type { BinderControl, BinderEntry, BinderFacts, BinderLayout, BinderPage } from './types.ts';

/** A list that grows by what it says of itself has settled long before. */
const MOST_LIST_PAGES = 50;

/**
 * Lays out a binder. Every card and divider begins on the front of a leaf; backs without content say so. With `control` cards and
 * cover bear the bench's copy number, and every page of the binder stands in its list, the list itself included.
 */
export function layoutBinder(
  shop: ResolvedShop,
  bench: Bench,
  cards: readonly CardLayout[],
  faces: Faces,
  control?: BinderControl,
): BinderLayout {
  const format = formatOf(shop.info.cardFormat);
  // Names on these sheets have been on cards and in registers before, where their problems were reported.
  const setting: Setting = { faces, format, problems: { missing: () => undefined, tooWide: () => undefined } };
  const { bound, unbound } = boundCards(bench, cards, control, faces);
  const latest = bound.flatMap((d) => d.cards.map((c) => c.effective)).sort();
  const facts: BinderFacts = {
    bench,
    bound,
    unbound,
    date: control?.asOf ?? latest.at(-1) ?? '1970-01-01',
    ...(control === undefined ? {} : { copy: `copy\u00a0${bench.copy}\u00a0of\u00a0${control.copies}` }),
  };
  const sheets = (pages: readonly (readonly PlacedBlock[])[], title: string, before: number): BinderPage[] =>
    pages.map((blocks, i) => ({
      kind: 'sheet',
      title: i === 0 ? title : '',
      blocks: blocks.map((b) => ({ ...b, x: leftOf(format, before + i + 1), y: format.top + b.y })),
    }));
  const cover = sheets(coverPages(setting, shop, facts), `Binder: ${bench.name}`, 0);
  /** All entries around a list of so many pages, which is laid out in the same pass. */
  const assembled = (listPages: number): { entries: BinderEntry[]; pages: number } => {
    const blanks = Array.from({ length: listPages }, (): BinderPage => ({ kind: 'sheet', title: '', blocks: [] }));
    const behind = behindTheList(setting, facts, cover.length + listPages);
    const rows = listRows(facts, [...cover, ...blanks, ...behind], { cover: cover.length, list: listPages });
    const list = sheets(effectivePages(setting, facts, rows), 'List of effective pages', cover.length);
    return { entries: [...cover, ...list, ...behind], pages: list.length };
  };
  let listPages = 1;
  let found = assembled(listPages);
  while (found.pages > listPages && listPages < MOST_LIST_PAGES) {
    listPages += 1;
    found = assembled(listPages);
  }
  const entries = control === undefined ? found.entries : withFeet(setting, facts, found.entries);
  return { width: format.width, height: format.height, entries, date: facts.date };
}

/** Dividers and cards, each on the front of a leaf. before: pages that stand before them. */
function behindTheList(setting: Setting, facts: BinderFacts, before: number): BinderEntry[] {
  const entries: BinderEntry[] = [];
  const toFront = (): void => {
    const pages = before + pagesOf(entries);
    if (pages % 2 === 1) entries.push(blankSide(setting, pages + 1));
  };
  facts.bound.forEach(({ doc, cards }, i) => {
    toFront();
    entries.push({
      kind: 'sheet',
      title: `${doc} ${cards[0]?.title ?? ''}`.trim(),
      blocks: [divider(setting, cards, i, facts.bound.length)],
    });
    for (const card of cards) {
      toFront();
      entries.push({ kind: 'card', card });
    }
  });
  return entries;
}

function pagesOf(entries: readonly BinderEntry[]): number {
  return entries.reduce((n, e) => n + (e.kind === 'card' ? e.card.sides.length : 1), 0);
}

/** The binder's own sheets say to which copy they belong and which page they are. */
function withFeet(setting: Setting, facts: BinderFacts, entries: readonly BinderEntry[]): BinderEntry[] {
  const all = pagesOf(entries);
  let page = 0;
  return entries.map((entry) => {
    if (entry.kind === 'card') {
      page += entry.card.sides.length;
      return entry;
    }
    page += 1;
    return { ...entry, blocks: [...entry.blocks, sheetFoot(setting, facts, page, all)] };
  });
}
