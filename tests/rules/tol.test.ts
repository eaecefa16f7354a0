/** Tools: what a gauge must read, from outside rules of thumb; dates, ranges and plain words in tables of cases. */

import { describe, expect, test } from 'vitest';
import { runExample } from '../../src/pipeline/index.ts';
import type { Edit } from '../../src/rules/index.ts';

const PROCEDURE = 'procedures/mw-1.yaml';
const WIPE = '      - do: Wipe both faces with a <consumable:wipe>.\n';
const LOCK = 'lock: { name: padlock, kind: lockout }\n';

/** Codes of the family, in order of place. */
function codes(edits: readonly Edit[]): string[] {
  return runExample(edits)
    .diagnostics.map((d) => d.code)
    .filter((c) => c.startsWith('TOL'));
}

const others = (edits: readonly Edit[]): string[] =>
  runExample(edits)
    .diagnostics.map((d) => d.code as string)
    .filter((c) => !/^(?:TOL|REF017)/.test(c));

/** A limit judged with a tool of its own. */
function judged(limit: string, tool: string): Edit[] {
  return [
    {
      file: 'tools.yaml',
      from: LOCK,
      to: `${LOCK}probe: { name: test probe, calibration_due: 2027-06-01, ${tool} }\n`,
    },
    {
      file: PROCEDURE,
      from: WIPE,
      to: `${WIPE}        measure:
          what: what is judged
          limit: ${limit}
          with: probe
          if out: Tell the shop lead.
          source: { document: Pump manual, edition: "3", place: page 13 }
`,
    },
  ];
}

const gauge = (range: string, step: string): string => `kind: measuring tool, range: ${range}, step: ${step}`;

