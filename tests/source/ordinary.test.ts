/** The short way to a tree against the `yaml` package: the same trees, and nothing taken that the package finds fault with. */

import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { isDeepStrictEqual } from 'node:util';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { collector } from '../../src/diagnostics/index.ts';
import { CATALOGUE } from '../../src/rules/index.ts';
import { coreScalar } from '../../src/source/core-scalar.ts';
import { readOrdinary } from '../../src/source/ordinary.ts';
import { parseFully } from '../../src/source/yaml.ts';
import { FULL_SHOP } from '../fixtures/full-joint.ts';
import { MINI_SHOP } from '../fixtures/mini-shop.ts';
import { YAML_KINDS } from './yaml-kinds.ts';

const CONTENT = path.resolve(import.meta.dirname, '..', '..', 'content');
const DEMO = readdirSync(CONTENT, { recursive: true, encoding: 'utf8' })
  .filter((name) => name.endsWith('.yaml'))
  .sort()
  .map((name) => readFileSync(path.join(CONTENT, name), 'utf8'));
const SMALL = [...Object.values(MINI_SHOP), ...Object.values(FULL_SHOP), ...Object.values(YAML_KINDS)];

/** True when the short way was taken. Throws when it gives anything but what the package gives without a report. */
function compare(text: string): boolean {
  const source = { file: 'shop/a.yaml', relative: 'a.yaml', text };
  const short = readOrdinary(source);
  if (short === undefined) return false;
  const { report, list } = collector(CATALOGUE);
  const full = parseFully(source, report);
  if (list().length > 0 || !isDeepStrictEqual(short, full)) {
    expect({ text, faults: list(), tree: short }).toEqual({ text, faults: [], tree: full });
    throw new Error(`trees differ for ${JSON.stringify(text)}`);
  }
  return true;
}

test('every file of the demo takes the short way and gives the tree of the package', () => {
  expect(DEMO.length).toBeGreaterThan(20);
  expect(DEMO.filter((text) => !compare(text))).toEqual([]);
  expect(DEMO.filter((text) => !compare(text.replaceAll('\n', '\r\n')))).toEqual([]);
  expect(Object.values(MINI_SHOP).filter((text) => !compare(text))).toEqual([]);
});

test('each form of YAML gives the tree of the package, or is left to it', () => {
  for (const text of Object.values(YAML_KINDS)) {
    compare(text);
    compare(text.replaceAll('\n', '\r\n'));
    // Each form by itself, so that one that is left to the package does not hide the others.
    const lines = text.split('\n');
    for (let from = 0; from < lines.length; from++)
      for (let to = from + 1; to <= lines.length; to++) compare(lines.slice(from, to).join('\n'));
  }
});

test('unquoted scalars mean what the core schema says', () => {
  const parts = [
    '',
    '+',
    '-',
    '.',
    '0',
    '12',
    'e',
    'E',
    '0x',
    '0o',
    'f',
    '7',
    'nan',
    'NaN',
    'inf',
    'INF',
    'true',
    'Null',
    '~',
  ];
  fc.assert(
    fc.property(fc.array(fc.constantFrom(...parts), { minLength: 1, maxLength: 4 }), (chosen) => {
      const text = chosen.join('');
      const { report } = collector(CATALOGUE);
      // A tag-free list of one: the package's own resolution of the same text.
      const node = parseFully({ file: 'a', relative: 'a', text: `a: ${text}` }, report);
      const value = node?.kind === 'map' ? node.entries[0]?.value : undefined;
      if (value?.kind === 'scalar' && text !== '') expect(coreScalar(text)).toBe(value.value);
    }),
    { numRuns: 2000 },
  );
});

const SCRAPS = [
  ...[
    '',
    ' ',
    '  ',
    '    ',
    '\n',
    '\n\n',
    '\n  ',
    '\n      ',
    '\r\n',
    '\r',
    '\t',
    ':',
    ': ',
    ' :',
    '- ',
    '-',
    '#',
    ' # x',
    '\n# x',
  ],
  ...[
    '\n  # x',
    '\n      # x\n',
    '"',
    "'",
    "''",
    '\\',
    '\\"',
    '{',
    '}',
    '[',
    ']',
    ', ',
    ',',
    '{}',
    '[]',
    '{a: b}',
    '[a, b]',
  ],
  ...[
    '&a ',
    '*a',
    '!!str ',
    '|',
    '>',
    '>-',
    '|-\n',
    '|2',
    '|+',
    '---',
    '\n---\n',
    '...',
    '%',
    '@',
    '`',
    '? ',
    '?',
    '<<: ',
  ],
  ...[
    'null',
    '~',
    'true',
    '0',
    '-1',
    '1e3',
    '.5',
    '0x1',
    '.inf',
    '\u00a0',
    '\u0085',
    '\u2028',
    '\ufeff',
    '\u0000',
    '\ud800',
    'é',
    '漢',
  ],
  ...['a: b', '\na: b', '\n- a', 'a:\n', 'x', '=', '- - '],
];

/** What leaves most files well formed, put at a line's beginning or end. */
const MILD = [
  '',
  ' ',
  '  ',
  '   ',
  '\n',
  '  \n',
  '# x\n',
  '  # x\n',
  '    # x\n',
  '      # x\n',
  ' # x',
  'y',
  '\u00a0',
  '\n  z',
];

const share = fc.double({ min: 0, max: 1, noNaN: true, maxExcluded: true });
const edit = fc.oneof(
  fc.record({
    at: share,
    line: fc.constantFrom('begin', 'end', undefined),
    cut: fc.oneof(fc.constant(0), fc.nat({ max: 12 }), fc.nat({ max: 200 })),
    scrap: fc.constantFrom(...SCRAPS),
  }),
  fc.record({
    at: share,
    line: fc.constantFrom('begin', 'end'),
    cut: fc.constantFrom(0, 0, 0, 1, 2, 4),
    scrap: fc.constantFrom(...MILD),
  }),
);
type Edit = Readonly<{ at: number; line: string | undefined; cut: number; scrap: string }>;

function edited(text: string, edits: readonly Edit[]): string {
  return edits.reduce((t, { at, line, cut, scrap }) => {
    let from = Math.floor(at * t.length);
    if (line === 'begin') from = t.lastIndexOf('\n', from) + 1;
    else if (line === 'end') from = Math.max(0, t.indexOf('\n', from));
    return t.slice(0, from) + scrap + t.slice(from + cut);
  }, text);
}

/** Times the usual number, for a longer search. */
const TIMES = Number(process.env['FETTLEBOOK_EDITS'] ?? 300) / 300;

test('4000 random edits of small files', () => {
  let short = 0;
  fc.assert(
    fc.property(
      fc.constantFrom(...SMALL),
      fc.array(edit, { minLength: 1, maxLength: 3 }),
      fc.boolean(),
      (text, edits, crlf) => {
        const changed = edited(text, edits);
        if (compare(crlf ? changed.replaceAll('\n', '\r\n') : changed)) short += 1;
      },
    ),
    { numRuns: Math.round(4000 * TIMES) },
  );
  // The comparison is worth something only while most edits are still read the short way.
  expect(short).toBeGreaterThan(1000 * TIMES);
});

test('300 random edits of the demo', () => {
  fc.assert(
    fc.property(fc.constantFrom(...DEMO), fc.array(edit, { minLength: 1, maxLength: 2 }), (text, edits) => {
      compare(edited(text, edits));
    }),
    { numRuns: Math.round(300 * TIMES) },
  );
});
