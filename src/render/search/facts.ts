/** Collects facts over the variants of a document, each once, with the variants for which it holds. */

import type { Fact } from './entry.ts';

export class FactList {
  readonly #seen = new Map<string, Set<number>>();

  /** variant: its place in the document's list. */
  add(text: string, variant: number): void {
    const clean = text.trim();
    if (clean === '') return;
    const set = this.#seen.get(clean) ?? new Set<number>();
    set.add(variant);
    this.#seen.set(clean, set);
  }

  /** In the order in which they came; `of` is left out for facts that hold for all `variantCount` variants. */
  list(variantCount: number): Fact[] {
    return [...this.#seen].map(([text, variants]) =>
      variants.size >= variantCount ? { text } : { text, of: [...variants].sort((a, b) => a - b) },
    );
  }
}
