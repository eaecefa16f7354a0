/** What rounds leave: closed forms for a rigid flange, plain superposition, loose bolts, and many passes. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { interactionMatrix, jointCompliance } from '../../src/torque/interaction.ts';
import { predictRounds, type RoundPrediction } from '../../src/torque/interaction-rounds.ts';
import type { Matrix } from '../../src/torque/interaction-solve.ts';
import { defaultStack } from '../../src/torque/interaction-stack.ts';
import { evenPositions } from './even-positions.ts';

const STAR = [1, 5, 3, 7, 2, 6, 4, 8];
const ROUND = [1, 2, 3, 4, 5, 6, 7, 8];
const LINE = 180 * Math.PI;
const stack = (kind: 'metal to metal' | 'sheet gasket' | 'rubber gasket') =>
  defaultStack({ diameterMm: 16, stressAreaMm2: 157 }, kind, LINE / 8);
const joint = (kind: 'metal to metal' | 'sheet gasket' | 'rubber gasket') =>
  jointCompliance(evenPositions(8, LINE), LINE, stack(kind));
const kinds = fc.constantFrom('metal to metal', 'sheet gasket', 'rubber gasket');

function last(rounds: readonly RoundPrediction[]): RoundPrediction {
  const round = rounds.at(-1);
  if (round === undefined) throw new Error('no round');
  return round;
}

/** n bolts of unit stiffness between rigid flanges on a gasket of stiffness 1/r: every bolt feels every other alike. */
const rigid = (n: number, r: number): Matrix =>
  Array.from({ length: n }, (_, i) => Array.from({ length: n }, (__, j) => r + (i === j ? 1 : 0)));

describe('rigid flanges, once round: closed forms', () => {
  test('bolt i keeps 1 - the sum over later bolts m of r/(1 + (m - 1) r) while it keeps anything', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 12 }), fc.double({ min: 0, max: 0.3, noNaN: true }), (n, r) => {
        const order = Array.from({ length: n }, (_, i) => i + 1);
        const { preload } = last(predictRounds(rigid(n, r), [{ share: 1, order }]));
        const expected = order.map((i) => {
          let left = 1;
          for (let m = i + 1; m <= n; m++) left -= r / (1 + (m - 1) * r);
          return left;
        });
        fc.pre(expected.every((left) => left > 0));
        for (const [i, left] of expected.entries()) expect(preload[i]).toBeCloseTo(left, 9);
      }),
    );
  });

  test('three bolts on a soft gasket: from r = (1 + √5)/2 the first goes loose and the second keeps (1 + 2r)/(1 + r)²', () => {
    const keeps = (r: number) => last(predictRounds(rigid(3, r), [{ share: 1, order: [1, 2, 3] }])).preload;
    for (const r of [1.7, 3, 20]) {
      expect(keeps(r)[0]).toBe(0);
      expect(keeps(r)[1]).toBeCloseTo((1 + 2 * r) / (1 + r) ** 2, 9);
      expect(keeps(r)[2]).toBeCloseTo(1, 12);
    }
    const golden = (1 + Math.sqrt(5)) / 2;
    expect(keeps(golden - 1e-3)[0]).toBeGreaterThan(0);
    expect(keeps(golden + 1e-3)[0]).toBe(0);
  });

  test('a loose nut follows its gap when its turn comes again', () => {
    const [first, second] = predictRounds(rigid(3, 3), [
      { share: 1, order: [1, 2, 3] },
      { share: 1, order: [1] },
    ]);
    expect(first?.preload[0]).toBe(0);
    expect(second?.preload[0]).toBeCloseTo(1, 12);
    expect(second?.turned).toBe(1);
    expect(second?.preload[2]).toBeLessThan(1);
  });

  test('only the nut under the wrench turns: a loose one beside it stands still though its gap grows', () => {
    const [, second] = predictRounds(rigid(3, 3), [
      { share: 1, order: [1, 2, 3] },
      { share: 1, order: [2] },
    ]);
    expect(second?.preload[0]).toBe(0);
    expect(second?.turned).toBe(1);
  });

  test('all at the same moment reach the target together, whatever the gasket', () => {
    const moment = Array.from({ length: 6 }, (_, i) => i + 1);
    const { preload, scatter } = last(predictRounds(rigid(6, 50), [{ share: 1, order: [moment] }]));
    for (const value of preload) expect(value).toBeCloseTo(1, 12);
    expect(scatter).toBeCloseTo(0, 12);
  });
});

