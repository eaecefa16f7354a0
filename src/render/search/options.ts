/** MiniSearch settings, shared by the build that writes the index and the browser that reads it. */

import type { Options, SearchOptions } from 'minisearch';
import { indexTerms, queryTerms } from './tokens.ts';

/** The indexed form of an entry. */
export interface SearchRecord {
  readonly id: number;
  readonly mark: string;
  readonly title: string;
  readonly detail: string;
  readonly facts: string;
  readonly words: string;
}

/** A near miss in a number would show a wrong torque or thread: only words may be misspelt. */
function isWord(term: string): boolean {
  return term.length >= 5 && /^\p{L}+$/u.test(term);
}

/** `M16` or `OF-2` may be the start of something; `120` may not be the start of `1200`. */
function mayBePrefix(term: string): boolean {
  return /\p{L}/u.test(term) ? term.length >= 3 : term.length >= 4 && /^\d+$/u.test(term);
}

/** misspelt: also take words that differ by up to two letters. */
export function searchOptions(misspelt: boolean): SearchOptions {
  return {
    combineWith: 'AND',
    tokenize: queryTerms,
    processTerm: (term) => term,
    boost: { mark: 8, title: 5, detail: 2, facts: 3, words: 1 },
    prefix: (term) => mayBePrefix(term),
    fuzzy: (term) => (misspelt && isWord(term) ? 2 : false),
    weights: { fuzzy: 0.3, prefix: 0.6 },
  };
}

export const indexOptions: Options<SearchRecord> = {
  fields: ['mark', 'title', 'detail', 'facts', 'words'],
  storeFields: [],
  tokenize: (text) => indexTerms(text),
  processTerm: (term) => term,
};
