/** Parts of a job: what comes off, what goes back, what is bought loose and what in a kit. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type PartNeeds, partFlow, partNeeds } from '../../src/lists/index.ts';
import type { Fate } from '../../src/resolve/types.ts';
import { quantity } from '../../src/units/index.ts';

const off = (id: string, q: number, fate: Fate) => ({ id, name: id, quantity: q, fate });
const on = (id: string, q: number) => ({ id, name: id, quantity: q });
const steps = (...all: { remove?: ReturnType<typeof off>[]; fit?: ReturnType<typeof on>[] }[]) =>
  all.map(({ remove = [], fit = [] }, i) => ({ number: i + 1, remove, fit }));
const flowOf = (id: string, all: ReturnType<typeof steps>) => partFlow(all).find((f) => f.id === id);

describe('pieces followed through the steps', () => {
  test('eight screws come off, are inspected and go back: none is new', () => {
    const flow = flowOf('screw', steps({ remove: [off('screw', 8, 'inspect')] }, { fit: [on('screw', 8)] }));
    expect(flow).toMatchObject({ inspected: 8, fresh: 0, discarded: 0, reused: 0, steps: [1, 2] });
  });

  test('a gasket is thrown away and a new one fitted', () => {
    expect(
      flowOf('gasket', steps({ remove: [off('gasket', 1, 'discard')] }, { fit: [on('gasket', 1)] })),
    ).toMatchObject({ discarded: 1, fresh: 1 });
  });

  test('eight screws go back four at each end', () => {
    const both = steps({ remove: [off('screw', 8, 'reuse')] }, { fit: [on('screw', 4)] }, { fit: [on('screw', 4)] });
    expect(flowOf('screw', both)).toMatchObject({ reused: 8, fresh: 0 });
    const renewed = steps(
      { remove: [off('screw', 8, 'discard')] },
      { fit: [on('screw', 4)] },
      { fit: [on('screw', 4)] },
    );
    expect(flowOf('screw', renewed)).toMatchObject({ discarded: 8, fresh: 8 });
  });

  test('a new ring that is tried, taken out and fitted again is one ring', () => {
    const trial = steps({ fit: [on('ring', 1)] }, { remove: [off('ring', 1, 'reuse')] }, { fit: [on('ring', 1)] });
    expect(flowOf('ring', trial)).toMatchObject({ fresh: 1 });
  });

  test('what was not in the machine is new, each time', () => {
    expect(flowOf('shim', steps({ fit: [on('shim', 2)] }, { fit: [on('shim', 3)] }))).toMatchObject({ fresh: 5 });
  });

  test('random moves agree with a count of single pieces', () => {
    const move = fc.record({
      isFit: fc.boolean(),
      quantity: fc.integer({ min: 1, max: 6 }),
      fate: fc.constantFrom<Fate>('discard', 'inspect', 'reuse'),
    });
    fc.assert(
      fc.property(fc.array(move, { minLength: 1, maxLength: 12 }), fc.integer({ min: 6, max: 9 }), (moves, most) => {
        // The first move takes everything off, so that the machine is known to hold `most`.
        const all = steps(
          { remove: [off('x', most, 'reuse')] },
          ...moves.map((m) => (m.isFit ? { fit: [on('x', m.quantity)] } : { remove: [off('x', m.quantity, m.fate)] })),
        );
        let made = 0;
        const bench = Array.from({ length: most }, () => 'old');
        const machine: string[] = [];
        for (const m of moves) {
          for (let i = 0; i < m.quantity; i++) {
            if (m.isFit && machine.length < most) machine.push(bench.pop() ?? `new ${++made}`);
            const piece = m.isFit ? undefined : machine.pop();
            if (piece !== undefined && m.fate !== 'discard') bench.push(piece);
          }
        }
        expect(flowOf('x', all)?.fresh).toBe(made);
      }),
    );
  });
});

/** A cover with a kit of gasket, two washers and an O-ring that only some variants have; invented. */
const MACHINE = {
  parts: [
    { id: 'gasket', name: 'gasket', number: 'K-1', kit: 'Joint kit', quantity: 1, lead: quantity('time', 2, 'weeks') },
    { id: 'washer', name: 'washer', number: 'K-2', kit: 'Joint kit', quantity: 2, lead: quantity('time', 6, 'weeks') },
    { id: 'o-ring', name: 'O-ring', number: 'K-3', kit: 'Joint kit', quantity: 1 },
    { id: 'large-ring', name: 'large ring', kit: 'Joint kit', quantity: 1 },
    { id: 'anode', name: 'anode', number: 'A-1', quantity: 2 },
    { id: 'screw', name: 'screw', number: 'A-2', quantity: 8, rate: quantity('ratio', 10, '%') },
    { id: 'hub', name: 'hub', quantity: 1, madeOf: ['anode', 'screw'] },
  ],
};
const INVENTORY = ['gasket', 'washer', 'o-ring', 'anode', 'screw', 'hub'].map((id) => ({
  id,
  quantity: MACHINE.parts.find((p) => p.id === id)?.quantity ?? 0,
}));
const needsOf = (all: ReturnType<typeof steps>): PartNeeds =>
  partNeeds({ stages: [{ steps: all }], inventory: INVENTORY }, MACHINE);

