/** Tools in the order in which a bench is laid out: by kind, and within a kind by size. */

import type { Length } from '../units/index.ts';

/** What the order hangs on; `id` and `name` only settle ties. */
export interface SortedTool {
  readonly id: string;
  readonly name: string;
  readonly kind: string;
  readonly size?: Length;
  /** Upper end of the range, SI: torque wrenches and gauges without a size stand from small to large. */
  readonly reach?: number;
}

export interface ToolGroup<T> {
  /** `Sockets and keys` */
  readonly title: string;
  /** Special tools stand apart: they are made for one machine and lie in no drawer. */
  readonly isSpecial: boolean;
  readonly tools: readonly T[];
}

/** Groups in their order; a kind that stands nowhere comes last, under its own name. */
const GROUPS: readonly { readonly title: string; readonly kinds: readonly string[] }[] = [
  { title: 'Torque wrenches', kinds: ['torque wrench'] },
  { title: 'Sockets and keys', kinds: ['socket', 'key'] },
  { title: 'Hand tools', kinds: ['hand tool'] },
  { title: 'Measuring tools', kinds: ['measuring tool'] },
  { title: 'Power tools', kinds: ['power tool'] },
  { title: 'Heating gear', kinds: ['heating gear'] },
  { title: 'Lifting gear', kinds: ['lifting gear'] },
  { title: 'Stands', kinds: ['stand'] },
  { title: 'Vessels', kinds: ['vessel'] },
  { title: 'Lockout', kinds: ['lockout'] },
  { title: 'Special tools', kinds: ['special tool'] },
];

const SPECIAL = 'Special tools';
const INCH_UNITS: ReadonlySet<string> = new Set(['in', 'ft']);

/** Groups that hold something, each sorted: metric sizes before inch sizes, both rising, tools without a size last. */
export function groupTools<T>(tools: readonly T[], of: (tool: T) => SortedTool): readonly ToolGroup<T>[] {
  const known = new Map<string, T[]>();
  for (const tool of tools) {
    const { kind } = of(tool);
    const title = GROUPS.find((g) => g.kinds.includes(kind))?.title ?? kind;
    known.set(title, [...(known.get(title) ?? []), tool]);
  }
  const titles = GROUPS.map((g) => g.title);
  const others = [...known.keys()].filter((t) => !titles.includes(t)).sort();
  return [...titles, ...others].flatMap((title) => {
    const found = known.get(title);
    if (found === undefined) return [];
    return [{ title, isSpecial: title === SPECIAL, tools: [...found].sort((a, b) => compareTools(of(a), of(b))) }];
  });
}

function compareTools(a: SortedTool, b: SortedTool): number {
  return (
    sizeRank(a) - sizeRank(b) ||
    (a.size?.si ?? a.reach ?? 0) - (b.size?.si ?? b.reach ?? 0) ||
    compareText(a.name, b.name) ||
    compareText(a.id, b.id)
  );
}

function sizeRank({ size }: SortedTool): number {
  if (size === undefined) return 2;
  return INCH_UNITS.has(size.unit) ? 1 : 0;
}

/** By code units: the same on every machine, whatever its language. */
export function compareText(a: string, b: string): number {
  return a === b ? 0 : a < b ? -1 : 1;
}
