/** Names of tools and consumables that stand in a text as plain words, not as references. */

import type { Machine, Prose, ResolvedShop, Step, Variant } from '../../resolve/index.ts';
import type { Scene } from '../rule.ts';

export interface Spoken {
  readonly kind: 'tool' | 'consumable';
  /** Entries of the register that are called so; several may share a byword. */
  readonly ids: readonly string[];
  /** As the register writes it, in lower case. */
  readonly phrase: string;
  /** The text up to the words and behind them, in lower case. */
  readonly before: string;
  readonly after: string;
}

interface Entry {
  readonly phrase: string;
  readonly kind: 'tool' | 'consumable';
  readonly ids: string[];
}

interface Index {
  /** Longest phrases first, by their first word. */
  readonly byWord: ReadonlyMap<string, readonly Entry[]>;
  /** Whether any first word begins with these two letters: nine words in ten are passed over by it. */
  readonly begins: Uint8Array;
}

/** Two letters, large and small alike. */
function beginning(text: string, at: number): number {
  return (((text.charCodeAt(at) | 32) & 255) << 8) | ((text.charCodeAt(at + 1) | 32) & 255);
}

/** Words in one text of a step: of its order, or of what to do when measurement `measure` is out of limit. */
export interface Said {
  readonly step: Step;
  readonly measure?: number;
  readonly spoken: Spoken;
}

const indexes = new WeakMap<ResolvedShop, Index>();
const found = new WeakMap<Variant, readonly Said[]>();

/** What the steps of a card name in plain words; one scan serves both registers. */
export function saidIn({ shop, variant, steps }: Scene): readonly Said[] {
  const known = found.get(variant);
  if (known !== undefined) return known;
  const index = indexOf(shop);
  const made: Said[] = [];
  for (const step of steps) {
    for (const spoken of spokenIn(index, step.text)) made.push({ step, spoken });
    for (const [measure, { ifOut }] of step.measures.entries())
      for (const spoken of spokenIn(index, ifOut)) made.push({ step, measure, spoken });
  }
  found.set(variant, made);
  return made;
}

const NONE: readonly Spoken[] = [];

/** Few texts hold the first word of a name outside a reference; only those are put together and read closely. */
function spokenIn(index: Index, prose: Prose): readonly Spoken[] {
  const may = prose.some((p) => p.runs.some((r) => r.ref === undefined && mayName(index, r.text)));
  return may ? scan(index, plainWords(prose)) : NONE;
}

function mayName({ begins, byWord }: Index, text: string): boolean {
  let inside = false;
  for (let at = 0; at < text.length; at++) {
    const word = isWord(text, at);
    if (word && !inside && begins[beginning(text, at)] === 1) {
      let end = at + 1;
      while (isWord(text, end)) end += 1;
      if (byWord.has(text.slice(at, end).toLowerCase())) return true;
    }
    inside = word;
  }
  return false;
}

/** References are cut out, so that no name reaches across one. */
function plainWords(prose: Prose): string {
  let text = '';
  for (const paragraph of prose) {
    for (const run of paragraph.runs) text += run.ref === undefined ? run.text : '\n';
    text += '\n';
  }
  return plain(text);
}

function plain(text: string): string {
  const lower = text.toLowerCase();
  return lower.includes('\u00a0') || lower.includes('  ') ? lower.replace(/[\u00a0 ]+/g, ' ') : lower;
}

function scan({ byWord, begins }: Index, text: string): readonly Spoken[] {
  let made: Spoken[] | undefined;
  let at = 0;
  while (at < text.length) {
    if (!isWord(text, at)) {
      at += 1;
      continue;
    }
    let end = at + 1;
    while (isWord(text, end)) end += 1;
    const entry = begins[beginning(text, at)] === 1 ? entryAt(byWord, text, at, end) : undefined;
    if (entry === undefined) {
      at = end;
      continue;
    }
    const behind = at + entry.phrase.length;
    made ??= [];
    made.push({ ...entry, before: text.slice(0, at), after: text.slice(behind) });
    at = behind;
  }
  return made ?? NONE;
}

