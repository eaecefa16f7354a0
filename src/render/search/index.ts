/** Search: one index for build and browser. */
export { buildSearchFile, type SearchFile } from './build-index.ts';
export { slips } from './distance.ts';
export { type StoppedDocument, searchEntries } from './entries.ts';
export type { Entry, EntryKind, Fact, IndexedEntry } from './entry.ts';
export { type Answer, type Finder, type Finding, makeFinder } from './find.ts';
export { fold, indexTerms, queryTerms, squeeze } from './tokens.ts';
