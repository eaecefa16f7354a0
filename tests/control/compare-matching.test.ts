/** Steps put in, taken out and moved at random are found as they were made; and the demo shop equals itself. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { compareEqual, compareIssues, type Side } from '../../src/control/compare/index.ts';
import { risingRows } from '../../src/control/compare/pairing.ts';
import { READ_FROM, type Step } from '../../src/resolve/index.ts';
import { demo } from '../cards/demo.ts';
import { miniSide, sideOf, stored } from './compare-sides.ts';

const BASE = miniSide();
const MODEL = BASE.document.variants[0]?.stages.find((s) => s.title === 'Close')?.steps[0];

/** A step with words of its own; `more` are added to them. */
interface Made {
  readonly id: number;
  readonly more?: string;
}

function textOf({ id, more = '' }: Made): string {
  return `alpha${id} beta${id} gamma${id} delta${id}${more}`;
}

/** The small shop's document with one card of one stage that holds these steps. */
function sideWith(made: readonly Made[]): Side {
  const [variant] = BASE.document.variants;
  const [stage] = variant?.stages ?? [];
  if (variant === undefined || stage === undefined || MODEL === undefined) throw new Error('the small shop has a step');
  const steps = made.map(
    (m, i): Step => ({
      ...{ number: i + 1, anchor: `step-${i + 1}`, text: [{ kind: 'paragraph', runs: [{ text: textOf(m) }] }] },
      ...{
        warnings: [],
        tools: [],
        consumables: [],
        remove: [],
        fit: [],
        reuse: [],
        release: [],
        prove: [],
        closeOut: [],
      },
      ...{ facing: [], measures: [], records: [], range: MODEL.range, [READ_FROM]: MODEL[READ_FROM] },
    }),
  );
  const one = { ...variant, key: '', label: '', stages: [{ ...stage, number: 1, steps }], joints: [], tools: [] };
  return {
    ...BASE,
    document: { ...BASE.document, variants: [{ ...one, consumables: [], parts: [], stepCount: steps.length }] },
  };
}

/** Length of the longest rising subsequence, the plain way. */
function longestRising(places: readonly number[]): number {
  const ends: number[] = [];
  for (const [i, place] of places.entries()) {
    ends.push(1 + Math.max(0, ...ends.filter((_, k) => k < i && (places[k] ?? 0) < place)));
  }
  return Math.max(0, ...ends);
}

/** A number of steps, the order of those kept, and where new ones stand among them. */
const EDITS = fc.integer({ min: 0, max: 30 }).chain((count) =>
  fc.record({
    count: fc.constant(count),
    order: fc.shuffledSubarray([...Array(count).keys()]),
    inserted: fc.array(fc.nat({ max: 40 }), { maxLength: 8 }),
    reworded: fc.uniqueArray(fc.nat({ max: Math.max(0, count - 1) }), { maxLength: 5 }),
  }),
);

