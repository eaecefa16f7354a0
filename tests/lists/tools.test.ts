/** Tools in the order in which a bench is laid out. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { groupTools, type SortedTool } from '../../src/lists/index.ts';
import { quantity } from '../../src/units/index.ts';

const socket = (value: number, unit: string): SortedTool => ({
  id: `socket-${value}-${unit}`,
  name: `${value} ${unit} socket`,
  kind: 'socket',
  size: quantity('length', value, unit),
});
const tool = (id: string, kind: string, reach?: number): SortedTool => ({
  id,
  name: id,
  kind,
  ...(reach === undefined ? {} : { reach }),
});

const BENCH: readonly SortedTool[] = [
  tool('seal cone', 'special tool'),
  tool('padlock', 'lockout'),
  socket(0.9375, 'in'),
  tool('wrench 40 to 200', 'torque wrench', 200),
  tool('hexagon key set', 'key'),
  socket(24, 'mm'),
  tool('hoist', 'lifting gear'),
  socket(0.5625, 'in'),
  { ...socket(8, 'mm'), id: 'bit-8', kind: 'key' },
  tool('wrench 5 to 25', 'torque wrench', 25),
  tool('vernier', 'measuring tool', 0.2),
  socket(30, 'mm'),
  tool('dial gauge', 'measuring tool', 0.01),
];

describe('groups of tools', () => {
  test('sockets and keys rise by size, metric before inch, those of no size last', () => {
    const group = groupTools(BENCH, (t) => t).find((g) => g.title === 'Sockets and keys');
    // 9/16 in is 14.3 mm and would stand before 24 mm by length alone.
    expect(group?.tools.map((t) => t.id)).toEqual([
      'bit-8',
      'socket-24-mm',
      'socket-30-mm',
      'socket-0.5625-in',
      'socket-0.9375-in',
      'hexagon key set',
    ]);
  });

  test('torque wrenches come first and special tools last and apart; wrenches and gauges rise by range', () => {
    const groups = groupTools(BENCH, (t) => t);
    expect(groups.map((g) => g.title)).toEqual([
      'Torque wrenches',
      'Sockets and keys',
      'Measuring tools',
      'Lifting gear',
      'Lockout',
      'Special tools',
    ]);
    expect(groups.map((g) => g.isSpecial)).toEqual([false, false, false, false, false, true]);
    expect(groups[0]?.tools.map((t) => t.id)).toEqual(['wrench 5 to 25', 'wrench 40 to 200']);
    expect(groups[2]?.tools.map((t) => t.id)).toEqual(['dial gauge', 'vernier']);
  });

  test('a kind that no group knows stands last under its own name', () => {
    const groups = groupTools([tool('ladder', 'access'), tool('padlock', 'lockout')], (t) => t);
    expect(groups.map((g) => g.title)).toEqual(['Lockout', 'access']);
  });

  test('the order of the tools given changes nothing, and none is lost', () => {
    const wanted = groupTools(BENCH, (t) => t);
    fc.assert(
      fc.property(fc.shuffledSubarray([...BENCH], { minLength: BENCH.length }), (shuffled) => {
        expect(groupTools(shuffled, (t) => t)).toEqual(wanted);
      }),
    );
    expect(wanted.flatMap((g) => g.tools).length).toBe(BENCH.length);
  });
});
