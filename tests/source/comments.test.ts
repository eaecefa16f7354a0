/** Real comments of YAML and nothing else: never a `#` within a text, whatever its quotes. */

import fc from 'fast-check';
import { expect, test } from 'vitest';
import { collector } from '../../src/diagnostics/index.ts';
import { CATALOGUE } from '../../src/rules/index.ts';
import { commentsOf } from '../../src/source/index.ts';
import { parseFully } from '../../src/source/yaml.ts';
import { YAML_KINDS } from './yaml-kinds.ts';

const comments = (text: string) => commentsOf({ file: 'shop/a.yaml', relative: 'a.yaml', text });
const shown = (text: string): string[] => comments(text).map((c) => `${c.own ? 'own' : 'behind'} ${c.text}`);

test('behind a value, on a line of its own, in lists, maps and brackets', () => {
  expect(
    shown(`# accept TOP: first
a: 1 # accept A: x
b:   # accept B: x
  # accept C: own
  - one # accept D: x
  - { k: v, # accept E: x
      l: w } #accept F: x
  # ACCEPT G: x
c: |- # accept H: behind the header
  text
  # accept NO: block text
 # accept I: left of the block
d: [a,
  # accept J: own
  b]
# accept K: last`),
  ).toEqual([
    'own # accept TOP: first',
    'behind # accept A: x',
    'behind # accept B: x',
    'own # accept C: own',
    'behind # accept D: x',
    'behind # accept E: x',
    'behind #accept F: x',
    'own # ACCEPT G: x',
    'behind # accept H: behind the header',
    'own # accept I: left of the block',
    'own # accept J: own',
    'own # accept K: last',
  ]);
});

test('never within a text', () => {
  expect(
    shown(`a: "x # accept A: no"
b: 'x # accept B: no'
c: x# accept C: no
d: >-
  text
  # accept D: no
e: "over lines
  # accept E: no
  end"
f: 'over lines

  # accept F: no'
"# accept G": no
g: ["# accept H: no", 'y # accept I: no', z#accept]
h: |2
   # accept J: no
# accept REAL: yes
`),
  ).toEqual(['own # accept REAL: yes']);
});

test('places count in CRLF files, behind a byte order mark and behind signs of two code units', () => {
  for (const text of [
    'a: 1 # accept A: x\r\n  # accept B: x\r\nb: 2\r\n',
    '\ufeffa: 🧽 # accept A: x\n # accept B: x\nb: 2\n',
  ]) {
    const found = comments(text);
    expect(found.map((c) => [c.text, c.own])).toEqual([
      ['# accept A: x', false],
      ['# accept B: x', true],
    ]);
    for (const c of found) expect(text.slice(c.range.start, c.range.end)).toBe(c.text);
  }
});

test('a file without the word gives no comments', () => {
  expect(comments('a: 1 # a comment\n# acceptable\n')).toEqual([]);
  expect(comments('')).toEqual([]);
});

/** Values that hold the word in every kind of text; each may have a comment behind it or not. */
const VALUES = [
  { text: 'x#accept', open: true },
  { text: '"# accept N: no"', open: true },
  { text: "'it''s # accept N: no'", open: true },
  { text: '"\\"# accept N: no\\\\"', open: true },
  { text: '[a, "# accept N: no", {b: c}]', open: true },
  { text: '{ k: "]# accept N: no" }', open: true },
  { text: '"over\n    # accept N: no"', open: true },
  { text: '|\n    # accept N: no\n    text', open: false },
  { text: '>-\n    text\n\n    # accept N: no', open: false },
  { text: 'plain\n    going # on'.replace(' # on', '#on'), open: true },
];

test('texts with known comments, in any order', () => {
  const piece = fc.record({
    value: fc.constantFrom(...VALUES),
    behind: fc.constantFrom(undefined, ' # accept', '  # note', ' #'),
    own: fc.array(fc.constantFrom('# accept', '  # accept', '      #accept', '#'), { maxLength: 2 }),
    inList: fc.boolean(),
  });
  fc.assert(
    fc.property(fc.array(piece, { minLength: 1, maxLength: 6 }), fc.boolean(), (pieces, crlf) => {
      let text = '# accept START: x\n';
      const expected = [{ text: '# accept START: x', own: true }];
      pieces.forEach(({ value, behind, own, inList }, i) => {
        text += inList ? `k${i}:\n  - ${value.text}` : `k${i}: ${value.text}`;
        if (behind !== undefined && value.open) {
          text += `${behind} C${i}: x`;
          expected.push({ text: `${behind} C${i}: x`.trim(), own: false });
        }
        text += '\n';
        own.forEach((o, n) => {
          // Within the column of block text it would be text.
          const line = value.open ? `${o} O${i}.${n}: x` : `${o.trim()} O${i}.${n}: x`;
          text += `${line}\n`;
          expected.push({ text: line.trim(), own: true });
        });
      });
      const source = crlf ? text.replaceAll('\n', '\r\n') : text;
      const { report, list } = collector(CATALOGUE);
      parseFully({ file: 'a', relative: 'a', text: source }, report);
      expect(list()).toEqual([]);
      expect(comments(source).map((c) => ({ text: c.text, own: c.own }))).toEqual(expected);
    }),
    { numRuns: 800 },
  );
});

test('any text: comments lie within it, in order, begin with their sign, and end with their line', () => {
  const scraps = [
    '# accept A: x',
    ' # accept B',
    '\n',
    '\r\n',
    '"',
    "'",
    '|\n',
    '{',
    ']',
    ': ',
    '- ',
    '\u0002',
    '\u001f',
    '\u0018',
    '\ufeff',
    '%',
    '---\n',
  ];
  fc.assert(
    fc.property(
      fc.constantFrom(...Object.values(YAML_KINDS)),
      fc.array(fc.tuple(fc.nat(900), fc.constantFrom(...scraps)), { maxLength: 6 }),
      (kind, edits) => {
        const text = edits.reduce((t, [at, scrap]) => t.slice(0, at) + scrap + t.slice(at), kind);
        let last = 0;
        for (const c of comments(text)) {
          expect(c.range.start).toBeGreaterThanOrEqual(last);
          expect(text.slice(c.range.start, c.range.end)).toBe(c.text);
          expect(c.text).toMatch(/^#[^\n]*$/);
          expect(text.slice(c.range.end)).toMatch(/^(\r?\n|$)/);
          last = c.range.end;
        }
      },
    ),
    { numRuns: 1000 },
  );
});