describe('graduation against limit', () => {
  /**
   * Rule of tens as worked by Minitab support, "What is gage tolerance?" (AIAG guideline): a ball of 0.34 to 0.36 mm asks
   * for a gauge that tells 0.002 mm apart. Widest step of GB/T 3177 (grades 1 and 3 of IT6 to IT11): a tenth and a quarter.
   */
  const BALL: readonly (readonly [step: string, found: string[]])[] = [
    ['0.001 mm', []],
    ['0.002 mm', []],
    ['0.0021 mm', ['TOL004']],
    ['0.005 mm', ['TOL004']],
    ['0.0051 mm', ['TOL003']],
    ['0.01 mm', ['TOL003']],
    ['0.05 mm', ['TOL003']],
  ];
  test.each(BALL)('ball of 0.34 to 0.36 mm, step %s', (step, found) => {
    expect(codes(judged('0.34 to 0.36 mm', gauge('0 to 5 mm', step)))).toEqual(found);
    expect(others(judged('0.34 to 0.36 mm', gauge('0 to 5 mm', step)))).toEqual([]);
  });

  /** The rule of one in ten as worked at justway.com, "The 1:10 rule": 20 ± 0.05 mm, resolution 0.01 mm. */
  test('20 ± 0.05 mm and 0.01 mm', () => {
    expect(codes(judged('20 ± 0.05 mm', gauge('0 to 150 mm', '0.01 mm')))).toEqual([]);
    expect(codes(judged('20 ± 0.05 mm', gauge('0 to 150 mm', '0.02 mm')))).toEqual(['TOL004']);
  });

  const CASES: readonly (readonly [limit: string, range: string, step: string, found: string[], why: string])[] = [
    ['at most 0.05 mm', '0 to 10 mm', '0.01 mm', ['TOL004'], 'from zero to its end'],
    ['0 to 0.05 mm', '0 to 10 mm', '0.01 mm', ['TOL004'], 'the same, written out'],
    ['at most 0.03 mm', '0 to 10 mm', '0.01 mm', ['TOL003'], 'three graduations'],
    ['at most 0.03 mm', '0.03 to 1.00 mm', '0.01 mm', [], 'the blade of 0.03 goes in or does not'],
    ['0 to 0.03 mm', '0.03 to 1.00 mm', '0.01 mm', [], 'the same, written out'],
    ['at most 0.055 mm', '0.03 to 1.00 mm', '0.01 mm', ['TOL004'], 'no blade of 0.055'],
    ['0.04 to 0.07 mm', '0.03 to 1.00 mm', '0.01 mm', ['TOL003'], 'a band is read, not tried'],
    ['at least 1.5 mm', '0 to 300 mm', '0.5 mm', ['TOL003'], 'a rule for a narrow seat'],
    ['at least 30 mm', '0 to 300 mm', '0.5 mm', [], 'a rule for a long one'],
    ['at most 0 bar', '0 to 60 bar', '1 bar', [], 'the pin of the gauge'],
    ['at most 0.0 bar', '0 to 6 bar', '0.02 bar', [], 'the pin, with a decimal'],
    ['6.0 to 6.4 bar', '0 to 16 bar', '0.2 bar', ['TOL003'], 'two graduations'],
    ['6.0 to 6.4 bar', '0 to 16 bar', '0.1 bar', ['TOL004'], 'four'],
    ['6.0 to 6.4 bar', '0 to 250 psi', '0.5 psi', [], 'eleven, in another unit'],
    ['at most 70 degC', '0 to 250 degC', '10 degC', [], 'one temperature has no width'],
    ['60 to 61 degC', '0 to 250 degC', '1 degC', ['TOL003'], 'one graduation, not 1/274 of one'],
    ['60 to 70 degC', '0 to 250 degC', '1 degC', [], 'ten'],
    ['140 to 158 degF', '0 to 250 degC', '1 degC', [], 'ten, in another unit'],
  ];
  test.each(CASES)('%s with %s in steps of %s: %j, %s', (limit, range, step, found) => {
    expect(codes(judged(limit, gauge(range, step)))).toEqual(found);
  });

  const wrench = (step: string): string => `kind: torque wrench, range: 20 to 100 N·m, step: ${step}, drive: 1/2 in`;
  test('a torque wrench is set: it needs one mark within the limit', () => {
    expect(codes(judged('44 to 48 N·m', wrench('1 N·m')))).toEqual([]);
    expect(codes(judged('44 to 48 N·m', wrench('4 N·m')))).toEqual([]);
    expect(codes(judged('44 to 48 N·m', wrench('5 N·m')))).toEqual(['TOL003']);
  });

  test('the help names what the register has, in the unit of the limit', () => {
    const [found] = runExample([
      ...judged('0.34 to 0.36 mm', gauge('0 to 5 mm', '0.01 mm')),
      {
        file: 'tools.yaml',
        from: 'gauge: {',
        to: `fine: { name: fine micrometer, calibration_due: 2027-06-01, ${gauge('0 to 25 mm', '0.001 mm')} }
inch: { name: inch micrometer, calibration_due: 2027-06-01, ${gauge('0 to 1 in', '0.00002 in')} }
gauge: {`,
      },
    ]).diagnostics.filter((d) => d.code === 'TOL003');
    expect(found?.message).toContain('2 lie within the limit');
    expect(found?.hint).toContain('`fine`');
    expect(found?.hint).not.toContain('`inch`');
    const [alone] = runExample(judged('0.34 to 0.36 mm', gauge('0 to 5 mm', '0.01 mm'))).diagnostics;
    expect(alone?.hint).toContain('0.002\u00a0mm or finer');
  });

  test('of several measurements, some of one variant only, the right one is marked', () => {
    const one = (limit: string, only: string): string => `          - what: gap
            limit: ${limit}
            with: feeler
            if out: Tell the shop lead.
            source: { document: Pump manual, edition: "3", place: page 13 }
${only}`;
    const { diagnostics, textOf } = runExample([
      {
        file: PROCEDURE,
        from: WIPE,
        to: `${WIPE}        measure:\n${one('0.10 to 0.30 mm', '            only: { size: small }\n')}${one('0.10 to 0.12 mm', '            only: { size: large }\n')}`,
      },
    ]);
    expect(diagnostics.map((d) => d.code)).toEqual(['TOL003']);
    const [d] = diagnostics;
    const text = d === undefined ? '' : (textOf(d.range.file) ?? '');
    expect(d?.message).toContain('(Large)');
    expect(text.slice(0, d?.range.start)).toMatch(/limit: 0\.10 to 0\.12 mm\n\s+with: $/);
  });
});

