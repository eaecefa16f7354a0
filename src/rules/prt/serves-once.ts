/** Parts that serve once, and where one of them goes back all the same. */

import { isWritten, type Part, placeOf } from '../../resolve/index.ts';
import type { Fault } from '../check.ts';
import type { Scene } from '../rule.ts';
import { type Life, ledgerOf, type Move } from './ledger.ts';

const KINDS: ReadonlySet<string> = new Set(['gasket', 'o-ring', 'packing', 'seal', 'lock washer', 'split pin']);
const CRUSHED = /\bcopper\b|\bcrush\b|\bbonded\b/i;

/** Why the part serves once, as a clause; undefined for one that may go back. */
export function servesOnce(part: Part): string | undefined {
  if (part.alwaysReplace) return 'the parts list says `always_replace`';
  // `always_replace: false` is the author's word against the rule of the kind, such as for a labyrinth seal.
  if (isWritten(part, 'always_replace')) return undefined;
  if (KINDS.has(part.kind)) return `${/^[aeio]/.test(part.kind) ? 'an' : 'a'} ${part.kind} serves once`;
  const crushed = (part.kind === 'washer' || part.kind === 'ring') && CRUSHED.test(part.material ?? '');
  return crushed ? `a ${part.kind} of ${part.material} serves once` : undefined;
}

/** Moves by which a part comes off to be used again and then goes back, without a reason given in a step. */
export function* usedAgain(scene: Scene): Generator<{ readonly life: Life; readonly off: Move; readonly on: Move }> {
  for (const life of ledgerOf(scene).lives.values()) {
    const { moves } = life;
    for (const [i, off] of moves.entries()) {
      const on = moves[i + 1];
      if (off.kind !== 'off' || on?.kind !== 'on' || off.fate === 'discard' || off.fate === undefined) continue;
      const reasoned = [off, ...moves.slice(i + 1)].some((m) => m.step.reuse.some((r) => r.id === life.id));
      if (!reasoned) yield { life, off, on };
    }
  }
}

/** Where the fate of the part stands. */
export function placeOfFate({ step, move }: Move): Fault['range'] {
  return placeOf(step, 'remove', move.id);
}

export function reuseHint(id: string): string {
  return `write \`discard\` and fit a new one, or say why it may go back: \`reuse: { ${id}: { reason: …, source: { document: … } } }\``;
}
