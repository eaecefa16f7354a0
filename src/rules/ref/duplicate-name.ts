/** Two entries of one register have the same name. */

import { type FromFile, placeOf, type ResolvedShop } from '../../resolve/index.ts';
import type { Check, Tell } from '../check.ts';

interface Named {
  readonly id: string;
  readonly name: string;
  readonly from: FromFile;
  /** For which variants it exists; two for different ones never meet. */
  readonly only?: string | undefined;
}

export const duplicateName: Check = {
  code: 'REF024',
  name: 'duplicate-name',
  severity: 'warning',
  title: 'Two entries of one register have the same name.',
  why: 'The card prints names and not ids: `fit the O-ring` with two O-rings on the bench sends one of them into the wrong groove.',
  sources: ['common practice: one word for one thing, as in ASD-STE100 (read second-hand)'],
  example: {
    bad: [
      {
        file: 'machines/pump.yaml',
        from: '  plug: { name: vent plug, kind: plug, quantity: 1, number: MW-103, only: { size: large } }\n',
        to: '  plug: { name: «cover», kind: plug, quantity: 1, number: MW-103, only: { size: large } }\n',
      },
    ],
  },
  found: (shop, tell) => {
    for (const [what, register] of registersOf(shop)) tellDoubles(register, what, tell);
  },
};

/** Everything that is printed by its name, register by register. */
function* registersOf(shop: ResolvedShop): Iterable<readonly [what: string, register: readonly Named[]]> {
  const named = (list: readonly (FromFile & { readonly id: string; readonly name: string })[]): readonly Named[] =>
    list.map((from) => ({ id: from.id, name: from.name, from }));
  yield ['tools', named(shop.tools)];
  yield ['consumables', named(shop.consumables)];
  yield ['people', named(shop.people)];
  yield ['benches', named(shop.benches)];
  yield ['machines', named(shop.machines)];
  for (const { name, parts, joints } of shop.machines) {
    yield [`parts of ${name}`, parts.map((from) => ({ id: from.id, name: from.name, from, only: from.only }))];
    yield [
      `joints of ${name}`,
      joints.map(({ plan, variants }) => ({
        id: plan.id,
        name: plan.name,
        from: plan,
        only: variants === '' ? undefined : variants,
      })),
    ];
  }
}

function tellDoubles(register: readonly Named[], what: string, tell: Tell): void {
  const first = new Map<string, Named>();
  const told = new Set<string>();
  for (const entry of register) {
    const key = entry.name.replace(/\s+/g, ' ').trim().toLowerCase();
    const other = first.get(key);
    if (other === undefined) first.set(key, entry);
    else if (!isApart(entry, other) && !told.has(entry.id)) {
      told.add(entry.id);
      tell(
        placeOf(entry.from, 'name'),
        `two ${what} are called \`${entry.name}\`: \`${other.id}\` and \`${entry.id}\``,
        {
          related: [{ range: placeOf(other.from, 'name'), message: `name of \`${other.id}\`` }],
          hint: 'add what tells them apart: its place, its size or its side',
        },
      );
    }
  }
}

/** One entry in several forms, or entries of different variants: no card shows both. */
function isApart(a: Named, b: Named): boolean {
  return a.id === b.id || (a.only !== undefined && b.only !== undefined && a.only !== b.only);
}
