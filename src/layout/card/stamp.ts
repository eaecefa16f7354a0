/** Controlled copies: the same card with its copy number and bench in the foot. */

import type { Faces } from '../type/index.ts';
import { formatOfPaper, textWidthOf } from './format.ts';
import type { CardLayout } from './layout-cards.ts';
import { type ControlledCopy, stampedLine } from './page-foot.ts';
import type { Setting } from './setting.ts';

/**
 * The card as the copy of a bench: only the line of each foot that says which copy it is differs. A draft gets no copy number and
 * comes back as it is.
 */
export function stampCopy(card: CardLayout, copy: ControlledCopy, faces: Faces): CardLayout {
  if (card.standing === 'draft') return card;
  const format = formatOfPaper(card.width, card.height);
  // Names of benches stand in the register and on binders; no fault of the card is looked for here.
  const setting: Setting = { faces, format, problems: { missing: () => undefined, tooWide: () => undefined } };
  const block = stampedLine(setting, copy, textWidthOf(format));
  return { ...card, sides: card.sides.map((side) => ({ ...side, copy: { ...side.copy, block } })) };
}