describe('steps', () => {
  test('put in, taken out, moved, reworded: exactly these are told', () => {
    fc.assert(
      fc.property(EDITS, ({ count, order, inserted, reworded }) => {
        const older: readonly Made[] = [...Array(count).keys()].map((id) => ({ id }));
        const newer: Made[] = order.map((id) => (reworded.includes(id) ? { id, more: ' then epsilon' } : { id }));
        for (const [k, at] of inserted.entries()) newer.splice(Math.min(at, newer.length), 0, { id: 1000 + k });
        const { changes, marks } = compareIssues(sideWith(older), sideWith(newer));
        const of = (kind: string): typeof changes => changes.filter((c) => c.kind === kind);
        const numbers = (list: readonly (number | undefined)[]): readonly number[] =>
          list.filter((n) => n !== undefined).sort((a, b) => a - b);

        expect(numbers(of('added').map((c) => c.stepAfter))).toEqual(
          newer.flatMap((m, i) => (m.id >= 1000 ? [i + 1] : [])),
        );
        expect(numbers(of('removed').map((c) => c.stepBefore))).toEqual(
          older.flatMap((m, i) => (order.includes(m.id) ? [] : [i + 1])),
        );
        expect(numbers(of('reworded').map((c) => c.stepAfter))).toEqual(
          newer.flatMap((m, i) => (m.more === undefined ? [] : [i + 1])),
        );
        const moved = of('moved');
        expect(moved.length).toBe(order.length - longestRising(order));
        for (const m of moved) expect(newer[(m.stepAfter ?? 0) - 1]?.id).toBe((m.stepBefore ?? 0) - 1);
        const stayed = order.filter((id) => !moved.some((m) => m.stepBefore === id + 1));
        expect(stayed).toEqual([...stayed].sort((a, b) => a - b));
        expect(changes.length).toBe(
          ['added', 'removed', 'reworded', 'moved'].reduce((n, kind) => n + of(kind).length, 0),
        );
        // Only what is new or reads otherwise has a bar.
        expect(Object.keys(marks[''] ?? {}).map(Number)).toEqual(
          newer.flatMap((m, i) => (m.id >= 1000 || m.more !== undefined ? [i + 1] : [])),
        );
      }),
      { numRuns: 300 },
    );
  });

  test('repeated steps keep their order', () => {
    const twice: readonly Made[] = [{ id: 1 }, { id: 2 }, { id: 1 }, { id: 3 }, { id: 1 }];
    const { changes } = compareIssues(sideWith(twice), sideWith([{ id: 1 }, { id: 9 }, ...twice.slice(1)]));
    expect(changes.map((c) => c.words)).toEqual([`New step 2: ${textOf({ id: 9 })}`]);
  });

  test('an exchange of two neighbours is one move', () => {
    const { changes } = compareIssues(
      sideWith([{ id: 1 }, { id: 2 }, { id: 3 }]),
      sideWith([{ id: 2 }, { id: 1 }, { id: 3 }]),
    );
    expect(changes.map((c) => c.kind)).toEqual(['moved']);
  });

  test('a step that keeps its number while all others turn round it is not the one that moved', () => {
    const { changes } = compareIssues(
      sideWith([{ id: 1 }, { id: 2 }, { id: 3 }]),
      sideWith([{ id: 3 }, { id: 2 }, { id: 1 }]),
    );
    expect(changes.map((c) => c.words)).toEqual(['Step 3 is now step 1', 'Step 1 is now step 3']);
  });

  test('another step in the same place is a removal and a new step', () => {
    const { changes } = compareIssues(
      sideWith([{ id: 1 }, { id: 2 }, { id: 3 }]),
      sideWith([{ id: 1 }, { id: 7 }, { id: 3 }]),
    );
    expect(changes.map((c) => c.kind)).toEqual(['added', 'removed']);
  });

  test('a long card is compared in little time', () => {
    const older = sideWith([...Array(80).keys()].map((id) => ({ id })));
    const newer = sideWith([...Array(80).keys()].reverse().map((id) => ({ id, more: ' then epsilon' })));
    compareIssues(older, newer);
    const begin = process.cpuUsage();
    compareIssues(older, newer);
    expect(process.cpuUsage(begin).user).toBeLessThan(500_000);
  });

  test('the rows that stay are rising and of the greatest weight', () => {
    const places = fc.uniqueArray(fc.nat({ max: 50 }), { maxLength: 9 });
    fc.assert(
      fc.property(places, (rows) => {
        const stays = risingRows(rows);
        const kept = rows.filter((_, i) => stays[i]);
        expect(kept).toEqual([...kept].sort((a, b) => a - b));
        expect(kept.length).toBe(longestRising(rows));
      }),
    );
    expect(risingRows([1, 0], undefined, (row) => (row === 0 ? 5 : 2))).toEqual([true, false]);
  });
});

describe('the demo shop', () => {
  const { shop } = demo();

  test.each(shop.documents.map((d) => d.doc))('%s equals what a file gives back of it', (doc) => {
    const side = sideOf(shop, doc);
    const back = stored(side);
    expect(compareIssues(side, back)).toMatchObject({ changes: [], marks: {} });
    expect(compareIssues(back, side)).toMatchObject({ changes: [], marks: {} });
    expect(compareEqual(side, back)).toBe(true);
  });
});
