/** What stands in a binder's list of effective pages: one row for each sheet or card, pages counted through the binder. */

import type { CardLayout } from '../card/index.ts';
import type { BinderEntry, BinderFacts } from './types.ts';

/** One row; `card` is absent for sheets of the binder itself, whose revision is the day as of which it was made. */
export interface ListRow {
  /** `5`, `7 to 10`: pages of the binder. */
  readonly pages: string;
  readonly doc: string;
  readonly title: string;
  /** `page 6 blank`: of the leaf's back; else empty. */
  readonly blank: string;
  readonly card?: CardLayout;
  readonly sides: number;
}

interface Open {
  readonly row: Omit<ListRow, 'pages' | 'blank' | 'sides'>;
  readonly from: number;
  to: number;
  sides: number;
  blank: string;
}

/** Rows for all entries in their order. count: how many pages cover and list take, with which the binder begins. */
export function listRows(
  facts: BinderFacts,
  entries: readonly BinderEntry[],
  count: { readonly cover: number; readonly list: number },
): readonly ListRow[] {
  const rows: Open[] = [];
  const dividers = facts.bound.map((d) => d.doc);
  const open = (doc: string, title: string, from: number): void => {
    rows.push({ row: { doc, title }, from, to: from, sides: 1, blank: '' });
  };
  let page = 0;
  entries.forEach((entry, i) => {
    const from = page + 1;
    if (entry.kind === 'card') {
      const { card } = entry;
      const sides = card.sides.length;
      page += sides;
      rows.push({ row: { doc: card.doc, title: card.title, card }, from, to: page, sides, blank: '' });
      return;
    }
    page = from;
    const before = rows.at(-1);
    if (i === 0) open('', 'Cover', from);
    else if (i === count.cover) open('', 'List of effective pages', from);
    else if (before !== undefined && i < count.cover + count.list) {
      before.to = page;
      before.sides += 1;
    } else if (before !== undefined && entry.title === '') {
      // A blank side is the back of the leaf before it.
      before.to = page;
      before.blank = `page\u00a0${page}\u00a0blank`;
    } else open(dividers.shift() ?? '', 'Divider', from);
  });
  return rows.map(({ row, from, to, sides, blank }) => ({
    ...row,
    pages: from === to ? String(from) : `${from}\u00a0to\u00a0${to}`,
    blank,
    sides,
  }));
}
