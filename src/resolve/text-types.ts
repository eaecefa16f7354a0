/** Text with its references resolved, and where a number was read. */

export type RefKind = 'tool' | 'consumable' | 'part' | 'joint' | 'step' | 'procedure';

/** A stretch of text in one style. Numbers and units are already joined by no-break spaces. */
export interface Run {
  readonly text: string;
  readonly strong?: true;
  readonly emphasis?: true;
  readonly code?: true;
  /** What the words stand for; `step` ids are resolved to `step-12`, the anchor on the page. */
  readonly ref?: { readonly kind: RefKind; readonly id: string };
  /** A web address given by the author. */
  readonly href?: string;
}

export interface Paragraph {
  readonly kind: 'paragraph' | 'item';
  readonly runs: readonly Run[];
}

export type Prose = readonly Paragraph[];

export interface SourceNote {
  readonly document: string;
  readonly edition?: string;
  readonly place?: string;
}
