/** Rounds of a joint and the run-down torque of locking fasteners: told and not told. */

import { describe, expect, test } from 'vitest';
import { ONE_FORM, PATTERN, PUMP, put, told } from './told.ts';

const rounds = (text: string, passes = '    circular_passes: 1\n') =>
  put(
    PUMP,
    '    rounds: [30 %, 70 %, 100 %]\n    circular_passes: 1\n',
    `${text === '' ? '' : `    rounds: ${text}\n`}${passes}`,
  );
const bolts = (count: number) => put(PUMP, PATTERN, `    pattern: { circle: 240 mm, count: ${count} }\n`);

describe('TRQ027 and TRQ029', () => {
  test.each([
    // ASME PCC-1-2019, Table 1: 20 to 30 %, 50 to 70 %, 100 %; an installation sheet after PCC-1-2010: 30, 70, 100.
    ['[20 %, 60 %, 100 %]', []],
    ['[30 %, 70 %, 100 %]', []],
    ['[35 %, 70 %, 100 %]', []],
    ['[15 %, 50 %, 100 %]', []],
    ['[48 N·m, 112 N·m, 160 N·m]', []],
    ['[36 %, 70 %, 100 %]', ['TRQ027 36 %']],
    ['[14 %, 70 %, 100 %]', ['TRQ027 14 %']],
    ['[80 N·m, 160 N·m]', ['TRQ027 80 N·m']],
    ['[100 %]', ['TRQ029 [100 %]']],
    ['[160 N·m]', ['TRQ029 [160 N·m]']],
  ])('eight bolts in %s', (written, expected) => {
    const found = ['TRQ027', 'TRQ029'].flatMap((code) =>
      told(code, ONE_FORM, rounds(written)).map((t) => `${code} ${t.at}`),
    );
    expect(found).toEqual(expected);
  });

  test('fewer than four bolts may be tightened in one round', () => {
    for (const written of ['[100 %]', '[50 %, 100 %]']) {
      expect([
        ...told('TRQ027', ONE_FORM, bolts(3), rounds(written)),
        ...told('TRQ029', ONE_FORM, bolts(3), rounds(written)),
      ]).toEqual([]);
    }
    expect(told('TRQ029', ONE_FORM, bolts(4), rounds('[100 %]'))).toHaveLength(1);
  });

  test('a torque that cannot be meant says nothing of its rounds', () => {
    expect(told('TRQ027', rounds('[50 %, 100 %]'), put(PUMP, 'torque: 160 N·m', 'torque: 1600 N·m'))).toEqual([]);
  });
});

describe('TRQ028', () => {
  test.each([
    ['gone round', '    circular_passes: 2\n', 0],
    ['not gone round', '    circular_passes: 0\n', 1],
    ['nothing said', '', 1],
  ])('%s', (_, passes, count) => {
    expect(told('TRQ028', rounds('[30 %, 70 %, 100 %]', passes))).toHaveLength(count);
  });

  test('where rounds are not written either, the joint itself is the place', () => {
    expect(told('TRQ028', rounds('', '')).map((t) => t.at)).toEqual(['cover']);
  });

  test('an O-ring in its groove needs none, and two bolts have no way round', () => {
    const oring = put(PUMP, 'name: cover gasket, kind: gasket', 'name: cover O-ring, kind: o-ring');
    expect(told('TRQ028', rounds('[30 %, 100 %]', ''), oring)).toEqual([]);
    expect(told('TRQ028', rounds('[30 %, 100 %]', ''), ONE_FORM, bolts(2))).toEqual([]);
  });
});

describe('TRQ026', () => {
  const nut = '  nut: { name: cover nut, kind: nut, number: MW-104, locking: true }\n';
  const also = put(PUMP, '    fastener: screw\n', '    fastener: screw\n    also: [nut]\n');

  test('a locking nut among the further parts is named there', () => {
    const found = told('TRQ026', put(PUMP, '  plug: {', `${nut}  plug: {`), also);
    expect(found.map((t) => t.at)).toEqual(['nut']);
    expect(found[0]?.hint).toContain('`run_down: … N·m`');
  });

  test('a stated run-down torque answers it, and a plain nut needs none', () => {
    const stated = put(PUMP, '    socket: socket-24\n', '    socket: socket-24\n    run_down: 10 N·m\n');
    expect(told('TRQ026', put(PUMP, '  plug: {', `${nut}  plug: {`), also, stated)).toEqual([]);
    expect(told('TRQ026', put(PUMP, '  plug: {', `${nut.replace(', locking: true', '')}  plug: {`), also)).toEqual([]);
  });
});
