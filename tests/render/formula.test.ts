/** Formulas as MathML: well formed, complete, and safe whatever stands in them. */

import { describe, expect, test } from 'vitest';
import { lineMathml, symbolMathml } from '../../src/render/html/formula.ts';
import { constant, difference, fraction, power, product, quantity, root, sum } from '../../src/torque/formula/index.ts';
import { workingLine } from '../../src/torque/working-line.ts';
import { demo } from '../cards/demo.ts';

const lines = demo().shop.machines.flatMap((m) => m.joints.flatMap((j) => j.plan.result.working));

/** Elements opened and closed in order; the names met. Throws on markup that does not nest. */
function elementsOf(markup: string): string[] {
  const open: string[] = [];
  const names: string[] = [];
  for (const [, close, name = '', rest = ''] of markup.replaceAll('<wbr>', '').matchAll(/<(\/?)([a-z]+)([^<>]*)>/gu)) {
    if (close === '/') {
      if (open.pop() !== name) throw new Error(`${name} closed out of turn in ${markup}`);
    } else {
      open.push(name);
      names.push(name);
      if (/style|on[a-z]+=/u.test(rest.replace('displaystyle', ''))) throw new Error(`attribute ${rest}`);
    }
  }
  if (open.length > 0) throw new Error(`${open.join(' ')} left open`);
  return names;
}

const textOf = (markup: string) => markup.replace(/<[^>]+>/gu, '').replace(/\s/gu, '');

/** Elements that take a fixed number of children (MathML Core). */
const CHILDREN: Readonly<Record<string, number>> = { mfrac: 2, msub: 2, msup: 2, msubsup: 3 };

function childCounts(markup: string): void {
  const stack: { name: string; kids: number }[] = [];
  for (const [, close, name = ''] of markup.replaceAll('<wbr>', '').matchAll(/<(\/?)([a-z]+)[^<>]*>/gu)) {
    if (close === '/') {
      const done = stack.pop();
      const wanted = done && CHILDREN[done.name];
      if (wanted !== undefined) expect(done?.kids, `${name} in ${markup}`).toBe(wanted);
    } else {
      const parent = stack.at(-1);
      if (parent !== undefined) parent.kids++;
      stack.push({ name, kids: 0 });
    }
  }
}

describe('every formula of the demo', () => {
  test('is well formed, with the children that each element asks for', () => {
    expect(lines.length).toBeGreaterThan(800);
    for (const line of lines) {
      for (const mode of ['letters', 'numbers'] as const) {
        const markup = lineMathml(line, mode);
        expect(elementsOf(markup)[0]).toBe('math');
        childCounts(markup);
      }
    }
  });

  test('holds the numbers of the plain line, in their order', () => {
    const numbers = (text: string) => text.replace('π', '').match(/[\d.]+/gu) ?? [];
    for (const line of lines) {
      const exponents = { '²': '2', '³': '3' } as const;
      const plain = line.text.withNumbers.replace(/[²³]/gu, (c) => ` ${c === '²' ? exponents['²'] : exponents['³']}`);
      const spaced = lineMathml(line, 'numbers').replace(/<[^>]+>/gu, ' ');
      expect(numbers(spaced), line.name).toEqual(numbers(plain));
    }
  });
});

describe('a formula', () => {
  const a = quantity('a_1', 2);

  test('is built up of the elements that its parts ask for', () => {
    const line = workingLine('thread', 'x', 'x_y', root(fraction(sum(a, constant(1)), power(a, 2))), 'mm');
    const names = elementsOf(lineMathml(line, 'letters'));
    for (const name of ['msqrt', 'mfrac', 'msub', 'msubsup', 'mn', 'mo']) expect(names).toContain(name);
    expect(textOf(lineMathml(line, 'letters'))).toBe('xy=a1+1a12');
    expect(textOf(lineMathml(line, 'numbers'))).toBe('=2+122');
  });

  test('of three terms and more may be broken between them, each sign with its term', () => {
    const [b, c] = [quantity('b', 3), quantity('c', 4)];
    const three = lineMathml(workingLine('thread', 'x', 'x', sum(a, b, c)), 'letters').split('<wbr>');
    expect(three.map(textOf)).toEqual(['x=a1', '+b', '+c']);
    for (const piece of three) expect(elementsOf(piece)[0]).toBe('math');
    expect(lineMathml(workingLine('thread', 'x', 'x', sum(a, b)), 'letters')).not.toContain('<wbr>');
    const nested = difference(a, b, sum(a, c));
    expect(textOf(lineMathml(workingLine('thread', 'x', 'x', nested), 'letters'))).toBe('x=a1−b−(a1+c)');
  });

  test('cannot bring markup of its own', () => {
    const line = workingLine('thread', 'x', '<b>_"&', product(quantity('<i>_<u>', 2), constant(3, '</math>')), '');
    const markup = lineMathml(line, 'letters');
    expect(elementsOf(markup)).not.toContain('b');
    expect(markup).toContain('&lt;b&gt;');
    expect(markup.match(/<\/math>/gu)?.length).toBe(1);
    expect(symbolMathml(line.symbol)).toContain('&quot;&amp;');
  });
});
