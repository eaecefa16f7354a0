/** Kits and parts of an order: what several jobs ask for, drawn together into one line each. */

import { roundToStep, type Time } from '../units/index.ts';
import type { WantedPart } from './needs.ts';
import type { Jobs, KitLine, PartLine } from './order-types.ts';
import { type KitNeed, longest } from './parts.ts';

/** Things put together under one key, in the order in which the keys appear. */
export function gather<T>(
  found: readonly { readonly key: string; readonly thing: T }[],
): ReadonlyMap<string, readonly T[]> {
  const map = new Map<string, T[]>();
  for (const { key, thing } of found) {
    const known = map.get(key);
    if (known === undefined) map.set(key, [thing]);
    else known.push(thing);
  }
  return map;
}

export function withLead(times: readonly (Time | undefined)[]): { readonly lead?: Time } {
  const lead = longest(times.flatMap((t) => t ?? []));
  return lead === undefined ? {} : { lead };
}

/** Each job once, in order. */
export function jobsOf(all: readonly { readonly jobs: Jobs }[]): readonly Jobs[] {
  return [...new Set(all.map((a) => a.jobs))];
}

/** One line a kit of a machine. */
export function kitLines(all: readonly Jobs[]): readonly KitLine[] {
  const found = all.flatMap((jobs) =>
    jobs.card.kits.map((kit) => ({ key: `kit ${jobs.card.machine} ${kit.name}`, thing: { jobs, kit } })),
  );
  return [...gather(found)].flatMap(([key, uses]): KitLine[] => {
    const [first] = uses;
    if (first === undefined) return [];
    const contents = contentsKey(first.kit);
    return [
      {
        kind: 'kit',
        key,
        name: first.kit.name,
        machine: first.jobs.card.machine,
        order: uses.reduce((sum, { jobs, kit }) => sum + jobs.count * kit.quantity, 0),
        contents: first.kit.contents,
        differs: uses.filter((u) => contentsKey(u.kit) !== contents).map((u) => u.jobs.card),
        for: jobsOf(uses),
        ...withLead(uses.map((u) => u.kit.lead)),
      },
    ];
  });
}

function contentsKey({ contents }: KitNeed): string {
  return contents.map((c) => `${c.id} ${c.inKit}`).join(', ');
}

interface PartUses {
  readonly jobs: Jobs;
  readonly part: WantedPart;
}

export interface PartLines {
  /** New parts, and inspected ones with an expected share. */
  readonly bought: readonly PartLine[];
  /** Inspected parts of which nobody has stated how many will not pass. */
  readonly unrated: readonly PartLine[];
}

/**
 * Parts of one machine with the same number are one thing in the maker's box, whatever they are called, and one line here.
 * Numbers of two machines may come from two makers and are kept apart.
 */
export function partLines(all: readonly Jobs[]): PartLines {
  const found = all.flatMap((jobs) =>
    jobs.card.parts.map((part) => ({
      key: `part ${jobs.card.machine} ${part.number ?? `- ${part.id}`}`,
      thing: { jobs, part },
    })),
  );
  const groups = [...gather(found)];
  const isUnrated = ({ part }: PartUses): boolean => part.inspected > 0 && part.rate === undefined;
  return {
    bought: groups
      .flatMap(([key, uses]) =>
        partLine(
          all,
          key,
          uses.filter(({ part }) => part.fresh > 0 || (part.rate ?? 0) > 0),
        ),
      )
      .filter((line) => line.order > 0),
    unrated: groups
      .flatMap(([key, uses]) => partLine(all, key, uses.filter(isUnrated)))
      .map((line) => ({ ...line, order: 0, fresh: 0, expected: 0, covered: 0 })),
  };
}

function partLine(all: readonly Jobs[], key: string, uses: readonly PartUses[]): readonly PartLine[] {
  const [first] = uses;
  if (first === undefined) return [];
  const sum = (of: (part: WantedPart) => number): number => uses.reduce((n, u) => n + u.jobs.count * of(u.part), 0);
  const fresh = sum((p) => p.fresh);
  const isRated = uses.some((u) => u.part.rate !== undefined);
  const expected = sum((p) => p.inspected * (p.rate ?? 0));
  const covered = Math.min(expected, spares(all, uses));
  return [
    {
      kind: 'part',
      key,
      name: [...new Set(uses.map((u) => u.part.name))].join(', '),
      machine: first.jobs.card.machine,
      part: first.part.id,
      order: fresh + roundToStep(expected - covered, 1, 'up'),
      fresh,
      inspected: sum((p) => (isRated && p.rate === undefined ? 0 : p.inspected)),
      expected,
      covered,
      for: jobsOf(uses),
      ...(first.part.number === undefined ? {} : { number: first.part.number }),
      ...withLead(uses.map((u) => u.part.lead)),
    },
  ];
}

/** Pieces of these parts that the kits of all jobs leave over. */
function spares(all: readonly Jobs[], uses: readonly PartUses[]): number {
  const ids = new Set(uses.map((u) => `${u.jobs.card.machine}/${u.part.id}`));
  return all.reduce(
    (sum, { card, count }) =>
      sum +
      card.kits
        .flatMap((k) => k.contents)
        .filter((c) => ids.has(`${card.machine}/${c.id}`))
        .reduce((n, c) => n + count * c.leftOver, 0),
    0,
  );
}