describe('single steps', () => {
  test('while all bolts stay tight a step is plain superposition: F + A (share - F)', () => {
    fc.assert(
      fc.property(fc.constantFrom('metal to metal', 'sheet gasket'), fc.integer({ min: 1, max: 8 }), (kind, hole) => {
        const a = interactionMatrix(evenPositions(8, LINE), LINE, stack(kind));
        const before = predictRounds(joint(kind), [{ share: 0.7, order: STAR }]);
        const after = predictRounds(joint(kind), [
          { share: 0.7, order: STAR },
          { share: 1, order: [hole] },
        ]);
        const rise = 1 - (last(before).preload[hole - 1] ?? Number.NaN);
        for (const [j, value] of last(after).preload.entries()) {
          const expected = (last(before).preload[j] ?? Number.NaN) + rise * (a[hole - 1]?.[j] ?? Number.NaN);
          expect(value).toBeCloseTo(expected, 9);
        }
      }),
    );
  });

  test('a wrench that clicks at once turns nothing: a lower round after a full one changes nothing', () => {
    const [full, lower] = predictRounds(joint('metal to metal'), [
      { share: 1, order: STAR },
      { share: 0.7, order: ROUND },
    ]);
    expect(lower?.preload).toEqual(full?.preload);
    expect(lower?.turned).toBe(0);
    expect(full?.turned).toBe(8);
  });

  test('of two tightened at one moment, one that the other would bring below the share turns too', () => {
    // Bolt 1 stands a little above the share alone; its neighbour takes more than that from it.
    const after = predictRounds(rigid(2, 1), [
      { share: 1.1, order: [1] },
      { share: 1, order: [[1, 2]] },
    ]);
    for (const value of last(after).preload) expect(value).toBeCloseTo(1, 12);
  });

  test('two opposite tools leave opposite bolts alike', () => {
    const { preload } = last(
      predictRounds(joint('rubber gasket'), [
        {
          share: 1,
          order: [
            [1, 5],
            [3, 7],
            [2, 6],
            [4, 8],
          ],
        },
      ]),
    );
    for (let i = 0; i < 4; i++) expect(preload[i]).toBeCloseTo(preload[i + 4] ?? Number.NaN, 9);
  });

  test('nuts only run down by hand: loose beside a tight bolt, and further off no more than the endless beam lifts', () => {
    const { preload } = last(predictRounds(joint('sheet gasket'), [{ share: 1, order: [1, 5] }]));
    for (const hole of [2, 4, 6, 8]) expect(preload[hole - 1]).toBe(0);
    // The endless beam rises at most e^-pi = 4.3 % of its dip (at beta x = pi); two bolts lift bolts 3 and 7.
    for (const hole of [3, 7]) expect(preload[hole - 1]).toBeLessThan(2 * Math.exp(-Math.PI));
  });

  test('creep takes its share between rounds and none after the last', () => {
    const round = { share: 1, order: STAR };
    const one = last(predictRounds(joint('sheet gasket'), [round], { creepShare: 0.2 })).preload;
    expect(one).toEqual(last(predictRounds(joint('sheet gasket'), [round])).preload);
    // A second round that touches only bolt 1 where nothing interacts: the others show what creep left.
    const metal = joint('metal to metal');
    const two = last(predictRounds(metal, [round, { share: 1, order: [1] }], { creepShare: 0.2 })).preload;
    expect(two[0]).toBeCloseTo(1, 9);
    expect(two[4]).toBeCloseTo(0.8, 3);
  });

  test('least, mean, most and scatter are those of the preloads', () => {
    const { preload, least, mean, most, scatter } = last(
      predictRounds(joint('rubber gasket'), [{ share: 1, order: STAR }]),
    );
    const sorted = [...preload].sort((a, b) => a - b);
    expect([least, most]).toEqual([sorted[0], sorted[7]]);
    expect(mean * 8).toBeCloseTo(
      preload.reduce((s, v) => s + v, 0),
      12,
    );
    expect((1 + scatter) / (1 - scatter)).toBeCloseTo(most / least, 9);
  });
});

