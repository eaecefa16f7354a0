/** Formulas as trees: build, evaluate, print as text, hand to a painter as marks. Imports nothing. */
export {
  constant,
  cosine,
  degrees,
  difference,
  type Expr,
  evaluate,
  fraction,
  given,
  PI,
  power,
  product,
  quantity,
  root,
  type SymbolName,
  sum,
  symbolName,
} from './expr.ts';
export { figures, givenFigures } from './figures.ts';
export { type Mark, marksOf, row, symbolMark, type WordRole, word } from './marks.ts';
export { type Mode, printExpr, printSymbol } from './print.ts';
