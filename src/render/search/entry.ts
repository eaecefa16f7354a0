/** What the search index stores of each thing that can be found. */

export type EntryKind = 'procedure' | 'machine' | 'part' | 'joint' | 'tool' | 'consumable' | 'table';

/** One line by which a thing can be found and that is shown as the reason why it was. */
export interface Fact {
  readonly text: string;
  /** Places in `variants` for which it holds; absent when it holds for all. */
  readonly of?: readonly number[];
}

export interface Entry {
  readonly kind: EntryKind;
  /** Document number, part number or other mark; empty when it has none. */
  readonly mark: string;
  readonly title: string;
  /** Revision in force, procedures only. */
  readonly rev?: string;
  /** A few words beside the title: the machine, the kind. */
  readonly detail: string;
  /** Page, from the root of the site. */
  readonly path: string;
  /** The pages of the variants; empty for things without variants. */
  readonly variants: readonly { readonly label: string; readonly path: string }[];
  readonly facts: readonly Fact[];
}

/** An entry with what is indexed and not stored: the words of its steps. */
export interface IndexedEntry extends Entry {
  readonly words: string;
  /** Spellings that nobody needs to read: `m16x2`, `0.625-11`. */
  readonly spellings: string;
}
