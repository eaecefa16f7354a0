/** Formulas as MathML: fractions, roots, subscripts; no style attributes, every text escaped. */

import type { SymbolName } from '../../torque/formula/index.ts';
import { type Mark, type Mode, marksOf, row, symbolMark, word } from '../../torque/formula/index.ts';
import type { WorkingLine } from '../../torque/working.ts';
import { escapeHtml } from './escape.ts';

/** A letter alone, for a table of what the letters mean. */
export function symbolMathml(symbol: SymbolName): string {
  return mathElement(markHtml(symbolMark(symbol)));
}

/**
 * One side of a line of a worksheet. `letters`: `symbol = formula`. `numbers`: `= the same with its numbers`. A sum of
 * three terms and more comes as several elements with places to break between them, since no browser breaks a formula. A
 * reader without MathML gets the letters and numbers in order.
 */
export function lineMathml(line: WorkingLine, mode: Mode): string {
  const equals = word('=', 'sign');
  const head = mode === 'letters' ? [symbolMark(line.symbol), equals] : [equals];
  const { formula } = line;
  if (formula.kind !== 'sum' || formula.terms.length < 3 || formula.terms.some((t) => t.of.kind === 'sum')) {
    return mathElement(markHtml(row(...head, marksOf(formula, mode))));
  }
  return formula.terms
    .map((term, i) => {
      const part = marksOf({ kind: 'sum', terms: i === 0 ? [term] : [{ sign: '+', of: term.of }] }, mode);
      return mathElement(markHtml(row(...(i === 0 ? head : [word(term.sign, 'sign')]), part)));
    })
    .join('<wbr>');
}

function mathElement(inside: string): string {
  return `<math displaystyle="true">${inside}</math>`;
}

function markHtml(mark: Mark): string {
  switch (mark.kind) {
    case 'word':
      return wordHtml(mark);
    case 'gap':
      return '<mspace width="0.2em"></mspace>';
    case 'row':
      return `<mrow>${mark.parts.map(markHtml).join('')}</mrow>`;
    case 'sub':
      return `<msub>${markHtml(mark.base)}${scriptHtml(mark.text)}</msub>`;
    case 'super':
      // The exponent stands over the subscript.
      return mark.base.kind === 'sub'
        ? `<msubsup>${markHtml(mark.base.base)}${scriptHtml(mark.base.text)}${scriptHtml(mark.text)}</msubsup>`
        : `<msup>${markHtml(mark.base)}${scriptHtml(mark.text)}</msup>`;
    case 'fraction':
      return `<mfrac>${markHtml(mark.over)}${markHtml(mark.under)}</mfrac>`;
    case 'root':
      return `<msqrt>${markHtml(mark.of)}</msqrt>`;
  }
}

function wordHtml({ text, role }: Extract<Mark, { kind: 'word' }>): string {
  const safe = escapeHtml(text);
  switch (role) {
    case 'number':
      return `<mn>${safe}</mn>`;
    case 'letter':
      // Upright, as on the paper: the faces of the shop have no slanted cut.
      return `<mi mathvariant="normal">${safe}</mi>`;
    case 'word':
      return `<mtext>${safe}</mtext>`;
    case 'sign':
      // At the beginning of a line too it stands between two parts, and wants room on both sides.
      return `<mo form="infix">${safe}</mo>`;
    case 'fence':
      return `<mo stretchy="false">${safe}</mo>`;
  }
}

/** Subscript or exponent: a number, or a letter or words. */
function scriptHtml(text: string): string {
  const safe = escapeHtml(text);
  return /^\d+$/u.test(text) ? `<mn>${safe}</mn>` : `<mtext>${safe}</mtext>`;
}