function entryAt(byWord: Index['byWord'], text: string, at: number, end: number): Entry | undefined {
  // The `water pump` of `raw-water pump` is none.
  if (text[at - 1] === '-' && isWord(text, at - 2)) return undefined;
  return byWord.get(text.slice(at, end))?.find((e) => standsAt(e.phrase, text, at));
}

function isWord(text: string, at: number): boolean {
  const c = text.charCodeAt(at);
  // Letters beyond ASCII belong to words; the sign of degree, the middle dot and the fractions between do not.
  return (c >= 97 && c <= 122) || (c >= 48 && c <= 57) || (c >= 65 && c <= 90) || c >= 0xc0;
}

function standsAt(phrase: string, text: string, at: number): boolean {
  if (!text.startsWith(phrase, at)) return false;
  let end = at + phrase.length;
  if (text.startsWith('es', end) && !isWord(text, end + 2)) end += 2;
  else if (text[end] === 's') end += 1;
  return !isWord(text, end) && !(text[end] === '-' && isWord(text, end + 1));
}

function indexOf(shop: ResolvedShop): Index {
  const known = indexes.get(shop);
  if (known !== undefined) return known;
  const entries = new Map<string, Entry>();
  const add = (kind: Entry['kind'], id: string, name: string, own = false): void => {
    const phrase = plain(name).trim();
    if (!isDistinctive(phrase) && !own) return;
    const entry = entries.get(phrase);
    if (entry === undefined) entries.set(phrase, { phrase, kind, ids: [id] });
    else if (entry.kind === kind && !entry.ids.includes(id)) entry.ids.push(id);
  };
  for (const t of shop.tools) for (const name of [t.name, ...t.alsoCalled]) add('tool', t.id, name);
  for (const c of shop.consumables) {
    // One long word is enough for the name of a substance: `isopropanol`.
    add('consumable', c.id, c.name, c.name.length >= 8);
    for (const name of c.alsoCalled) add('consumable', c.id, name);
  }
  const byWord = new Map<string, Entry[]>();
  const begins = new Uint8Array(65536);
  for (const entry of entries.values()) {
    const first = /^[a-z0-9\u00c0-\uffff]+/.exec(entry.phrase)?.[0];
    if (first === undefined) continue;
    begins[beginning(entry.phrase, 0)] = 1;
    const list = byWord.get(first);
    if (list === undefined) byWord.set(first, [entry]);
    else list.push(entry);
  }
  for (const list of byWord.values()) list.sort((a, b) => b.phrase.length - a.phrase.length);
  const index = { byWord, begins };
  indexes.set(shop, index);
  return index;
}

/** Several words, or one with a hyphen or a figure in it: `hammer` and `rule` are words of everyday. */
function isDistinctive(phrase: string): boolean {
  return phrase.length >= 5 && /[ \d-]/.test(phrase);
}

const NEGATION =
  /\b(?:no|not|never|nor|without|free of|clear of|instead of|rather than|in place of|than|unlike|like)\s(?:(?:with|in|by|use|using|as with)\s)?(?:(?!(?:with|in|by|and|but|then|on)\b)[a-z'-]+\s){0,2}$/;

/** `without machine oil`, `never with a wire brush`: named to be left away. */
export function isRefused({ before }: Spoken): boolean {
  return NEGATION.test(before);
}

/** The machine, or a part or joint of it, with the same words in its name is what the text means. */
export function isOfMachine({ phrase, before, after }: Spoken, machine: Machine | undefined): boolean {
  if (machine === undefined) return false;
  if (plain(machine.name).includes(phrase)) return true;
  const text = `${before}${phrase}${after}`;
  const names = [...machine.parts.map((p) => p.name), ...machine.joints.map((j) => j.plan.name)].map(plain);
  return names.some((name) => name.includes(phrase) && text.includes(name));
}