describe('range and kind', () => {
  const RANGES: readonly (readonly [limit: string, range: string, found: string[]])[] = [
    ['5 to 10 mm', '0 to 10 mm', []],
    ['5 to 11 mm', '0 to 10 mm', ['TOL005']],
    ['24 to 26 mm', '25 to 50 mm', ['TOL005']],
    ['25.00 to 26.00 mm', '25 to 50 mm', []],
    ['0 to 2 mm', '1 to 10 mm', []],
    ['at most 0.5 mm', '1 to 10 mm', ['TOL005']],
    ['at least 0.5 mm', '1 to 10 mm', ['TOL005']],
    ['0.10 to 0.30 in', '0 to 10 mm', []],
    ['0.10 to 0.40 in', '0 to 10 mm', ['TOL005']],
  ];
  test.each(RANGES)('%s with a gauge of %s: %j', (limit, range, found) => {
    expect(codes(judged(limit, gauge(range, '0.01 mm')))).toEqual(found);
  });

  const KINDS: readonly (readonly [tool: string, found: string[]])[] = [
    ['kind: socket, size: 24 mm', ['TOL008']],
    ['kind: special tool', ['TOL008']],
    [`kind: special tool, range: 0 to 5 mm, step: 0.01 mm`, []],
    ['kind: measuring tool, range: 0 to 6 bar, step: 0.05 bar', ['TOL008']],
    ['kind: measuring tool, step: 0.05 bar', ['TOL008']],
    ['kind: measuring tool, step: 0.01 mm', []],
    ['kind: measuring tool', ['TOL009']],
    ['kind: measuring tool, range: 0 to 5 mm', ['TOL009']],
    [`kind: special tool, range: 0 to 5 mm`, ['TOL009']],
  ];
  test.each(KINDS)('a limit in millimetres with %s: %j', (tool, found) => {
    expect(codes(judged('0.10 to 0.30 mm', tool))).toEqual(found);
  });
});

describe('register', () => {
  const idle = (tool: string): Edit[] => [
    { file: 'tools.yaml', from: LOCK, to: `${LOCK}probe: { name: test probe, ${tool} }\n` },
  ];
  const REGISTER: readonly (readonly [tool: string, found: string[]])[] = [
    ['kind: hand tool', []],
    ['kind: measuring tool', ['TOL007']],
    ['kind: measuring tool, uncalibrated: holds a gauge', []],
    ['kind: measuring tool, calibration_due: 2027-01-01', []],
    ['kind: measuring tool, calibration_due: 2027-01-01, range: 0 to 5 mm', ['TOL009']],
    ['kind: torque wrench, range: 5 to 25 N·m, step: 0.5 N·m', ['TOL007']],
    ['kind: torque wrench, range: 5 to 25 N·m, calibration_due: 2027-01-01', ['TOL009']],
    // It makes pressure; another gauge reads it.
    ['kind: special tool, range: 0 to 60 bar', []],
  ];
  test.each(REGISTER)('%s: %j', (tool, found) => {
    expect(codes(idle(tool))).toEqual(found);
  });

  test('a date that cannot be read is not said to be missing', () => {
    const { diagnostics } = runExample([
      {
        file: 'tools.yaml',
        from: 'serial: MW-FG-1, calibration_due: 2027-06-01',
        to: 'serial: MW-FG-1, calibration_due: next spring',
      },
    ]);
    expect(diagnostics.map((d) => d.code)).toEqual(['FLD008']);
  });

  const DUE: readonly (readonly [tool: string, due: string, found: string[]])[] = [
    // MW-1 takes effect on 2026-01-10.
    ['serial: MW-TW-2, calibration_due: 2027-03-01', '2026-01-09', ['TOL006']],
    ['serial: MW-TW-2, calibration_due: 2027-03-01', '2026-01-10', []],
    ['serial: MW-FG-1, calibration_due: 2027-06-01', '2019-12-31', ['TOL006']],
    ['serial: MW-PG-4, calibration_due: 2027-06-01', '2026-01-09', ['TOL006']],
  ];
  test.each(DUE)('%s due on %s: %j', (tool, due, found) => {
    expect(codes([{ file: 'tools.yaml', from: tool, to: tool.replace(/\d{4}-\d\d-\d\d/, due) }])).toEqual(found);
  });

  test('lifting gear with a date, and a tool that no card uses', () => {
    expect(
      codes([{ file: 'tools.yaml', from: 'capacity: 250 kg', to: 'capacity: 250 kg, calibration_due: 2025-01-01' }]),
    ).toEqual(['TOL006']);
    expect(codes(idle('kind: measuring tool, calibration_due: 2025-01-01'))).toEqual([]);
  });
});

