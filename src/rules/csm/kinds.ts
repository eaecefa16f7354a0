/** Kinds of consumables for which a check asks more. */

import { type Consumable, isWritten, type ResolvedShop } from '../../resolve/index.ts';
import type { Run } from '../check.ts';

/** Substances and mixtures, as against wipes, caps and cloths. */
const CHEMICAL: ReadonlySet<string> = new Set([
  'lubricant',
  'anti-seize',
  'threadlocker',
  'sealant',
  'cleaner',
  'fluid',
  'gas',
  'adhesive',
]);

export function isChemical({ kind }: Consumable): boolean {
  return CHEMICAL.has(kind);
}

/** `a lubricant`, `an adhesive`. */
export function aKind({ kind }: Consumable): string {
  return `${/^[aeiou]/.test(kind) ? 'an' : 'a'} ${kind}`;
}

/** A check for consumables that lack `key`; `why` says in words why this one needs it, or that it needs none. */
export function eachLacking(
  key: string,
  why: (consumable: Consumable) => string | undefined,
  hint: (consumable: Consumable) => string,
): Run {
  return (shop: ResolvedShop, tell) => {
    // What seems to be missing may be what could not be read.
    if (shop.incomplete === true) return;
    for (const consumable of shop.consumables) {
      if (isWritten(consumable, key)) continue;
      const reason = why(consumable);
      if (reason === undefined) continue;
      tell(consumable.keyRange, `\`${consumable.id}\` ${reason} and has no \`${key}\``, { hint: hint(consumable) });
    }
  };
}
