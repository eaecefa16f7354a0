/** The sheet before a document's cards. */

import { capitalised } from '../../resolve/words.ts';
import { textWidthOf } from '../card/format.ts';
import type { CardLayout, PlacedBlock } from '../card/index.ts';
import { type Decoration, mm, shift, stack } from '../card/items.ts';
import { paragraph, type Setting, span } from '../card/setting.ts';

/** A sheet with the document's number large, and a tab at the outer edge that steps down from document to document. */
export function divider(setting: Setting, cards: readonly CardLayout[], index: number, count: number): PlacedBlock {
  const { format } = setting;
  const width = textWidthOf(format);
  const [card] = cards;
  const variants = cards.map((c) => c.variantLabel).filter((l) => l !== '');
  const words = stack(
    [
      paragraph(setting, [span(card?.doc ?? '', 44, 'bold')], width - mm(24), { tag: 'H1', lead: mm(20) }),
      paragraph(setting, [span(card?.title ?? '', 20, 'semibold')], width - mm(24), { lead: mm(9) }),
      paragraph(setting, [span(capitalised(card?.machineName ?? ''), format.type.title)], width - mm(24), {
        lead: mm(7),
      }),
      ...(variants.length === 0
        ? []
        : [
            paragraph(setting, [span(variants.join(' · '), format.type.title, 'semibold', 'accent')], width - mm(24), {
              lead: mm(7),
            }),
          ]),
    ],
    mm(2),
  );
  // The tab ends at the same distance from the paper's edge as all other marks, so that any printer reaches it.
  const step = (format.height - mm(60)) / Math.max(count, 6);
  const tabHeight = Math.min(mm(26), step - mm(3));
  const tabY = mm(20) + index * step;
  const tab: Decoration = { kind: 'rect', x: width - mm(6), y: tabY, width: mm(6), height: tabHeight, fill: 'accent' };
  const placed = shift(words, 0, Math.max(mm(20), Math.min(tabY, format.height * 0.6)));
  return {
    x: format.binding,
    y: format.top,
    block: { height: placed.height, decoration: [...placed.decoration, tab], nodes: placed.nodes },
  };
}
