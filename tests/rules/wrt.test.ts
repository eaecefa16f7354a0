/** Places, languages, variants and thresholds of the checks of writing. */

import { describe, expect, test } from 'vitest';
import { runExample } from '../../src/pipeline/index.ts';
import { type Field, findingsOf } from './wrt-sentences.ts';

const FILE = 'procedures/mw-1.yaml';
const WIPE = '      - do: Wipe both faces with a <consumable:wipe>.\n';

/** Code and words of each finding of the family after this change of the wiping step. */
function said(to: string): readonly string[] {
  const { diagnostics, textOf } = runExample([{ file: FILE, from: WIPE, to }]);
  return diagnostics
    .filter((d) => d.code.startsWith('WRT'))
    .map((d) => `${d.code} ${(textOf(d.range.file) ?? '').slice(d.range.start, d.range.end)}`);
}

describe('the place is the words at fault', () => {
  test.each([
    ['bare', '      - do: Wipe both faces properly with a <consumable:wipe>.\n', 'properly'],
    ['in double quotes', '      - do: "Wipe both faces properly with a <consumable:wipe>."\n', 'properly'],
    ['in single quotes', "      - do: 'Wipe both faces properly with a <consumable:wipe>.'\n", 'properly'],
    ['in strong type', '      - do: Wipe both faces **properly** with a <consumable:wipe>.\n', 'properly'],
    ['behind a reference', '      - do: Wipe [all properly](consumable:wipe) and properly.\n', 'properly'],
  ])('%s', (_, to, words) => {
    expect(said(to)).toEqual([`WRT003 ${words}`]);
  });

  test('behind words of a reference that read the same', () => {
    const to = '      - do: Wipe with [it properly](consumable:wipe) and dry properly.\n';
    const { diagnostics, textOf } = runExample([{ file: FILE, from: WIPE, to }]);
    const [found] = diagnostics.filter((d) => d.code === 'WRT003');
    const line = textOf(found?.range.file ?? '')
      ?.slice(0, found?.range.start)
      .split('\n')
      .at(-1);
    expect(line).toBe('      - do: Wipe with [it properly](consumable:wipe) and dry ');
  });

  test('the second of two', () => {
    expect(said('      - do: Wipe the <consumable:wipe> properly, properly.\n')).toEqual([
      'WRT003 properly',
      'WRT003 properly',
    ]);
  });

  test.each([
    ['folded', '>-\n          Wipe both faces\n          properly with a <consumable:wipe>.'],
    ['escaped', '"Wipe \\"both\\" faces properly with a <consumable:wipe>."'],
    ['over two lines', 'Wipe both faces properly\n          with a <consumable:wipe>.'],
  ])('the whole field where it is %s', (_, text) => {
    expect(said(`      - do: ${text}\n`)).toEqual([`WRT003 ${text}`]);
  });
});

describe('language', () => {
  const shop = (language: string) => ({
    file: 'shop.yaml',
    from: 'name: Mini Works\n',
    to: `name: Mini Works\nlanguage: ${language}\n`,
  });

  test.each([
    ['en', 1],
    ['en-GB', 1],
    ['de', 0],
    ['fr-CA', 0],
  ])('%s', (language, count) => {
    expect(findingsOf('do', 'Wipe both faces properly.', [shop(language)]).found.length).toBe(count);
  });
});

describe('variants', () => {
  test('a step of one variant names it', () => {
    const { found } = findingsOf('do', 'Wipe both faces.', [
      {
        file: FILE,
        from: '      - do: Take out the <part:plug>.\n',
        to: '      - do: Take the <part:plug> out properly.\n',
      },
    ]);
    expect(found.map((d) => d.message)).toEqual(['`properly` in the step leaves the limit to the reader (Large)']);
  });

  test('a warning behind one of another variant is found at its own place', () => {
    const warn = (level: string, only: string, avoid: string) =>
      `          - { level: ${level}, hazard: The rim cuts the hand., avoid: ${avoid}${only} }\n`;
    const to =
      `${WIPE}        warn:\n` +
      warn('caution', ', only: { size: small }', 'Gloves on.') +
      warn('caution', ', only: { size: large }', 'Gloves on properly.');
    expect(said(to)).toEqual(['WRT003 properly']);
  });

  test('a shared stage is reported once, however many cards use it', () => {
    const { diagnostics } = runExample([
      { file: 'stages/isolate.yaml', from: '  - do: Open the drain.\n', to: '  - do: Open the drain properly.\n' },
    ]);
    expect(diagnostics.map((d) => [d.code, d.label])).toEqual([['WRT003', 'used by MW-1']]);
  });

  test('the introduction of a stage, shared and own', () => {
    const long = `intro: ${'word '.repeat(26).trim()}.\n`;
    const { diagnostics, textOf } = runExample([
      { file: 'stages/isolate.yaml', from: 'title: Isolate\n', to: `title: Isolate\n${long}` },
      { file: FILE, from: '  - title: Open\n', to: `  - title: Open\n    ${long}` },
    ]);
    const places = diagnostics.map(
      (d) => `${d.code} ${d.range.file}: ${textOf(d.range.file)?.slice(d.range.start, d.range.end).slice(0, 9)}`,
    );
    expect(places).toEqual(['WRT010 shop/procedures/mw-1.yaml: word word', 'WRT010 shop/stages/isolate.yaml: isolate']);
  });
});

