/** Labour, waiting and elapsed time. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { timesOf } from '../../src/lists/index.ts';
import { quantity } from '../../src/units/index.ts';

const minutes = (n: number) => quantity('time', n, 'min');
let number = 0;
const step = (time?: number, wait?: number) => {
  number += 1;
  return {
    number,
    anchor: `step-${number}`,
    ...(time === undefined ? {} : { time: minutes(time) }),
    ...(wait === undefined ? {} : { wait: { time: minutes(wait), why: 'it cures' } }),
  };
};

describe('times', () => {
  test('a worked example: two people, 60 min stated for a stage, 10 + 5 min for steps, 15 + 30 min of waiting', () => {
    number = 0;
    const times = timesOf(
      [
        { number: 1, title: 'Strip', time: minutes(60), steps: [step(), step(5, 15)] },
        { number: 2, title: 'Build', steps: [step(10), step(5, 30)] },
      ],
      2,
    );
    expect(times.stages.map((s) => s.workSeconds / 60)).toEqual([60, 15]);
    expect(times.stages.map((s) => s.labourSeconds / 60)).toEqual([120, 30]);
    expect(times.stages.map((s) => s.elapsedSeconds / 60)).toEqual([75, 45]);
    expect(
      [times.workSeconds, times.labourSeconds, times.waitSeconds, times.elapsedSeconds].map((s) => s / 60),
    ).toEqual([75, 150, 45, 120]);
    expect(times.waits.map((w) => [w.step, w.seconds / 60, w.why])).toEqual([
      [2, 15, 'it cures'],
      [4, 30, 'it cures'],
    ]);
    expect(times.short).toEqual([]);
  });

  test('steps without a time are named, unless their stage states one', () => {
    number = 0;
    const times = timesOf(
      [
        { number: 1, title: 'Open', time: minutes(20), steps: [step()] },
        { number: 2, title: 'Clean', steps: [step(10), step(), step()] },
      ],
      1,
    );
    expect(times.short.map((s) => [s.number, s.unstated])).toEqual([[2, [3, 4]]]);
    expect(times.workSeconds).toBe(30 * 60);
  });

  test('the whole is the sum of its stages, and people only weigh on labour', () => {
    const aStage = fc.array(
      fc.tuple(fc.option(fc.nat(90), { nil: undefined }), fc.option(fc.nat(90), { nil: undefined })),
    );
    fc.assert(
      fc.property(fc.array(aStage, { maxLength: 5 }), fc.integer({ min: 1, max: 6 }), (drawn, people) => {
        const stages = drawn.map((steps, i) => ({
          number: i + 1,
          title: 'a',
          steps: steps.map(([time, wait]) => step(time, wait)),
        }));
        const one = timesOf(stages, 1);
        const many = timesOf(stages, people);
        expect(one.labourSeconds).toBe(one.workSeconds);
        expect(many.labourSeconds).toBeCloseTo(people * one.labourSeconds, 6);
        expect(many.elapsedSeconds).toBe(one.elapsedSeconds);
        expect(one.elapsedSeconds).toBeCloseTo(
          drawn.flat().reduce((sum, [time = 0, wait = 0]) => sum + 60 * (time + wait), 0),
          6,
        );
      }),
    );
  });
});
