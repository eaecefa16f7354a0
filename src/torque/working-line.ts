/** One line of a joint's working: a formula, its value, and both as text. */

import { type Expr, evaluate, figures, printExpr, quantity, type SymbolName, symbolName } from './formula/index.ts';

/** In the order of reckoning. */
export const WORKING_SECTIONS = [
  'thread',
  'strength and preload asked for',
  'torque, short form',
  'torque, long form',
  'wrench setting',
  'preload at this torque',
  'stress while tightening',
] as const;

export type WorkingSection = (typeof WORKING_SECTIONS)[number];

export interface WorkingLine {
  readonly section: WorkingSection;
  readonly name: string;
  readonly symbol: SymbolName;
  /** The right-hand side. Lengths in mm, forces in kN, torques in N·m, stresses in MPa, so that mm times kN is N·m. */
  readonly formula: Expr;
  /** Of `formula`, at full precision, in `unit`. */
  readonly value: number;
  /** `kN`, `mm²`, `%`; empty for a bare number. */
  readonly unit: string;
  /** Number and unit as printed, joined by a no-break space. */
  readonly result: string;
  /** The right-hand side in letters, and with numbers rounded as printed: signs as of `printExpr`. */
  readonly text: { readonly formula: string; readonly withNumbers: string };
}

/** A line whose value is that of its formula. symbol: `F_low`. */
export function workingLine(
  section: WorkingSection,
  name: string,
  symbol: string,
  formula: Expr,
  unit = '',
): WorkingLine {
  const value = evaluate(formula);
  return {
    section,
    name,
    symbol: symbolName(symbol),
    formula,
    value,
    unit,
    result: unit === '' ? figures(value) : `${figures(value)}\u00a0${unit}`,
    text: { formula: printExpr(formula, 'letters'), withNumbers: printExpr(formula, 'numbers') },
  };
}

/** The lines found so far, and a way to reckon on with their values. */
export class Working {
  readonly lines: WorkingLine[] = [];
  private section: WorkingSection;

  constructor(section: WorkingSection) {
    this.section = section;
  }

  begin(section: WorkingSection): void {
    this.section = section;
  }

  /** Adds a line and returns its value under its symbol, for the lines that follow. */
  add(name: string, symbol: string, formula: Expr, unit = ''): Expr {
    const line = workingLine(this.section, name, symbol, formula, unit);
    this.lines.push(line);
    return quantity(symbol, line.value);
  }
}
