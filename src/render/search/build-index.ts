/** Writes the search index as one JSON text. */

import MiniSearch, { type AsPlainObject } from 'minisearch';
import type { ResolvedShop } from '../../resolve/types.ts';
import { type StoppedDocument, searchEntries } from './entries.ts';
import type { Entry, IndexedEntry } from './entry.ts';
import { indexOptions, type SearchRecord } from './options.ts';
import { indexTerms } from './tokens.ts';

/** The file that the browser loads. */
export interface SearchFile {
  readonly entries: readonly Entry[];
  readonly index: AsPlainObject;
}

function record(entry: IndexedEntry, id: number): SearchRecord {
  return {
    id,
    mark: entry.mark,
    title: entry.title,
    detail: entry.detail,
    facts: `${entry.facts.map((f) => f.text).join(' \n ')} \n ${entry.spellings}`,
    // Each term once a procedure: how often a word stands in it says little, and the index is half the size.
    words: indexTerms(entry.words).join(' \n '),
  };
}

/** Index and entries of a shop. stopped: documents that are not among the shop's, because nobody may work from them. */
export function buildSearchFile(shop: ResolvedShop, stopped: readonly StoppedDocument[] = []): SearchFile {
  const entries = searchEntries(shop, stopped);
  const search = new MiniSearch<SearchRecord>(indexOptions);
  search.addAll(entries.map(record));
  return {
    entries: entries.map(({ words: _words, spellings: _spellings, ...entry }) => entry),
    index: search.toJSON(),
  };
}
