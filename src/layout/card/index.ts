/** Cards: resolved procedures in, placed marks on sides out. */

export { type Format, formatOf, textWidthOf } from './format.ts';
export { duration, stepList } from './front.ts';
export {
  type Bar,
  type Block,
  type CardInk,
  type Content,
  type Decoration,
  mm,
  type Node,
  node,
  overlay,
  PT_PER_MM,
  shift,
  stack,
  type Tag,
} from './items.ts';
export { type CardLayout, type CardSide, layoutCard, layoutCards } from './layout-cards.ts';
export type { ControlledCopy } from './page-foot.ts';
export type { PlacedBlock } from './paginate.ts';
export { isAlphanumeric, moduleMm, QUIET_MODULES, qrModules } from './qr-size.ts';
export { needsLayout } from './screen.ts';
export { stampCopy } from './stamp.ts';
export { datedAs } from './standing.ts';
