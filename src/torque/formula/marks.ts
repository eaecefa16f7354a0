/** A formula in two dimensions, before it is drawn: rows of words with fractions, roots, subscripts and exponents. */

import type { Expr, SymbolName } from './expr.ts';
import { type Mode, printValue } from './print.ts';

export type WordRole = 'number' | 'letter' | 'word' | 'sign' | 'fence';

/** What a painter draws. A `gap` stands between factors in letters, where no sign is written. */
export type Mark =
  | { readonly kind: 'word'; readonly text: string; readonly role: WordRole }
  | { readonly kind: 'gap' }
  | { readonly kind: 'row'; readonly parts: readonly Mark[] }
  | { readonly kind: 'sub'; readonly base: Mark; readonly text: string }
  | { readonly kind: 'super'; readonly base: Mark; readonly text: string }
  | { readonly kind: 'fraction'; readonly over: Mark; readonly under: Mark }
  | { readonly kind: 'root'; readonly of: Mark };

export function word(text: string, role: WordRole): Mark {
  return { kind: 'word', text, role };
}

export function row(...parts: readonly Mark[]): Mark {
  return { kind: 'row', parts };
}

export function symbolMark(name: SymbolName): Mark {
  const letter = word(name.letter, 'letter');
  return name.sub === undefined ? letter : { kind: 'sub', base: letter, text: name.sub };
}

/**
 * The tree as marks; parentheses only where the drawing needs them (a fraction bar and a root hold their own parts).
 * flat: sets fractions of a product over a single number on one line with a solidus, to save height on paper.
 */
export function marksOf(expr: Expr, mode: Mode, flat = false): Mark {
  const of = (part: Expr): Mark => marksOf(part, mode, flat);
  const inFence = (part: Expr): Mark => row(word('(', 'fence'), of(part), word(')', 'fence'));
  switch (expr.kind) {
    case 'constant':
      return word(expr.text, expr.text === 'π' ? 'letter' : 'number');
    case 'quantity':
      return mode === 'letters' ? symbolMark(expr.name) : word(printValue(expr), 'number');
    case 'sum':
      return row(
        ...expr.terms.flatMap((t, i): Mark[] => {
          const part = t.of.kind === 'sum' && t.sign === '−' ? inFence(t.of) : of(t.of);
          return i === 0 && t.sign === '+' ? [part] : [word(t.sign, 'sign'), part];
        }),
      );
    case 'product':
      return row(
        ...expr.factors.flatMap((f, i): Mark[] => {
          // Only the last factor may be a fraction on one line: what follows it would seem to stand under it.
          const last = i === expr.factors.length - 1;
          const part = f.kind === 'sum' ? inFence(f) : marksOf(f, mode, flat && last);
          return i === 0 ? [part] : [mode === 'letters' ? { kind: 'gap' } : word('×', 'sign'), part];
        }),
      );
    case 'fraction':
      return flat && isLow(expr.over) && isAtom(expr.under)
        ? row(of(expr.over), word('/', 'fence'), of(expr.under))
        : { kind: 'fraction', over: marksOf(expr.over, mode), under: marksOf(expr.under, mode) };
    case 'root':
      return { kind: 'root', of: of(expr.of) };
    case 'power': {
      const base = isAtom(expr.base);
      return {
        kind: 'super',
        base: base ? of(expr.base) : inFence(expr.base),
        text: String(expr.exponent),
      };
    }
    case 'cosine':
      return row(word('cos', 'word'), { kind: 'gap' }, of(expr.angle));
  }
}

function isAtom(expr: Expr): boolean {
  return expr.kind === 'constant' || expr.kind === 'quantity';
}

/** What may stand before a solidus: one number, a root, or factors of which none is a fraction. */
function isLow(expr: Expr): boolean {
  if (expr.kind === 'product') return expr.factors.every((f) => f.kind !== 'fraction');
  return expr.kind !== 'fraction' && expr.kind !== 'sum';
}
