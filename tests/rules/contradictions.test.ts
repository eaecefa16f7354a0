/** What two places of a shop say against each other, beside what contradicts nothing. Common practice unless said. */

import { describe, expect, test } from 'vitest';
import { runExample } from '../../src/pipeline/index.ts';
import { codes } from './flow.ts';

const OPEN = '- do: Loosen the <joint:cover>.\n  loosen: cover\n';
const OFF = '- do: Lift off the <part:cover>.\n  remove: { cover: reuse, gasket: discard, screw: inspect }\n';
const LAY = '- do: Lay the new <part:gasket> on.\n  fit: [gasket, cover]\n';
const TIGHTEN = '- do: Tighten the <joint:cover>.\n  tighten: cover\n';
const DRY = (count: number): string => `- do: Put ${count} screws in by hand.\n  fit: { screw: ${count} }\n`;
const OILED = (count: number): string => `${DRY(count)}  lubricate: { with: oil, where: thread }\n`;

describe('thrown away and fitted again', () => {
  const off = OFF.replace('screw: inspect', 'screw: discard');
  const run = (words: string): string => `- do: ${words}\n  fit: [screw]\n  lubricate: { with: oil, where: thread }\n`;
  test.each([
    ['nothing says a new one', 'Run the screws in by hand.', ['PRT004']],
    ['the step says it of its part', 'Run the new <part:screw> in by hand.', []],
    ['the step says it of the last word of its name', 'Run all new screws in by hand.', []],
    ['the step says it of things of which it is one', 'Run the new fasteners in by hand.', []],
    ['the step says it of another part', 'Run the screws in through the new <part:gasket>.', ['PRT004']],
  ])('%s', (_, words, expected) => {
    expect(codes({ steps: `${OPEN}${off}${LAY}${run(words)}${TIGHTEN}` })).toEqual(expected);
  });

  test('the parts list says that it is renewed', () => {
    const machine = [['number: MW-102 }', 'number: MW-102, always_replace: true }']] as const;
    const steps = `${OPEN}${off}${LAY}${run('Run the screws in by hand.')}${TIGHTEN}`;
    expect(codes({ steps, machine })).toEqual([]);
  });
});

describe('fasteners in two lots', () => {
  // Each variant has its own count: eight of small, twelve of large.
  const lots = (first: string, second: string): readonly string[] => {
    const machine = [
      ['pattern: { circle: 320 mm, count: 12, first: 15 deg }', 'pattern: { circle: 320 mm, count: 8 }'],
    ] as const;
    return codes({ steps: `${OPEN}${OFF}${LAY}${first}${second}${TIGHTEN}`, machine });
  };
  test('both oiled', () => expect(lots(OILED(4), OILED(4))).toEqual([]));
  test('the second one dry', () => expect(lots(OILED(4), DRY(4))).toEqual(['JNT008']));
  test('the first one dry', () => expect(lots(DRY(4), OILED(4))).toEqual(['JNT008']));
  test('oiled by a step of its own', () =>
    expect(lots(DRY(4), `${DRY(4)}- do: Oil the threads.\n  lubricate: { with: oil, where: thread }\n`)).toEqual([]));
});

describe('nuts off before the joint is loosened', () => {
  const machine = [['    fastener: screw\n', '    fastener: screw\n    also: [nut]\n']] as const;
  const parts = ['nut: { name: cover nut, kind: nut, number: MW-104, thread: M16, grade: "8" }'];
  const nuts = '- do: Take off the nuts.\n  remove: { nut: inspect }\n';
  const on = '- do: Run the nuts on.\n  fit: [nut, screw]\n  lubricate: { with: oil, where: thread }\n';
  test.each([
    ['after it', [OPEN, nuts, OFF], []],
    ['before it', [nuts, OPEN, OFF], ['JNT005']],
  ])('%s', (_, open, expected) => {
    const steps = `${open.join('')}${LAY}${on}${TIGHTEN}`;
    expect(codes({ steps, machine, parts }).filter((c) => c === 'JNT005')).toEqual(expected);
  });
});

const found = (file: string, from: string, to: string): readonly string[] =>
  runExample([{ file, from, to }]).diagnostics.map((d) => d.code);

describe('the mass of a lift', () => {
  const lifted = (mass: string): readonly string[] => {
    const { diagnostics } = runExample([
      { file: 'machines/pump.yaml', from: 'mass: 18 kg', to: 'mass: 36 kg' },
      { file: 'tools.yaml', from: 'capacity: 250 kg', to: 'capacity: 2000 kg' },
      {
        file: 'procedures/mw-1.yaml',
        from: 'lift: { mass: 18 kg, by: chain hoist }',
        to: `lift: { mass: ${mass}, by: chain hoist }`,
      },
    ]);
    return diagnostics.filter((d) => d.code === 'SAF010' && /\blift is of\b/.test(d.message)).map((d) => d.code);
  };
  test.each([
    ['36 kg', []],
    ['60 kg', []],
    ['100 kg', []],
    ['360 kg', ['SAF010']],
    ['30 kg', ['SAF010']],
  ])('%s of a part of 36 kg', (mass, expected) => expect(lifted(mass)).toEqual(expected));
});

test('a graduation of another quantity than the range', () => {
  expect(found('tools.yaml', 'step: 0.05 bar', 'step: 0.05 mm')).toContain('FLD005');
  expect(found('tools.yaml', 'step: 0.05 bar', 'step: 0.5 psi')).not.toContain('FLD005');
});

describe('words', () => {
  const note = (words: string): readonly string[] =>
    found(
      'procedures/mw-1.yaml',
      '        fit: [gasket, cover]\n',
      `        fit: [gasket, cover]\n        note: "${words}"\n`,
    );
  test.each([
    ['The ring goes on when it is 80 hotter than the shaft.', ['WRT004']],
    ['The ring goes on when it is 80 degC hotter than the shaft.', []],
    ['The seat is then 0.1 slack.', ['WRT004']],
    ['Two longer screws stay in.', []],
    ['Pay out the rope until it is slack.', ['WRT006']],
    ['Look over the coating.', ['WRT006']],
    ['Notice: the faces are soft.', ['SAF005']],
    ['Notice of the change hangs in the office.', []],
  ])('%s', (words, expected) => expect(note(words)).toEqual(expected));
});
