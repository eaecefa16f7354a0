/** For a number without its unit: the units that its field takes, by what the field is said to be. */

import { type Dimension, unitSymbols } from '../units/index.ts';

/** The first that fits the description of a field; a length where none does. */
const KINDS: readonly (readonly [description: RegExp, ...dimensions: Dimension[]])[] = [
  [/^torque wrench:|\blength\b/i, 'length'],
  [/^share of the torque, or the torque/i, 'ratio', 'torque'],
  [/\bshare\b/i, 'ratio'],
  [/\btorque\b|the same in the other unit/i, 'torque'],
  [/\bangle\b/i, 'angle'],
  [/\btime\b/i, 'time'],
  [/\bmass\b|working load|heaviest/i, 'mass'],
  [/\btemperature\b/i, 'temperature'],
  [/\bmodulus\b|\bpressure\b/i, 'stress'],
  [/\bforce\b/i, 'force'],
  [/\barea\b/i, 'area'],
  [/^(pack|amount)\b/i, 'mass', 'volume'],
  [/\bgraduation\b/i, 'length', 'torque', 'stress'],
];

/** So many units of each kind are named. */
const MOST = 4;

/** `write the unit that the source gives: `160 N·m`, `160 lbf·ft``. description: of the field, as the shapes have it. */
export function unitHint(value: number, description: string): string {
  const [, ...dimensions] = KINDS.find(([pattern]) => pattern.test(description)) ?? [undefined, 'length' as const];
  const units = dimensions.flatMap((d) => unitSymbols(d).slice(0, MOST));
  if (!Number.isFinite(value)) return `write a number and its unit, such as \`12 ${units[0] ?? ''}\``;
  return `write the unit that the source gives: ${units.map((u) => `\`${value} ${u}\``).join(', ')}`;
}
