/** Asks the index and says why each thing was found. */

import MiniSearch from 'minisearch';
import type { SearchFile } from './build-index.ts';
import { slips } from './distance.ts';
import type { Entry, Fact } from './entry.ts';
import { indexOptions, type SearchRecord, searchOptions } from './options.ts';
import { indexTerms, queryTerms, squeeze } from './tokens.ts';

export interface Finding {
  readonly entry: Entry;
  /** Facts that hold the words asked for, best first, at most three; empty when title, mark or steps hold them. */
  readonly why: readonly Fact[];
  /** True when some of the words stand in the steps only. */
  readonly inSteps: boolean;
  /** Places in `entry.variants` to which the finding applies; all of them unless every reason says otherwise. */
  readonly variants: readonly number[];
}

export interface Answer {
  /** Procedures first, then the rest, each best first. */
  readonly findings: readonly Finding[];
  /** The words looked for instead, when a word was met only by one that is nearly the same. */
  readonly instead?: string;
}

export interface Finder {
  /** At most `most` findings. An empty query finds nothing. */
  readonly find: (query: string, most?: number) => Answer;
}

/** Prepares the loaded index file for asking. */
export function makeFinder(file: SearchFile): Finder {
  const search = MiniSearch.loadJS<SearchRecord>(file.index, indexOptions);
  const ask = (query: string, most: number): Finding[] =>
    search
      .search(query, searchOptions(false))
      .flatMap((hit) => {
        const entry = file.entries[hit.id as number];
        return entry === undefined ? [] : [{ entry, score: hit.score * weight(entry), match: hit.match }];
      })
      .sort((a, b) => b.score - a.score)
      .sort((a, b) => Number(b.entry.kind === 'procedure') - Number(a.entry.kind === 'procedure'))
      .slice(0, most)
      .map(({ entry, match }) => explain(entry, match));
  return {
    find(query, most = 30) {
      if (queryTerms(query).length === 0) return { findings: [] };
      const exact = ask(query, most);
      if (exact.length > 0) return { findings: exact };
      const fragments = findFragment(file.entries, query).slice(0, most);
      if (fragments.length > 0) return { findings: fragments };
      const instead = correct(search, query);
      if (instead === undefined) return { findings: [] };
      return { findings: ask(instead, most), instead };
    },
  };
}

/** The query with every unknown word replaced by the nearest word of the index; undefined when one has none near enough. */
function correct(search: MiniSearch<SearchRecord>, query: string): string | undefined {
  const words: string[] = [];
  for (const term of queryTerms(query)) {
    if (search.search(term, searchOptions(false)).length > 0) {
      words.push(term);
      continue;
    }
    const near = new Set(search.search(term, searchOptions(true)).flatMap((hit) => Object.keys(hit.match)));
    const best = [...near]
      .map((word) => ({ word, distance: slips(term, word) }))
      .filter(({ distance }) => distance <= (term.length >= 8 ? 2 : 1))
      .sort((a, b) => a.distance - b.distance || (a.word < b.word ? -1 : 1))[0];
    if (best === undefined) return undefined;
    words.push(best.word);
  }
  return words.join(' ');
}

/** Tables hold every thread and would stand before the things that the reader has in hand. */
function weight(entry: Entry): number {
  return entry.kind === 'table' ? 0.2 : 1;
}

function explain(entry: Entry, match: Readonly<Record<string, readonly string[]>>): Finding {
  const open = new Set(
    Object.keys(match).filter((term) => !(match[term] ?? []).some((f) => f === 'mark' || f === 'title')),
  );
  const inFacts = [...open].filter((term) => match[term]?.includes('facts'));
  const scored = entry.facts
    .map((fact) => {
      const terms = new Set(indexTerms(fact.text));
      return { fact, met: inFacts.filter((term) => terms.has(term)) };
    })
    .filter(({ met }) => met.length > 0)
    .sort((a, b) => b.met.length - a.met.length);
  const best = scored[0]?.met.length ?? 0;
  const why = scored
    .filter(({ met }) => met.length === best)
    .slice(0, 3)
    .map(({ fact }) => fact);
  const told = new Set(scored.flatMap(({ met }) => met));
  const inSteps = [...open].some((term) => !told.has(term) && match[term]?.includes('words') === true);
  return {
    entry,
    why,
    inSteps,
    variants: variantsOf(
      entry,
      scored.filter(({ met }) => met.length === best).map(({ fact }) => fact),
    ),
  };
}

function variantsOf(entry: Entry, reasons: readonly Fact[]): number[] {
  const all = entry.variants.map((_v, i) => i);
  if (reasons.length === 0 || reasons.some((r) => r.of === undefined)) return all;
  const some = new Set(reasons.flatMap((r) => r.of ?? []));
  return all.filter((i) => some.has(i));
}

/** A number with its unit: a piece of it is another amount, and must never be found. */
const QUANTITY_TERM = /^[\d./-]+(?:nm|lbfft|lbfin|in|mm|cm|um|kn|kg|bar|psi|ml|mpa|c|%)?$/u;

/** The last resort: the query as a piece out of the middle of a part number or mark. */
function findFragment(entries: readonly Entry[], query: string): Finding[] {
  const piece = squeeze(query);
  if (
    piece.length < 3 ||
    !/\d/u.test(piece) ||
    queryTerms(query).some((t) => /^[\d./-]+\D+$/u.test(t) && QUANTITY_TERM.test(t))
  )
    return [];
  const holds = (text: string) =>
    indexTerms(text).some((t) => /\d/u.test(t) && !QUANTITY_TERM.test(t) && squeeze(t).includes(piece));
  return entries.flatMap((entry) => {
    const why = entry.facts.filter((f) => holds(f.text)).slice(0, 3);
    const inHead = holds(entry.mark);
    return inHead || why.length > 0
      ? [{ entry, why, inSteps: false, variants: variantsOf(entry, inHead ? [] : why) }]
      : [];
  });
}
