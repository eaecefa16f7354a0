/** Texts by their meaning: printed words and what references stand for; styles and blanks do not count. */

import type { Prose, Run } from '../../resolve/types.ts';
import { evenBlanks } from './phrases.ts';
import type { Likeness, Swap } from './types.ts';

/** What a reference is read as: its key `tool:feeler` and its words. */
type Reading = (key: string, words: string) => readonly [string, string];

const STEP_ANCHOR = /^step-(\d+)$/;

/** Words and references of a text as one line, for comparing. */
export function proseKey(prose: Prose, read: Reading = (key, words) => [key, words]): string {
  return prose
    .map((p) => `${p.kind === 'item' ? '* ' : ''}${evenBlanks(p.runs.map((run) => runKey(run, read)).join(''))}`)
    .join('\n');
}

function runKey(run: Run, read: Reading): string {
  if (run.ref !== undefined) {
    const [key, words] = read(`${run.ref.kind}:${run.ref.id}`, run.text);
    return `<${key}|${words}>`;
  }
  return run.href === undefined ? run.text : `<${run.href}|${run.text}>`;
}

/** Number of the step that a reference `step:step-12` means. */
function stepNumber(key: string): number | undefined {
  if (!key.startsWith('step:')) return undefined;
  const number = STEP_ANCHOR.exec(key.slice('step:'.length))?.[1];
  return number === undefined ? undefined : Number(number);
}

/** A step is called by its number unless the author gave the reference words of its own. */
function callsByNumber(words: string, number: number): boolean {
  return evenBlanks(words) === `step ${number}`;
}

/** A key in which references to steps have no numbers, for matching steps before their numbers are known. */
export function numberlessKey(prose: Prose): string {
  return proseKey(prose, (key, words) => {
    const number = stepNumber(key);
    return number === undefined ? [key, words] : ['step', callsByNumber(words, number) ? 'step' : words];
  });
}

/** Numbers of the steps that a text refers to. */
export function stepsNamed(prose: Prose): readonly number[] {
  return prose.flatMap((p) =>
    p.runs.flatMap((run) => {
      const number = run.ref === undefined ? undefined : stepNumber(`${run.ref.kind}:${run.ref.id}`);
      return number === undefined ? [] : [number];
    }),
  );
}

/**
 * Compares two texts. A reference to a step means the same when that step is still the one meant, whatever its number.
 * swaps: exchanged or renamed things, which are reported where they are exchanged or renamed.
 */
export function likeness(
  older: Prose,
  newer: Prose,
  nowAt: (number: number) => number | undefined,
  swaps: readonly Swap[],
): Likeness {
  const renumbered: Reading = (key, words) => {
    const number = stepNumber(key);
    const now = number === undefined ? undefined : nowAt(number);
    if (number === undefined) return [key, words];
    return now === undefined
      ? ['step:gone', words]
      : [`step:step-${now}`, callsByNumber(words, number) ? `step ${now}` : words];
  };
  const plain: Reading = (key, words) => [key, stepNumber(key) === undefined ? words : evenBlanks(words)];
  const now = proseKey(newer, plain);
  if (proseKey(older, renumbered) === now) return 'same';
  if (swaps.length === 0) return 'different';
  const swapped: Reading = (key, words) => {
    const swap = swaps.find((s) => s.from === key);
    if (swap === undefined) return renumbered(key, words);
    return [swap.to, words === swap.before ? swap.after : words];
  };
  return proseKey(older, swapped) === now ? 'names' : 'different';
}