describe('what rounds and passes are for', () => {
  const passes = (n: number) => Array.from({ length: n }, () => ({ share: 1, order: ROUND }));

  test('after the star, every pass round the circle brings the least loaded bolt up and the scatter down', () => {
    for (const kind of ['sheet gasket', 'rubber gasket'] as const) {
      const rounds = predictRounds(joint(kind), [{ share: 1, order: STAR }, ...passes(4)]);
      for (const [i, round] of rounds.entries()) {
        expect(round.least).toBeGreaterThanOrEqual((rounds[i - 1]?.least ?? 0) - 1e-9);
        expect(round.scatter).toBeLessThanOrEqual((rounds[i - 1]?.scatter ?? 1) + 1e-9);
      }
    }
  });

  test('many passes end where no nut turns and no bolt is below its target', () => {
    fc.assert(
      fc.property(kinds, fc.shuffledSubarray(ROUND, { minLength: 8 }), (kind, order) => {
        const end = last(predictRounds(joint(kind), [{ share: 1, order }, ...passes(40)]));
        expect(end.turned).toBe(0);
        expect(end.least).toBeGreaterThan(1 - 1e-4);
      }),
      { numRuns: 40 },
    );
  });

  test('rounds of 30 and 70 % leave less scatter than one at full torque in the same order', () => {
    for (const kind of ['sheet gasket', 'rubber gasket'] as const) {
      const once = last(predictRounds(joint(kind), [{ share: 1, order: STAR }]));
      const thrice = last(
        predictRounds(
          joint(kind),
          [0.3, 0.7, 1].map((share) => ({ share, order: STAR })),
        ),
      );
      expect(thrice.scatter).toBeLessThan(0.7 * once.scatter);
      expect(thrice.least).toBeGreaterThan(once.least);
    }
  });

  test('all at 100 % is a fixed point: another pass leaves it as it is', () => {
    fc.assert(
      fc.property(kinds, fc.shuffledSubarray(ROUND, { minLength: 8 }), (kind, order) => {
        const rounds = [
          { share: 1, order: [ROUND] },
          { share: 1, order },
        ];
        const end = last(predictRounds(joint(kind), rounds));
        for (const value of end.preload) expect(value).toBeCloseTo(1, 9);
        expect(end.turned).toBe(0);
      }),
    );
  });
});

describe('what holds for any order and rounds', () => {
  const plans = fc.array(
    fc.record({
      share: fc.double({ min: 0.05, max: 1, noNaN: true }),
      order: fc.shuffledSubarray(ROUND, { minLength: 1 }),
    }),
    { minLength: 1, maxLength: 5 },
  );

  test('no preload below zero; the bolt tightened last reads its share or more', () => {
    fc.assert(
      fc.property(kinds, plans, (kind, plan) => {
        for (const [i, { preload }] of predictRounds(joint(kind), plan).entries()) {
          for (const value of preload) expect(value).toBeGreaterThanOrEqual(0);
          const { share = 0, order = [] } = plan[i] ?? {};
          expect(preload[(order.at(-1) ?? 0) - 1]).toBeGreaterThanOrEqual(share - 1e-9);
        }
      }),
    );
  });

  test('numbering from another hole turns the answer with it', () => {
    fc.assert(
      fc.property(kinds, plans, fc.integer({ min: 1, max: 7 }), (kind, plan, shift) => {
        const moved = plan.map(({ share, order }) => ({ share, order: order.map((h) => ((h - 1 + shift) % 8) + 1) }));
        const [a, b] = [last(predictRounds(joint(kind), plan)), last(predictRounds(joint(kind), moved))];
        for (const [i, value] of a.preload.entries())
          expect(value).toBeCloseTo(b.preload[(i + shift) % 8] ?? Number.NaN, 7);
      }),
    );
  });

  test('half the shares leave half the preloads, and the unit of the compliance does not matter', () => {
    fc.assert(
      fc.property(kinds, plans, (kind, plan) => {
        const half = plan.map(({ share, order }) => ({ share: share / 2, order }));
        const metres = joint(kind).map((row) => row.map((value) => value / 1000));
        const [a, b] = [last(predictRounds(joint(kind), plan)), last(predictRounds(metres, half))];
        for (const [i, value] of a.preload.entries()) expect(value / 2).toBeCloseTo(b.preload[i] ?? Number.NaN, 7);
      }),
    );
  });
});

test.each([
  [[], {}],
  [[{ share: 0, order: [1] }], {}],
  [[{ share: Number.NaN, order: [1] }], {}],
  [[{ share: Number.POSITIVE_INFINITY, order: [1] }], {}],
  [[{ share: 1, order: [0] }], {}],
  [[{ share: 1, order: [9] }], {}],
  [[{ share: 1, order: [1.5] }], {}],
  [[{ share: 1, order: [[1, 1]] }], {}],
  [[{ share: 1, order: [[]] }], {}],
  [[{ share: 1, order: [1] }], { creepShare: 1 }],
  [[{ share: 1, order: [1] }], { creepShare: -0.1 }],
  [[{ share: 1, order: [1] }], { creepShare: Number.NaN }],
])('throws on rounds %j with %j', (rounds, options) => {
  expect(() => predictRounds(joint('sheet gasket'), rounds, options)).toThrow(RangeError);
});
