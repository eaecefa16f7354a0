/** Acceptances: a comment beside a warning takes it out of the list and into the build report; everything else about them is reported. */

import { describe, expect, test } from 'vitest';
import { buildReport, compileFiles, EXAMPLE_FOLDER } from '../../src/pipeline/index.ts';
import { EXAMPLE_SHOP } from '../../src/rules/index.ts';
import { readMemory } from '../../src/source/index.ts';

const MACHINE = 'machines/pump.yaml';
/** One warning: a first round under 20 % of a wrench that goes too far, on the line of `wrench`. */
const WRENCH = '    wrench: wrench-40-200\n';

function compile(file: string, change: (text: string) => string) {
  const shop: Record<string, string> = { ...EXAMPLE_SHOP, [file]: change(EXAMPLE_SHOP[file] ?? '') };
  if (file === MACHINE) shop['tools.yaml'] = (shop['tools.yaml'] ?? '').replace('40 to 200 N·m,', '40 to 400 N·m,');
  const files = Object.entries(shop)
    .map(([relative, content]) => ({ relative, content }))
    .sort((a, b) => (a.relative < b.relative ? -1 : 1));
  return compileFiles((report) => readMemory(files, {}, EXAMPLE_FOLDER, report), EXAMPLE_FOLDER);
}

function wrench(lines: string) {
  const compiled = compile(MACHINE, (t) => t.replace(WRENCH, lines));
  return {
    codes: compiled.diagnostics.map((d) => d.code),
    accepted: compiled.accepted.map((a) => `${a.diagnostic.code}: ${a.reason}`),
    compiled,
  };
}

test('the warning without a comment', () => {
  expect(wrench('    wrench: wrench-40-200\n').codes).toEqual(['TRQ006']);
});

describe('accepted', () => {
  test.each([
    [
      'at the end of its line',
      '    wrench: wrench-40-200 # accept TRQ006: asked for by the maker, letter of 12 January\n',
    ],
    [
      'on the line above',
      '    # accept TRQ006: asked for by the maker, letter of 12 January\n    wrench: wrench-40-200\n',
    ],
    [
      'above, with another comment between',
      '    # accept TRQ006: asked for by the maker, letter of 12 January\n\n    # measured twice\n    wrench: wrench-40-200\n',
    ],
    [
      'in any case, with any blanks',
      '    wrench: wrench-40-200   #  Accept trq006 :  asked for by the maker, letter of 12 January  \n',
    ],
  ])('%s', (_where, lines) => {
    const { codes, accepted, compiled } = wrench(lines);
    expect(codes).toEqual([]);
    expect(accepted).toEqual(['TRQ006: asked for by the maker, letter of 12 January']);
    expect(compiled.checked).toBeDefined();
  });

  test('stands in the build report with its reason, its place and its count', () => {
    const report = buildReport(wrench('    wrench: wrench-40-200 # accept TRQ006: asked for by the maker\n').compiled);
    expect(report.warnings).toEqual([]);
    expect(report.accepted).toMatchObject([
      {
        code: 'TRQ006',
        name: 'wrench-low-range',
        place: 'machines/pump.yaml:34:13',
        reason: 'asked for by the maker',
      },
    ]);
    expect(report.others).toEqual([{ file: 'machines/pump.yaml', warnings: 0, accepted: 1 }]);
  });
});

describe('not accepted', () => {
  test.each([
    [
      'a line away',
      '    # accept TRQ006: asked for by the maker\n    note: marked\n    wrench: wrench-40-200\n',
      ['ACC001', 'TRQ006'],
    ],
    ['another code', '    wrench: wrench-40-200 # accept TRQ002: asked for by the maker\n', ['TRQ006', 'ACC001']],
    ['an error', '    wrench: wrench-40-200 # accept TRQ003: asked for by the maker\n', ['TRQ006', 'ACC002']],
    ['no reason', '    wrench: wrench-40-200 # accept TRQ006:\n', ['TRQ006', 'ACC003']],
    ['a reason of dots', '    wrench: wrench-40-200 # accept TRQ006: ...\n', ['TRQ006', 'ACC003']],
    ['no code', '    wrench: wrench-40-200 # accept the maker asks for it\n', ['TRQ006', 'ACC004']],
    ['a code of no check', '    wrench: wrench-40-200 # accept TRQ906: asked for by the maker\n', ['TRQ006', 'ACC004']],
    ['an ordinary comment', '    wrench: wrench-40-200 # we accept this\n', ['TRQ006']],
  ])('%s', (_case, lines, wanted) => {
    expect(wrench(lines).codes).toEqual(wanted);
  });

  test('what is no longer there', () => {
    const { diagnostics } = compile('people.yaml', (t) =>
      t.replace('role: Fitter }', 'role: Fitter } # accept REF017: in the shop only on Mondays'),
    );
    expect(diagnostics.map((d) => d.code)).toEqual(['ACC001']);
  });

  test('words in quotes or in folded text are no comments', () => {
    const { diagnostics, accepted } = compile('procedures/mw-1.yaml', (t) =>
      t.replace('- do: Measure the gap.', "- do: 'Measure the gap # accept TRQ006: never.'"),
    );
    expect(accepted).toEqual([]);
    expect(diagnostics.filter((d) => d.code.startsWith('ACC'))).toEqual([]);
  });
});

test('one acceptance covers every warning of its code on the line', () => {
  const { diagnostics, accepted } = compile('tools.yaml', (t) =>
    t.replace(
      /^hoist: .*$/m,
      (line) =>
        `${line}\na: { name: spare hook, kind: hand tool } # accept REF017: lent out by the rigger\nb: { name: spare eye, kind: hand tool }`,
    ),
  );
  expect(diagnostics.map((d) => d.code)).toEqual(['REF017']);
  expect(accepted).toHaveLength(1);
});
