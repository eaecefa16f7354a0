/** What a step is known by when it is matched with the steps of another issue. */

import type { Step } from '../../resolve/types.ts';
import { evenBlanks, proseText } from './phrases.ts';
import { numberlessKey } from './texts.ts';

/** Most steps are found by what they say as a whole: the rest is worked out when it is asked for. */
export class Sketch {
  /** Everything that it says, numbers of steps apart. */
  readonly content: string;
  readonly #step: Step;
  #words: string | undefined;
  #terms: ReadonlySet<string> | undefined;
  #features: ReadonlySet<string> | undefined;

  constructor(step: Step) {
    this.#step = step;
    this.content = meaning(step);
  }

  /** Its do-text, numbers of steps apart. */
  get words(): string {
    this.#words ??= numberlessKey(this.#step.text);
    return this.#words;
  }

  /** Words of the do-text that tell something. */
  get terms(): ReadonlySet<string> {
    this.#terms ??= termsOf(proseText(this.#step.text));
    return this.#terms;
  }

  /** Joint, parts, tools, measurements. */
  get features(): ReadonlySet<string> {
    this.#features ??= featuresOf(this.#step);
    return this.#features;
  }
}

/** Words that stand in every sentence. */
const COMMON = new Set(
  'a an the of to in on at by for from with and or as is are be it its this that each all both until when then into'.split(
    ' ',
  ),
);

/** How much words and features weigh. */
const WORDS_WEIGH = 0.6;
/** Likeness of two steps that tighten, or loosen, the same joint: there is mostly one such step. */
const SAME_JOINT = 0.6;

/** Fields that are numbers, places, or set when an issue is published. */
const LEFT_OUT = new Set(['number', 'anchor', 'range', 'label', 'marks', 'temporary']);
const PROSE = new Set(['text', 'note', 'hazard', 'avoid', 'ifOut']);

/** JSON with sorted keys: a snapshot has its keys in another order than the draft. */
function meaning(value: unknown, key = ''): string {
  if (PROSE.has(key) && Array.isArray(value)) return JSON.stringify(numberlessKey(value));
  if (Array.isArray(value)) return `[${value.map((v) => meaning(v)).join(',')}]`;
  if (typeof value === 'object' && value !== null) {
    const fields = Object.entries(value)
      .filter(([k, v]) => v !== undefined && !LEFT_OUT.has(k))
      .sort(([a], [b]) => (a < b ? -1 : 1));
    return `{${fields.map(([k, v]) => `${k}:${meaning(v, k)}`).join(',')}}`;
  }
  return typeof value === 'string' ? JSON.stringify(evenBlanks(value)) : String(value);
}

/**
 * Whether two values surely say the same: what `meaning` compares, without writing it. A text that names a step by
 * another number, or whose runs are cut otherwise, counts as different; for these there is the sketch.
 */
export function saysTheSame(a: unknown, b: unknown): boolean {
  if (a === b) return true;
  if (typeof a === 'string') return typeof b === 'string' && evenBlanks(a) === evenBlanks(b);
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return false;
  if (Array.isArray(a) || Array.isArray(b)) {
    return Array.isArray(a) && Array.isArray(b) && a.length === b.length && a.every((v, i) => saysTheSame(v, b[i]));
  }
  return sameFields(new Map(Object.entries(a)), new Map(Object.entries(b)));
}

function sameFields(a: ReadonlyMap<string, unknown>, b: ReadonlyMap<string, unknown>): boolean {
  const fields = new Set([...a.keys(), ...b.keys()]);
  for (const key of fields) {
    if (!LEFT_OUT.has(key) && !saysTheSame(a.get(key), b.get(key))) return false;
  }
  return true;
}

function termsOf(text: string): ReadonlySet<string> {
  const words = text.toLocaleLowerCase('en').match(/[\p{L}\p{N}]+/gu) ?? [];
  return new Set(words.filter((w) => !COMMON.has(w)));
}

function featuresOf(step: Step): ReadonlySet<string> {
  return new Set([
    ...(step.tighten === undefined ? [] : [`tighten ${step.tighten}`]),
    ...(step.loosen === undefined ? [] : [`loosen ${step.loosen}`]),
    ...step.remove.map((p) => `remove ${p.id}`),
    ...step.fit.map((p) => `fit ${p.id}`),
    ...step.tools.map((id) => `tool ${id}`),
    ...step.consumables.map((c) => `consumable ${c.id}`),
    ...step.measures.map((m) => `measure ${m.what}`),
    ...step.release.map((e) => `release ${e}`),
    ...step.prove.map((e) => `prove ${e}`),
    ...step.closeOut.map((c) => `close out ${c}`),
    ...step.records.map((r) => `record ${r}`),
  ]);
}

/** 0 for nothing in common, 1 for the same words and features. */
export function similarity(a: Sketch, b: Sketch): number {
  const words = dice(a.terms, b.terms);
  if (a.features.size === 0 && b.features.size === 0) return words;
  const both = WORDS_WEIGH * words + (1 - WORDS_WEIGH) * dice(a.features, b.features);
  return sameJoint(a, b) ? Math.max(both, SAME_JOINT) : both;
}

function sameJoint(a: Sketch, b: Sketch): boolean {
  return [...a.features].some((f) => /^(?:tighten|loosen) /.test(f) && b.features.has(f));
}

/** Shared members by the mean size of both sets. Source: L. R. Dice, Ecology 26 (1945), 297. */
function dice(a: ReadonlySet<string>, b: ReadonlySet<string>): number {
  if (a.size === 0 || b.size === 0) return 0;
  let shared = 0;
  for (const word of a) if (b.has(word)) shared += 1;
  return (2 * shared) / (a.size + b.size);
}
