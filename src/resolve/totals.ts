/** Lists drawn up from the steps: tools by size, consumables with amounts, parts with their fate. */

import { type Amount, formatLimit, formatQuantity, sumAmounts } from '../units/index.ts';
import type { Context } from './context.ts';
import type { MachineAtHand } from './machines.ts';
import { defined } from './quantities.ts';
import type { ConsumableTotal, Fate, PartUse, Step, ToolUse } from './types.ts';

/** The order in which a bench is laid out. */
const TOOL_ORDER = [
  'lockout',
  'torque wrench',
  'socket',
  'key',
  'hand tool',
  'special tool',
  'measuring tool',
  'lifting gear',
  'heating gear',
  'power tool',
  'stand',
  'vessel',
];

export function toolTotals(context: Context, steps: readonly Step[]): readonly ToolUse[] {
  const found = new Map<string, number[]>();
  for (const s of steps) for (const id of s.tools) found.set(id, [...(found.get(id) ?? []), s.number]);
  return [...found]
    .flatMap(([id, numbers]): (ToolUse & { readonly sort: number })[] => {
      const t = context.tools.get(id);
      if (t === undefined) return [];
      const detail =
        t.range !== undefined
          ? formatLimit(t.range)
          : t.size !== undefined
            ? formatQuantity(t.size)
            : t.capacity !== undefined
              ? formatQuantity(t.capacity)
              : '';
      return [{ id, name: t.name, kind: t.kind, detail, steps: numbers, sort: t.size?.si ?? 0 }];
    })
    .sort(
      (a, b) =>
        TOOL_ORDER.indexOf(a.kind) - TOOL_ORDER.indexOf(b.kind) || a.sort - b.sort || (a.name < b.name ? -1 : 1),
    )
    .map(({ sort: _, ...use }) => use);
}

export function consumableTotals(context: Context, steps: readonly Step[]): readonly ConsumableTotal[] {
  const found = new Map<string, { numbers: number[]; amounts: Amount[] }>();
  for (const s of steps) {
    for (const c of s.consumables) {
      const entry = found.get(c.id) ?? { numbers: [], amounts: [] };
      entry.numbers.push(s.number);
      if (c.quantity !== undefined) entry.amounts.push(c.quantity);
      found.set(c.id, entry);
    }
  }
  return [...found]
    .flatMap(([id, { numbers, amounts }]): ConsumableTotal[] => {
      const c = context.consumables.get(id);
      if (c === undefined) return [];
      const amount = amounts.length === 0 ? undefined : sumAmounts(amounts).map(formatQuantity).join(' + ');
      return [
        { id, name: c.name, kind: c.kind, ppe: c.ppe, hazards: c.hazards, steps: numbers, ...defined({ amount }) },
      ];
    })
    .sort((a, b) => (a.name < b.name ? -1 : 1));
}

/** Parts that come off or go on, with what becomes of them: `discard` also means that a new one is needed. */
export function partTotals(hand: MachineAtHand, steps: readonly Step[]): readonly PartUse[] {
  const moves = new Map<string, { fate: Fate | 'new'; quantity: number; numbers: number[] }>();
  for (const s of steps) {
    for (const m of s.remove) {
      const known = moves.get(m.id);
      moves.set(m.id, {
        fate: m.fate ?? 'inspect',
        quantity: Math.max(known?.quantity ?? 0, m.quantity),
        numbers: [...(known?.numbers ?? []), s.number],
      });
    }
    for (const m of s.fit) {
      const known = moves.get(m.id);
      moves.set(m.id, {
        fate: known?.fate ?? 'new',
        quantity: Math.max(known?.quantity ?? 0, m.quantity),
        numbers: [...(known?.numbers ?? []), s.number],
      });
    }
  }
  return [...moves].flatMap(([id, m]): PartUse[] => {
    const p = hand.parts.get(id)?.value;
    if (p === undefined) return [];
    return [
      {
        id,
        name: p.name,
        kind: p.kind,
        quantity: m.quantity,
        fate: m.fate,
        steps: [...new Set(m.numbers)],
        ...defined({ number: p.number, kit: p.kit }),
      },
    ];
  });
}
