/** Warnings of a matched step: added, removed, raised or lowered in level, reworded. */

import type { Signal, Warning } from '../../resolve/types.ts';
import { exchanged, paired } from './pairing.ts';
import { cut, proseText, valueChange } from './phrases.ts';
import { numberlessKey } from './texts.ts';
import type { PartResult, Scene, StepPair, Swap, Told } from './types.ts';

/** Most serious first. */
const LEVELS: readonly Signal[] = ['danger', 'warning', 'caution', 'notice'];

export function compareWarnings(scene: Scene, pair: StepPair, swaps: readonly Swap[]): PartResult {
  const key = (w: Warning): string => `${numberlessKey(w.hazard)}\n${numberlessKey(w.avoid)}`;
  const same = paired(pair.older.warnings, pair.newer.warnings, key);
  // What shares hazard or answer is the same warning in other words; so is the only one of both.
  const alike = exchanged(same, (a, b) => sharesHalf(a, b) || (same.removed.length === 1 && same.added.length === 1));
  const told: Told[] = [];
  let changed = false;
  for (const [older, newer] of [...same.both, ...alike.both]) {
    const words = [scene.likeness(older.hazard, newer.hazard, swaps), scene.likeness(older.avoid, newer.avoid, swaps)];
    const reworded = words.includes('different');
    if (reworded || older.level !== newer.level) told.push(changeOf(older, newer, reworded));
    if (words.some((w) => w !== 'same')) changed = true;
  }
  for (const w of alike.added) told.push(...valueChange('warning', w.level, '', warningText(w)));
  for (const w of alike.removed) told.push(...valueChange('warning', w.level, warningText(w), ''));
  return { told, marks: changed || told.length > 0 ? ['warnings'] : [], swaps: [] };
}

/** Hazard and what avoids it, one after the other. */
export function warningText(w: Warning): string {
  return `${proseText(w.hazard)} ${proseText(w.avoid)}`;
}

function sharesHalf(a: Warning, b: Warning): boolean {
  return numberlessKey(a.hazard) === numberlessKey(b.hazard) || numberlessKey(a.avoid) === numberlessKey(b.avoid);
}

function changeOf(older: Warning, newer: Warning, reworded: boolean): Told {
  const text = warningText(newer);
  if (older.level === newer.level) {
    const say = `${newer.level} reworded: ${cut(text)}`;
    return { kind: 'reworded', of: 'warning', say, before: warningText(older), after: text };
  }
  const way = LEVELS.indexOf(newer.level) < LEVELS.indexOf(older.level) ? 'raised' : 'lowered';
  return {
    kind: 'value',
    of: 'warning',
    say: `${older.level} ${way} to ${newer.level}${reworded ? ' and reworded' : ''}: ${cut(text)}`,
    before: `${older.level.toUpperCase()}: ${warningText(older)}`,
    after: `${newer.level.toUpperCase()}: ${text}`,
  };
}
