/** Markdown in text fields: runs, references and what is refused. */

import fc from 'fast-check';
import { expect, test } from 'vitest';
import { parseMarkdown } from '../../src/source/index.ts';
import { parseMarked } from '../../src/source/markdown.ts';

const runs = (text: string) => parseMarkdown(text).paragraphs.flatMap((p) => p.runs);

test('an autolink and a link with words become references', () => {
  expect(runs('Loosen <joint:end-cover> with [the big one](tool:wrench-2).')).toEqual([
    { text: 'Loosen ' },
    { text: 'joint:end-cover', scheme: 'joint', target: 'end-cover', bare: true },
    { text: ' with ' },
    { text: 'the big one', scheme: 'tool', target: 'wrench-2' },
    { text: '.' },
  ]);
});

test('HTML and scripts are text', () => {
  expect(runs('Press <b>hard</b> <script>alert(1)</script> & go')).toEqual([
    { text: 'Press <b>hard</b> <script>alert(1)</script> & go' },
  ]);
});

test('a javascript address is a reference of no kind, never a link', () => {
  expect(runs('[x](javascript:alert(1))')[0]).toMatchObject({ scheme: 'javascript', target: 'alert(1)' });
});

test('strong, code, line folding and lists', () => {
  expect(runs('a **b**\nc `d`')).toEqual([
    { text: 'a ' },
    { text: 'b', strong: true },
    { text: ' c ' },
    { text: 'd', code: true },
  ]);
  expect(parseMarkdown('One:\n\n- a\n- b').paragraphs.map((p) => p.kind)).toEqual(['paragraph', 'item', 'item']);
});

test('constructs that a card cannot show are named', () => {
  expect(parseMarkdown('# Head').refused).toEqual(['a heading']);
  expect(parseMarkdown('![x](y.png)').refused).toEqual(['a picture']);
  expect(parseMarkdown('> quoted').refused).toEqual(['a block quotation']);
});

test('text without marks takes the short way and gives the same', () => {
  expect(parseMarkdown('Wipe both faces.')).toEqual({
    paragraphs: [{ kind: 'paragraph', runs: [{ text: 'Wipe both faces.' }] }],
    refused: [],
  });
  expect(runs('5. Wipe')).toEqual([{ text: 'Wipe' }]);
});

test('the short way gives what the long way gives, whatever is written', () => {
  const parts = [
    ...[
      'Loosen ',
      'the face',
      '. ',
      ' ',
      '  ',
      '24 mm',
      '5. ',
      '- ',
      '-',
      '+',
      '# ',
      '#',
      '=',
      '~',
      '\u00a0',
      '\n',
      '\n\n',
      '\t',
      '\0',
    ],
    ...[
      '<tool:socket-24>',
      '<part:a>',
      '<PART:A>',
      '<step:9>',
      '<a:b>',
      '<x@y.z>',
      '<tool:a b>',
      '<tool:>',
      '<tool:a_b>',
      '<',
      '>',
    ],
    ...[
      '[a](tool:b)',
      '[a]',
      '![a](b)',
      '**',
      '*',
      '_',
      '`',
      '\\',
      '&amp;',
      '&',
      '!',
      '"',
      "'",
      '<b>',
      'https://a.example',
      'é',
      '漢',
    ],
  ];
  let short = 0;
  fc.assert(
    fc.property(fc.array(fc.constantFrom(...parts), { maxLength: 7 }), (chosen) => {
      const text = chosen.join('');
      const long = parseMarked(text);
      expect(parseMarkdown(text)).toEqual(long);
      if (!/[[\]*_`\\&!\n\t\0]/.test(text)) short += 1;
    }),
    { numRuns: 5000 },
  );
  expect(short).toBeGreaterThan(300);
});

test('equal references side by side, and white space at the ends', () => {
  for (const text of [
    '',
    ' ',
    'a ',
    ' a',
    '\u00a0a',
    'a\u00a0',
    '<tool:a><tool:a>',
    '<tool:a>',
    '<tool:a> ',
    '1) a',
    '12.5 mm',
    '=== ',
    '~~~',
  ])
    expect(parseMarkdown(text)).toEqual(parseMarked(text));
});
