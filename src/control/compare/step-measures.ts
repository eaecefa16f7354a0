/** Measurements of a matched step, and its blanks for things that are written down. */

import type { Measure } from '../../resolve/types.ts';
import { exchanged, paired } from './pairing.ts';
import { cut, evenBlanks, exchange, lowered, proseChange, sourceChange, textChange, valueChange } from './phrases.ts';
import { swapOf } from './step-lists.ts';
import type { PartResult, Scene, StepPair, Swap, Told } from './types.ts';

export function compareMeasures(scene: Scene, { older, newer }: StepPair): PartResult {
  const same = paired(older.measures, newer.measures, (m) => `${evenBlanks(m.what)} ${m.condition ?? ''}`);
  const alike = exchanged(same, (a, b) => a.unit === b.unit);
  const pairs = [...same.both, ...alike.both];
  const swaps = pairs.flatMap(([a, b]): readonly Swap[] =>
    a.tool === b.tool ? [] : [swapOf('tool', { id: a.tool, name: a.toolName }, { id: b.tool, name: b.toolName })],
  );
  const told = [
    ...pairs.flatMap(([a, b]) => compareMeasure(scene, a, b, swaps)),
    ...alike.added.map(
      (m): Told => ({ kind: 'added', of: 'limit', say: `measurement added: ${cut(brief(m))}`, after: brief(m) }),
    ),
    ...alike.removed.map(
      (m): Told => ({ kind: 'removed', of: 'limit', say: `measurement removed: ${cut(brief(m))}`, before: brief(m) }),
    ),
  ];
  const renamed = pairs.some(([a, b]) => scene.likeness(a.ifOut, b.ifOut, []) !== 'same');
  const relabelled = pairs.some(([a, b]) => a.toolName !== b.toolName);
  return { told, marks: told.length > 0 || renamed || relabelled ? ['measures'] : [], swaps };
}

/** `cover gap, 0.05 to 0.30 mm` */
function brief(m: Measure): string {
  return `${lowered(m.what)}, ${m.limitText}`;
}

function compareMeasure(scene: Scene, a: Measure, b: Measure, swaps: readonly Swap[]): readonly Told[] {
  const what = cut(lowered(b.what));
  const ifOut = scene.likeness(a.ifOut, b.ifOut, swaps) === 'different';
  return [
    ...valueChange('limit', `limit of ${what}`, a.limitText, b.limitText),
    ...textChange('limit', 'measurement', lowered(a.what), lowered(b.what)),
    ...valueChange('limit', `condition for ${what}`, a.condition ?? '', b.condition ?? ''),
    ...valueChange('limit', `places for ${what}`, a.at.join(', '), b.at.join(', ')),
    ...(ifOut ? proseChange('limit', `what to do when ${what} is out of its limit`, a.ifOut, b.ifOut) : []),
    ...valueChange('limit', `record of ${what}`, a.record ?? '', b.record ?? ''),
    ...sourceChange('limit', `source of the limit of ${what}`, a.source, b.source),
    ...(a.tool === b.tool
      ? []
      : [exchange('tool', { id: a.tool, name: a.toolName }, { id: b.tool, name: b.toolName })]),
  ];
}

/** Labels of blanks: one that went and one that came are the same blank with another label. */
export function compareRecords({ older, newer }: StepPair): PartResult {
  const same = paired(older.records, newer.records, evenBlanks);
  const single = same.removed.length === 1 && same.added.length === 1;
  const alike = exchanged(same, () => single);
  const told = [
    ...alike.both.flatMap(([a, b]) => textChange('step', 'record', a, b)),
    ...alike.added.flatMap((r) => valueChange('step', 'record', '', r)),
    ...alike.removed.flatMap((r) => valueChange('step', 'record', r, '')),
  ];
  return { told, marks: told.length > 0 ? ['records'] : [], swaps: [] };
}