describe('kits and loose parts', () => {
  const job = needsOf(
    steps(
      { remove: [off('gasket', 1, 'discard'), off('anode', 2, 'discard'), off('screw', 8, 'inspect')] },
      { fit: [on('gasket', 1), on('washer', 1), on('anode', 2), on('screw', 8)] },
    ),
  );

  test('a kit lists its contents, with what is left over and what no step fits', () => {
    expect(job.kits).toHaveLength(1);
    expect(job.kits[0]).toMatchObject({ name: 'Joint kit', quantity: 1, lead: { value: 6, unit: 'weeks' } });
    expect(job.kits[0]?.contents.map((c) => [c.id, c.inKit, c.used, c.leftOver, c.steps])).toEqual([
      ['gasket', 1, 1, 0, [1, 2]],
      ['washer', 2, 1, 1, [2]],
      ['o-ring', 1, 0, 1, []],
    ]);
  });

  test('loose parts are those in no kit; inspected ones are bought only by their share', () => {
    expect(job.loose.map((p) => [p.id, p.fresh])).toEqual([['anode', 2]]);
    expect(job.inspected.map((p) => [p.id, p.inspected, p.rate?.si])).toEqual([['screw', 8, 0.1]]);
    expect(job.reused).toEqual([]);
  });

  test('two kits where one does not hold enough', () => {
    const twice = needsOf(steps({ fit: [on('washer', 3)] }));
    expect(twice.kits.map((k) => k.quantity)).toEqual([2]);
    expect(twice.kits[0]?.contents.map((c) => c.leftOver)).toEqual([2, 1, 2]);
  });

  test('no kit is ordered for parts that go back', () => {
    const back = needsOf(steps({ remove: [off('gasket', 1, 'reuse')] }, { fit: [on('gasket', 1)] }));
    expect(back.kits).toEqual([]);
    expect(back.reused.map((p) => p.id)).toEqual(['gasket']);
  });

  test('a sub-assembly that is built in the procedure is not bought: its parts are', () => {
    const built = needsOf(steps({ fit: [on('anode', 2), on('screw', 8)] }, { fit: [on('hub', 1)] }));
    expect(built.loose.map((p) => [p.id, p.fresh])).toEqual([
      ['anode', 2],
      ['screw', 8],
    ]);
    expect(needsOf(steps({ fit: [on('hub', 1)] })).loose.map((p) => p.id)).toEqual(['hub']);
  });

  test('what is thrown away without a new one is named', () => {
    expect(needsOf(steps({ remove: [off('anode', 2, 'discard')] })).dropped.map((p) => p.id)).toEqual(['anode']);
  });

  test('no part is counted by kit and loose, and none gets lost', () => {
    const ids = INVENTORY.map((i) => i.id).filter((id) => id !== 'hub');
    const move = fc.tuple(fc.constantFrom(...ids), fc.integer({ min: 1, max: 3 }));
    fc.assert(
      fc.property(fc.array(move, { minLength: 1, maxLength: 10 }), (moves) => {
        const all = steps(...moves.map(([id, q]) => ({ fit: [on(id, q)] })));
        const { kits, loose } = needsOf(all);
        for (const { id, fresh } of partFlow(all)) {
          const inKits = kits.flatMap((k) => k.contents).filter((c) => c.id === id);
          const singly = loose.filter((p) => p.id === id);
          expect(inKits.length + singly.length, id).toBe(1);
          expect(inKits[0]?.used ?? singly[0]?.fresh).toBe(fresh);
          expect(inKits[0]?.leftOver ?? 0).toBeGreaterThanOrEqual(0);
        }
      }),
    );
  });
});
