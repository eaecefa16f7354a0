/** Formulas as plain text: for readers that take no markup, and for whoever types the line into a calculator. */

import type { Expr, SymbolName } from './expr.ts';
import { figures, givenFigures } from './figures.ts';

/** `letters`: the formula. `numbers`: the same with the numbers put in. */
export type Mode = 'letters' | 'numbers';

const EXPONENT = { 2: '²', 3: '³' } as const;

/** `As`, `DKm`, `F_low`: one or two letters of a subscript follow at once, longer ones after a low line. */
export function printSymbol(name: SymbolName): string {
  if (name.sub === undefined) return name.letter;
  return name.sub.length > 2 ? `${name.letter}_${name.sub.replaceAll(' ', '')}` : `${name.letter}${name.sub}`;
}

/** A named number as printed among numbers. */
export function printValue(expr: Extract<Expr, { kind: 'quantity' }>): string {
  if (expr.printed === 'rounded') return figures(expr.value);
  return `${givenFigures(expr.value)}${expr.printed === 'degrees' ? '°' : ''}`;
}

/**
 * One line: `T × L / (L + E × cos(φ))`. Signs used: + − × / ( ) √( ) ² ³ cos( ) π °; products and quotients are worked
 * from the left.
 */
export function printExpr(expr: Expr, mode: Mode): string {
  switch (expr.kind) {
    case 'constant':
      return expr.text;
    case 'quantity':
      return mode === 'letters' ? printSymbol(expr.name) : printValue(expr);
    case 'sum':
      return expr.terms
        .map((t, i) => {
          const text = t.of.kind === 'sum' && t.sign === '−' ? fenced(t.of, mode) : printExpr(t.of, mode);
          return i === 0 && t.sign === '+' ? text : `${i === 0 ? '' : ' '}${t.sign} ${text}`;
        })
        .join('');
    case 'product':
      return expr.factors.map((f) => (f.kind === 'sum' ? fenced(f, mode) : printExpr(f, mode))).join(' × ');
    case 'fraction': {
      const over = expr.over.kind === 'sum' ? fenced(expr.over, mode) : printExpr(expr.over, mode);
      return `${over} / ${isAtom(expr.under) ? printExpr(expr.under, mode) : fenced(expr.under, mode)}`;
    }
    case 'root':
      return `√${fenced(expr.of, mode)}`;
    case 'power':
      return `${isAtom(expr.base) && expr.base.kind !== 'power' ? printExpr(expr.base, mode) : fenced(expr.base, mode)}${EXPONENT[expr.exponent]}`;
    case 'cosine':
      return `cos${fenced(expr.angle, mode)}`;
  }
}

function isAtom(expr: Expr): boolean {
  return ['constant', 'quantity', 'root', 'cosine', 'power'].includes(expr.kind);
}

function fenced(expr: Expr, mode: Mode): string {
  return `(${printExpr(expr, mode)})`;
}
