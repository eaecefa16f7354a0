/** Units: author's text in, quantities with their SI value out. Imports nothing of the project. */
export { type Amount, packsFor, sumAmounts, timesAmount } from './amounts.ts';
export { convert, neededDecimals, quantity, roundToStep, valueIn } from './convert.ts';
export { formatDecimal, formatLimit, formatNumber, formatQuantity, NO_BREAK_SPACE } from './format.ts';
export { parseLimit, parseQuantity } from './parse.ts';
export type {
  Angle,
  Area,
  Dimension,
  Force,
  Length,
  Limit,
  Mass,
  Parsed,
  Quantity,
  Ratio,
  Stress,
  Temperature,
  Time,
  Torque,
  Volume,
} from './quantity.ts';
export { MEASURED } from './quantity.ts';
export { joinUnits } from './text.ts';
export { findUnit, UNITS, type Unit, unitSymbols } from './unit-table.ts';
