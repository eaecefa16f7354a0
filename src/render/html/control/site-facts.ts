/** What the plain pages say about the shop and the day for which they answer. */

export interface SiteFacts {
  /** Name of the shop. */
  readonly name: string;
  /** Of the pages: `en`. */
  readonly language: string;
  /** Safety words, on every page. */
  readonly safety: string;
  /** Where a mistake is reported. */
  readonly report?: string;
  /** Day for which the pages answer: `2026-11-25`. */
  readonly asOf: string;
  /** Days after which an answer is too old to be relied on. */
  readonly freshDays: number;
}
