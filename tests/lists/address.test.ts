/** The jobs of an order in an address. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { decodeJobs, encodeJobs, MOST_JOBS, readCount } from '../../src/site/client/orders/address.ts';

const CARDS = ['OF-117', 'OF-204-LARGE', 'OF-204-SMALL'];
const KNOWN = new Set(CARDS);

describe('numbers of jobs', () => {
  test.each([
    ['', 0],
    [' 3 ', 3],
    ['0', 0],
    ['007', 7],
    ['999', 999],
    ['1000', undefined],
    ['-1', undefined],
    ['2.5', undefined],
    ['1e2', undefined],
    ['three', undefined],
    ['9'.repeat(40), undefined],
  ])('%j is %s', (text, count) => {
    expect(readCount(text)).toBe(count);
  });
});

describe('addresses', () => {
  test('name the cards that have jobs, in the order of the shop', () => {
    expect(
      encodeJobs(
        new Map([
          ['OF-204-LARGE', 3],
          ['OF-117', 2],
          ['OF-204-SMALL', 0],
        ]),
        CARDS,
      ),
    ).toBe('OF-117=2&OF-204-LARGE=3');
    expect(encodeJobs(new Map(), CARDS)).toBe('');
  });

  test('what was put in comes back', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: MOST_JOBS }), { minLength: 3, maxLength: 3 }), (counts) => {
        const jobs = new Map(
          CARDS.flatMap((card, i) => ((counts[i] ?? 0) > 0 ? [[card, counts[i] ?? 0] as const] : [])),
        );
        expect(decodeJobs(encodeJobs(jobs, CARDS), KNOWN)).toEqual({ jobs, faults: [] });
      }),
    );
  });

  test('what cannot be taken is named, and the rest is kept', () => {
    const { jobs, faults } = decodeJobs('?OF-117=2&OF-204-LARGE=many&OF-999=1&OF-117=5', KNOWN);
    expect([...jobs]).toEqual([['OF-117', 2]]);
    expect(faults.map((f) => f.problem)).toEqual([
      'no card is called `OF-999`',
      'the address names OF-117 more than once',
      '`many` is no number of jobs for OF-204-LARGE',
    ]);
  });

  test('any address at all is read, and a long one is not shown in full', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 200 }), (query) => {
        const { jobs, faults } = decodeJobs(query, KNOWN);
        for (const count of jobs.values()) expect(count).toBeGreaterThan(0);
        for (const f of faults) expect(f.problem.length).toBeLessThan(120);
        expect(faults.length).toBeLessThan(12);
      }),
    );
    expect(decodeJobs('%E0%A4%A&__proto__=1&a=1&b=1&c=1&d=1', KNOWN).faults.length).toBe(4);
  });
});
