/** Numbers of a column parted at the decimal point, so that the points stand under each other. */

export interface Parted {
  readonly whole: string;
  /** The point and what follows; empty for a whole number. */
  readonly rest: string;
}

/** `8.5` is `8` and `.5`; a fraction or a word stays whole. */
export function partAtPoint(text: string): Parted {
  const at = text.indexOf('.');
  return at === -1 ? { whole: text, rest: '' } : { whole: text.slice(0, at), rest: text.slice(at) };
}
