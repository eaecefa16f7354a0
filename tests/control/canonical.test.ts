/** Canonical JSON and its digests against published examples, and that only what a procedure says reaches its snapshot. */

import { describe, expect, test } from 'vitest';
import { canonical, sha256 } from '../../src/control/canonical.ts';
import { ENGINE } from '../../src/control/engine.ts';
import { freeze } from '../../src/control/snapshot.ts';
import { type Changes, compileMini } from '../fixtures/mini-shop.ts';

describe('RFC 8785 (memory)', () => {
  test('section 3.2.2 and 3.2.3: literals, numbers, strings, and keys sorted by UTF-16 units', () => {
    const input = String.raw`{
      "numbers": [333333333.33333329, 1E30, 4.50, 2e-3, 0.000000000000000000000000001],
      "string": "\u20ac$\u000F\u000aA'\u0042\u0022\u005c\\\"\/",
      "literals": [null, true, false]
    }`;
    expect(canonical(JSON.parse(input))).toBe(
      String.raw`{"literals":[null,true,false],"numbers":[333333333.3333333,1e+30,4.5,0.002,1e-27],"string":"€$\u000f\nA'B\"\\\\\"/"}`,
    );
  });

  test('section 3.2.3: the order of keys', () => {
    const input = String.raw`{
      "\u20ac": "Euro Sign", "\r": "Carriage Return", "\ufb33": "Hebrew Letter Dalet With Dagesh",
      "1": "One", "\ud83d\ude00": "Emoji: Grinning Face", "\u0080": "Control",
      "\u00f6": "Latin Small Letter O With Diaeresis"
    }`;
    const order = [...canonical(JSON.parse(input)).matchAll(/:"([^"]+)"/g)].map((m) => m[1]);
    expect(order).toEqual([
      'Carriage Return',
      'One',
      'Control',
      'Latin Small Letter O With Diaeresis',
      'Euro Sign',
      'Emoji: Grinning Face',
      'Hebrew Letter Dalet With Dagesh',
    ]);
  });

  test.each([
    ['0000000000000000', '0'],
    ['8000000000000000', '0'],
    ['0000000000000001', '5e-324'],
    ['8000000000000001', '-5e-324'],
    ['7fefffffffffffff', '1.7976931348623157e+308'],
    ['ffefffffffffffff', '-1.7976931348623157e+308'],
    ['4340000000000000', '9007199254740992'],
    ['c340000000000000', '-9007199254740992'],
    ['4430000000000000', '295147905179352830000'],
    ['44b52d02c7e14af5', '9.999999999999997e+22'],
    ['44b52d02c7e14af6', '1e+23'],
    ['44b52d02c7e14af7', '1.0000000000000001e+23'],
    ['444b1ae4d6e2ef4e', '999999999999999700000'],
    ['444b1ae4d6e2ef4f', '999999999999999900000'],
    ['444b1ae4d6e2ef50', '1e+21'],
    ['3eb0c6f7a0b5ed8c', '9.999999999999997e-7'],
    ['3eb0c6f7a0b5ed8d', '0.000001'],
    ['41b3de4355555553', '333333333.3333332'],
    ['41b3de4355555554', '333333333.33333325'],
    ['41b3de4355555555', '333333333.3333333'],
    ['41b3de4355555556', '333333333.3333334'],
    ['41b3de4355555557', '333333333.33333343'],
    ['becbf647612f3696', '-0.0000033333333333333333'],
    ['43143ff3c1cb0959', '1424953923781206.2'],
  ])('appendix B: the number %s is %s', (bits, text) => {
    expect(canonical(Buffer.from(bits, 'hex').readDoubleBE())).toBe(text);
  });

  test.each([
    ['NaN', Number.NaN],
    ['infinity', Number.POSITIVE_INFINITY],
    ['half a surrogate pair', 'a\ud800'],
    ['nothing', undefined],
  ])('%s has no canonical form', (_, value) => {
    expect(() => canonical(value)).toThrow();
    if (value !== undefined) expect(() => canonical({ value })).toThrow();
  });
});

test('FIPS 180-4: `abc`, nothing, and the message of two blocks', () => {
  expect(sha256('abc')).toBe('ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad');
  expect(sha256('')).toBe('e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855');
  expect(sha256(new TextEncoder().encode('abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq'))).toBe(
    '248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1',
  );
});

describe('the snapshot', () => {
  const frozen = (changes: Changes = {}): string => {
    const { resolved, checked } = compileMini(changes);
    const [document] = resolved.documents;
    if (document === undefined || checked === undefined) throw new Error('the shop has errors');
    return freeze(resolved, document, ENGINE);
  };
  const plain = frozen();
  const LINE = '      - do: Wipe both faces with a <consumable:wipe>.\n';
  const at = (file: string, from: string, to: string): Changes => ({
    [file]: (text: string) => text.replace(from, to),
  });

  test.each<[string, Changes]>([
    ['a comment', at('procedures/mw-1.yaml', LINE, `      # wipe well\n${LINE}`)],
    ['blank lines and blanks', at('procedures/mw-1.yaml', LINE, `\n\n${LINE.replace('do: ', 'do:   ')}\n`)],
    [
      'a folded text',
      at(
        'procedures/mw-1.yaml',
        LINE,
        '      - do: >-\n          Wipe both faces\n          with a <consumable:wipe>.\n',
      ),
    ],
    ['quotes', at('procedures/mw-1.yaml', 'title: Renew the cover gasket', 'title: "Renew the cover gasket"')],
    [
      'keys in another order',
      at('procedures/mw-1.yaml', 'owner: ben\nreview: 24 months\n', 'review: 24 months\nowner: ben\n'),
    ],
    [
      'a register in another order of keys',
      at('tools.yaml', '{ name: 24 mm socket, kind: socket,', '{ kind: socket, name: 24 mm socket,'),
    ],
    [
      'a joint as a map on other lines',
      at(
        'machines/pump.yaml',
        'source: { document: Pump manual, edition: "3", place: page 12 }',
        'source:\n      document: Pump manual\n      edition: "3"\n      place: page 12',
      ),
    ],
    ['a part that the procedure does not use', at('machines/pump.yaml', 'parts:\n', 'parts:\n  # none\n')],
  ])('%s changes no byte of it', (_, changes) => {
    expect(frozen(changes)).toBe(plain);
  });

  test.each<[string, Changes]>([
    ['a torque', at('machines/pump.yaml', 'torque: 160 N·m', 'torque: 158 N·m')],
    ['the name of a tool', at('tools.yaml', '24 mm socket', '24 mm impact socket')],
    ['a word of a step', at('procedures/mw-1.yaml', 'Wipe both faces', 'Wipe the two faces')],
    ['a name in the register of people', at('people.yaml', 'Ada Fern', 'Ada Ferne')],
  ])('%s does', (_, changes) => {
    expect(frozen(changes)).not.toBe(plain);
  });

  test('is one line of canonical JSON, and holds no place in a file and no folder', () => {
    expect(plain.split('\n').length).toBe(2);
    expect(`${canonical(JSON.parse(plain))}\n`).toBe(plain);
    expect(plain).not.toMatch(/"(range|ranges|keyRange)"/);
    expect(plain).not.toMatch(/shop\/(shop|people|procedures)/);
  });
});