describe('plain words', () => {
  const WORDS: readonly (readonly [text: string, found: number])[] = [
    ['Fill it with the hand test pump.', 1],
    ['Fill it with the Hand Test Pump.', 1],
    ['Fill it with hand test pumps.', 1],
    ['Fill it with the <tool:pump>.', 0],
    ['Fill it with the [hand test pump](tool:pump).', 0],
    ['Fill it with the <tool:pump>; then drain the hand test pump.', 0],
    ['Fill it with the water pump.', 1],
    ['Start the raw-water pump.', 0],
    ['Start the water pump-set.', 0],
    ['Press it in with the C-pump.', 1],
    ['Set the press to 20 t.', 0],
    ['Strike it with a hammer.', 0],
    ['Measure it with the 0-25 mm micrometer.', 1],
    ['Measure it with the 10-25 mm micrometer.', 0],
    ['Fill it without the hand test pump.', 0],
    ['Fill it, never with the hand test pump.', 0],
    ['Never run it dry; fill it with the hand test pump.', 1],
    ['Fill it from the tap, not with a hand test pump.', 0],
  ];
  test.each(WORDS)('%s', (text, found) => {
    const edits: Edit[] = [
      {
        file: 'tools.yaml',
        from: LOCK,
        to: `${LOCK}pump: { name: hand test pump, kind: special tool, also_called: [water pump, C-pump, press] }
hammer: { name: hammer, kind: hand tool }
mic: { name: 0-25 mm micrometer, kind: measuring tool, range: 0 to 25 mm, step: 0.001 mm, calibration_due: 2027-06-01 }
`,
      },
      { file: 'stages/close-out.yaml', from: '  - do: Refit every guard.\n', to: `  - do: ${text}\n` },
    ];
    const { diagnostics } = runExample(edits);
    expect(diagnostics.filter((d) => d.code === 'TOL001')).toHaveLength(found);
  });
});

describe('tools that cannot be carried', () => {
  const MW_2 = `doc: MW-2
title: See the pump stand still
machine: pump
purpose: Shows that the pump is isolated.
owner: ben
review: 24 months
energy: [water pressure, electric motor]
ppe: [gloves, eye protection]
revisions:
  - { rev: A, effective: 2026-01-10, approved: 2026-01-08, author: ada, approver: ben, what: First issue, why: New pump }
stages:
  - use: isolate
  - use: close-out
`;
  const fixed = (benches: string, pumps: string, valves: string): string[] =>
    codes([
      { file: 'tools.yaml', from: 'feeler gauge, kind', to: `feeler gauge, fixed_at: [${benches}], kind` },
      {
        file: 'benches.yaml',
        from: '  binder: [MW-1]\n',
        to: `  binder: [${pumps}]\nvalves: { name: Valves, place: Hall 2, lead: ada, binder: [${valves}] }\n`,
      },
      { file: 'procedures/mw-2.yaml', to: MW_2 },
    ]);
  test('one of the benches is enough', () => {
    expect(fixed('valves', 'MW-1', 'MW-2')).toEqual(['TOL002']);
    expect(fixed('pumps', 'MW-1', 'MW-2')).toEqual([]);
    expect(fixed('valves, pumps', 'MW-1', 'MW-2')).toEqual([]);
    expect(fixed('valves', 'MW-1', 'MW-2, MW-1')).toEqual([]);
    // A card that hangs nowhere has another fault.
    expect(fixed('valves', 'MW-2', 'MW-2')).toEqual([]);
  });
});