describe('words in a sentence, as ASD-STE100 counts them (20 to order, 25 to describe; memory)', () => {
  const words = (n: number, first: string) => `${first} ${'rim '.repeat(n - 1).trim()}.`;

  test.each<readonly [Field, number, string, number]>([
    ['do', 20, 'Wipe', 0],
    ['do', 21, 'Wipe', 1],
    ['if out', 20, 'Wipe', 0],
    ['if out', 21, 'Wipe', 1],
    ['note', 25, 'The', 0],
    ['note', 26, 'The', 1],
    ['hazard', 25, 'The', 0],
    ['hazard', 26, 'The', 1],
    ['avoid', 26, 'The', 1],
  ])('%s of %i words', (field, n, first, count) => {
    const { found } = findingsOf(field, words(n, first));
    expect(found.map((d) => d.code)).toEqual(
      Array(count).fill(field === 'do' || field === 'if out' ? 'WRT002' : 'WRT010'),
    );
  });

  test.each([
    ['a reference is one word', `Wipe with <consumable:wipe> ${'rim '.repeat(17).trim()}.`],
    ['a number with its unit is one', `Wipe down 12.5 mm ${'rim '.repeat(17).trim()}.`],
    ['a hyphenated word is one', `Wipe a well-worn-out ${'rim '.repeat(17).trim()}.`],
    ['two sentences are counted each', `Wipe ${'rim '.repeat(15).trim()}. Wait ${'rim '.repeat(15).trim()}.`],
    ['a full stop of an abbreviation ends none', 'Wipe the rim, e.g. at No. 3.'],
  ])('%s', (_, sentence) => {
    expect(findingsOf('do', sentence).found.filter((d) => d.code === 'WRT002')).toEqual([]);
  });
});

describe('what the step says elsewhere', () => {
  const TIGHTEN = '      - do: When <step:locked> is done, tighten the <joint:cover>.\n';

  test('the specified torque is known where the step tightens a joint', () => {
    const to = '      - do: Tighten the <joint:cover> to the specified torque.\n';
    expect(runExample([{ file: FILE, from: TIGHTEN, to }]).diagnostics).toEqual([]);
    expect(said('      - do: Tighten the screws to the specified torque.\n')).toEqual(['WRT003 specified torque']);
  });

  test('a nominal size is no fault where the step measures it', () => {
    const from = '      - do: Measure the gap.\n';
    const { diagnostics } = runExample([{ file: FILE, from, to: '      - do: Set the gap to 0.2 mm.\n' }]);
    expect(diagnostics.filter((d) => d.code === 'WRT005')).toEqual([]);
  });
});

describe('dates (ISO 8601: year, month, day)', () => {
  test.each([
    ['7/11/25', ['2025-11-07', '2025-07-11', '2007-11-25']],
    ['07/11/2025', ['2025-11-07', '2025-07-11']],
    ['7.11.2025', ['2025-11-07', '2025-07-11']],
    ['07-11-2025', ['2025-11-07', '2025-07-11']],
    ['25/12/2025', []],
    ['3/3/2025', []],
    ['2025-07-11', []],
    ['11 July 2025', []],
    ['section 3.11.25', []],
    ['sockets 8/10/12 mm', []],
    ['OF-7/11/25-A', []],
    ['7/11', []],
  ])('%s', (text, days) => {
    const { found, words } = findingsOf('note', `Gaskets bought before ${text} have no lug.`);
    expect(words).toEqual(days.length > 0 ? [text] : []);
    for (const d of found) expect(d.message).toBe(`\`${text}\` may be ${days.join(' or ')}`);
  });

  test('in a register', () => {
    const { diagnostics, textOf } = runExample([
      {
        file: 'consumables.yaml',
        from: 'wipe: { name: lint-free wipe, kind: wipe }\n',
        to: 'wipe: { name: lint-free wipe, kind: wipe, note: new maker since 4/5/2024 }\n',
      },
    ]);
    expect(diagnostics.map((d) => `${d.code} ${textOf(d.range.file)?.slice(d.range.start, d.range.end)}`)).toEqual([
      'WRT012 4/5/2024',
    ]);
  });
});

describe('hostile lengths end in time and in no exception', () => {
  test.each([
    'oil and ',
    'when oil, open it, ',
    '1, ',
    '3 to ',
    'properly ',
    'step 3, ',
    '1/2/24 ',
    'must be ',
    'then, slowly, ',
    'gap of 3; ',
    '. A ',
  ])('%j, twenty thousand times', (piece) => {
    const started = performance.now();
    const { all } = findingsOf('do', `Wipe ${piece.repeat(20_000)}`);
    expect(all.length).toBeGreaterThan(0);
    expect(performance.now() - started).toBeLessThan(5000);
  });
});
