/** Slips in what consumables say of themselves, and rubber that meets what it does not stand. */

import { over, slip } from './edit.ts';
import type { Kind } from './kind.ts';
import { lose, stepsWithout, without } from './make.ts';
import { partsIn } from './scene.ts';
import { mapAt, scalarAt, wordsAt } from './sheet.ts';

const CHEMICAL = ['lubricant', 'anti-seize', 'threadlocker', 'sealant', 'cleaner', 'fluid', 'adhesive'];

/** What the tables of seal makers rule out throughout (memory): EPDM in mineral oil or spirits, nitrile in ketones. */
const RUINS: Readonly<Record<string, readonly string[]>> = {
  EPDM: ['machine-oil', 'bearing-grease', 'marine-grease', 'hydraulic-oil', 'mineral-spirits', 'molybdenum-paste'],
};

export const CONSUMABLES: readonly Kind[] = [
  {
    name: 'safety data lost from a consumable',
    checks: ['CSM001'],
    // A clean wipe or a roll of tape harms nobody: of chemicals, or of what states a hazard.
    sites: lose(({ consumablesUsed }) =>
      without(
        consumablesUsed.filter((e) => CHEMICAL.includes(wordsAt(e.map, 'kind')) || e.map.has('hazards')),
        'safety_data',
      ),
    ),
  },
  {
    name: 'shelf life lost',
    checks: ['CSM002'],
    sites: lose(({ consumablesUsed }) =>
      without(
        consumablesUsed.filter((e) => ['threadlocker', 'sealant', 'adhesive'].includes(wordsAt(e.map, 'kind'))),
        'shelf_life',
      ),
    ),
  },
  {
    name: 'disposal lost from a chemical',
    checks: ['CSM006'],
    sites: lose(({ consumablesUsed }) =>
      without(
        consumablesUsed.filter((e) => CHEMICAL.includes(wordsAt(e.map, 'kind'))),
        'waste',
      ),
    ),
  },
  {
    name: 'oil or spirit on a seal that it ruins',
    checks: ['CSM003'],
    sites: ({ steps, parts }) =>
      steps.flatMap((s) => {
        const rubbers = [...partsIn(s.map, 'fit'), ...partsIn(s.map, 'remove')].map((id) => {
          const part = parts.find((p) => p.id === id);
          return part === undefined ? '' : wordsAt(part.map, 'elastomer');
        });
        const ruin = rubbers.flatMap((r) => RUINS[r] ?? []);
        const lubricate = mapAt(s.map, 'lubricate');
        const scalar = lubricate === undefined ? undefined : scalarAt(lubricate, 'with');
        if (ruin.length === 0) return [];
        if (scalar !== undefined) return ruin.map((id) => () => slip(s.sheet, [over(s.sheet, scalar, id)], [id]));
        if (!s.map.has('fit') || s.map.has('use')) return [];
        const range = (mapAt(s.map, 'fit') ?? s.map.get('fit', true)) as { range?: [number, number, number] | null };
        const at = s.sheet.text.indexOf('\n', (range.range?.[1] ?? 1) - 1) + 1;
        const indent = ' '.repeat(column(s));
        return ruin.map((id) => () => slip(s.sheet, [{ start: at, end: at, put: `${indent}use: [${id}]\n` }], [id]));
      }),
  },
  {
    name: 'wait for a cure lost',
    checks: ['CSM004'],
    sites: (scene) => {
      const curing = scene.consumablesUsed.filter((e) => e.map.has('cure')).map((e) => e.id);
      const first = scene.steps.findIndex((s) => curing.some((id) => String(s.map).includes(id)));
      if (first < 0) return [];
      // Of the waits that reach the cure time only when all are there: a short wait for another reason is no cure.
      const waits = scene.steps.slice(first).filter((s) => {
        const wait = mapAt(s.map, 'wait');
        return wait !== undefined && /\bh$/.test(wordsAt(wait, 'for'));
      });
      return lose(() => stepsWithout(waits, 'wait').map((l) => ({ ...l, names: curing })))(scene);
    },
  },
  {
    name: 'wait for a cure in minutes instead of hours',
    checks: ['CSM004'],
    sites: (scene) => {
      const curing = scene.consumablesUsed.filter((e) => e.map.has('cure')).map((e) => e.id);
      const first = scene.steps.findIndex((s) => curing.some((id) => String(s.map).includes(id)));
      if (first < 0) return [];
      return scene.steps.slice(first).flatMap((s) => {
        const wait = mapAt(s.map, 'wait');
        const scalar = wait === undefined ? undefined : scalarAt(wait, 'for');
        const value = scalar === undefined ? '' : String(scalar.value);
        if (scalar === undefined || !/\bh$/.test(value)) return [];
        return [() => slip(s.sheet, [over(s.sheet, scalar, value.replace(/h$/, 'min'))], curing)];
      });
    },
  },
];

function column(s: { sheet: { text: string }; map: { range?: [number, number, number] | null | undefined } }): number {
  const at = s.map.range?.[0] ?? 0;
  return at - (s.sheet.text.lastIndexOf('\n', at - 1) + 1);
}
