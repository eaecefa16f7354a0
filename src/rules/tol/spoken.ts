/** Names of tools and consumables that stand in a text as plain words, not as references. */

import type { Machine, Prose, ResolvedShop } from '../../resolve/index.ts';

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

/** Longest phrases first, by their first word. */
type Index = ReadonlyMap<string, readonly Entry[]>;

const indexes = new WeakMap<ResolvedShop, Index>();
const found = new WeakMap<ResolvedShop, WeakMap<Prose, readonly Spoken[]>>();
const NONE: readonly Spoken[] = [];

/** What the text names in plain words; one scan serves both registers. */
export function spokenIn(shop: ResolvedShop, prose: Prose): readonly Spoken[] {
  let known = found.get(shop);
  if (known === undefined) {
    known = new WeakMap();
    found.set(shop, known);
  }
  const before = known.get(prose);
  if (before !== undefined) return before;
  const made = scan(indexOf(shop), plainWords(prose));
  known.set(prose, made);
  return made;
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
  return text.toLowerCase().replace(/[\u00a0 ]+/g, ' ');
}

function scan(index: Index, text: string): readonly Spoken[] {
  let made: Spoken[] | undefined;
  let at = 0;
  while (at < text.length) {
    if (!isWord(text, at)) {
      at += 1;
      continue;
    }
    let end = at + 1;
    while (isWord(text, end)) end += 1;
    // The `water pump` of `raw-water pump` is none.
    const inCompound = text[at - 1] === '-' && isWord(text, at - 2);
    const entry = inCompound ? undefined : index.get(text.slice(at, end))?.find((e) => standsAt(e.phrase, text, at));
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

function isWord(text: string, at: number): boolean {
  const c = text.charCodeAt(at);
  // Letters beyond ASCII belong to words; the sign of degree, the middle dot and the fractions between do not.
  return (c >= 97 && c <= 122) || (c >= 48 && c <= 57) || c >= 0xc0;
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
  const index = new Map<string, Entry[]>();
  for (const entry of entries.values()) {
    const first = /^[a-z0-9\u00c0-\uffff]+/.exec(entry.phrase)?.[0];
    if (first === undefined) continue;
    const list = index.get(first);
    if (list === undefined) index.set(first, [entry]);
    else list.push(entry);
  }
  for (const list of index.values()) list.sort((a, b) => b.phrase.length - a.phrase.length);
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
