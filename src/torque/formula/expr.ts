/** A formula as a tree: evaluated, printed and drawn from one source, so that letters, numbers and result cannot part. */

/** `A` with subscript `s`. The subscript is a letter or a short word. */
export interface SymbolName {
  readonly letter: string;
  readonly sub?: string;
}

export interface Term {
  readonly sign: '+' | '−';
  readonly of: Expr;
}

/**
 * Immutable. `quantity` prints as its letter or as its value; `constant` prints as its text in both. A reckoned value is
 * rounded by `figures`, one that was given is printed in full, an angle with its degree sign.
 */
export type Expr =
  | { readonly kind: 'constant'; readonly value: number; readonly text: string }
  | {
      readonly kind: 'quantity';
      readonly name: SymbolName;
      readonly value: number;
      readonly printed: 'rounded' | 'as given' | 'degrees';
    }
  | { readonly kind: 'sum'; readonly terms: readonly Term[] }
  | { readonly kind: 'product'; readonly factors: readonly Expr[] }
  | { readonly kind: 'fraction'; readonly over: Expr; readonly under: Expr }
  | { readonly kind: 'root'; readonly of: Expr }
  | { readonly kind: 'power'; readonly base: Expr; readonly exponent: 2 | 3 }
  | { readonly kind: 'cosine'; readonly angle: Expr };

/** `sub` of a symbol is written after a low line: `A_s`, `F_low`. */
export function symbolName(text: string): SymbolName {
  const [letter = '', sub] = text.split('_');
  return sub === undefined ? { letter } : { letter, sub };
}

/** A number that is part of the formula; `text` is how it is printed, by default the number itself. */
export function constant(value: number, text: string = String(value)): Expr {
  return { kind: 'constant', value, text };
}

export const PI: Expr = constant(Math.PI, 'π');

/** A named number that was reckoned: `quantity('A_s', 156.67)`. */
export function quantity(name: string, value: number): Expr {
  return { kind: 'quantity', name: symbolName(name), value, printed: 'rounded' };
}

/** A named number that was given: a size, a torque, a factor. */
export function given(name: string, value: number): Expr {
  return { kind: 'quantity', name: symbolName(name), value, printed: 'as given' };
}

/** A named angle in degrees, given. */
export function degrees(name: string, value: number): Expr {
  return { kind: 'quantity', name: symbolName(name), value, printed: 'degrees' };
}

export function sum(...terms: readonly Expr[]): Expr {
  return { kind: 'sum', terms: terms.map((of) => ({ sign: '+', of })) };
}

export function difference(first: Expr, ...less: readonly Expr[]): Expr {
  return { kind: 'sum', terms: [{ sign: '+', of: first }, ...less.map((of): Term => ({ sign: '−', of }))] };
}

export function product(...factors: readonly Expr[]): Expr {
  return { kind: 'product', factors };
}

export function fraction(over: Expr, under: Expr): Expr {
  return { kind: 'fraction', over, under };
}

export function root(of: Expr): Expr {
  return { kind: 'root', of };
}

export function power(base: Expr, exponent: 2 | 3): Expr {
  return { kind: 'power', base, exponent };
}

export function cosine(angle: Expr): Expr {
  return { kind: 'cosine', angle };
}

/** Value of a tree at full precision, in the units of its quantities. Not finite where the arithmetic is not (x/0, root of -1). */
export function evaluate(expr: Expr): number {
  switch (expr.kind) {
    case 'constant':
    case 'quantity':
      return expr.value;
    case 'sum':
      return expr.terms.reduce((total, t) => (t.sign === '+' ? total + evaluate(t.of) : total - evaluate(t.of)), 0);
    case 'product':
      return expr.factors.reduce((total, f) => total * evaluate(f), 1);
    case 'fraction':
      return evaluate(expr.over) / evaluate(expr.under);
    case 'root':
      return Math.sqrt(evaluate(expr.of));
    case 'power':
      return evaluate(expr.base) ** expr.exponent;
    case 'cosine':
      return Math.cos((evaluate(expr.angle) * Math.PI) / 180);
  }
}
