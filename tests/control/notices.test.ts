/** What each bench has to take out and put in, until its receipt is there. */

import { describe, expect, test } from 'vitest';
import type { Entry } from '../../src/control/types.ts';
import { append, RULES } from './history.ts';
import { end, issue, noticesOn, receipt, reinstate, story, suspend, temporary, told, withdraw } from './story.ts';

const open = (entries: readonly Entry[], day: string, bench = 'pumps'): readonly string[] =>
  told(noticesOn(entries, day).open, bench);

describe('issues', () => {
  const all = story(
    ['2026-01-05', issue('MW-1', 'A', '2026-01-05')],
    ['2026-01-06', receipt('CN-1', 'pumps', '2026-01-06')],
    ['2026-01-06', receipt('CN-1', 'winch', '2026-01-06')],
    ['2026-02-01', issue('MW-1', 'B', '2026-02-10')],
    ['2026-03-01', issue('MW-1', 'C', '2026-03-10')],
  );

  test('the first one is put in', () => {
    expect(open(all, '2026-01-05')).toEqual(['CN-1 issue out - in A']);
  });

  test('one to come is announced, and is no age yet', () => {
    const { open: list } = noticesOn(all, '2026-02-01');
    expect(told(list)).toEqual(['CN-4 issue out A in B']);
    expect(list[0]).toMatchObject({ due: '2026-02-10', overdue: false, limitDays: 3 });
    expect(list[0]).not.toHaveProperty('age');
    expect(list[0]?.putIn[0]?.file).toBe('cards/coming/MW-1-SMALL-B.pdf');
    expect(noticesOn(all, '2026-02-10').open[0]?.putIn[0]?.file).toBe('cards/MW-1-SMALL.pdf');
  });

  test('C is due and B was never answered: one notice takes out A and B', () => {
    expect(open(all, '2026-03-09')).toEqual(['CN-4 issue out A in B', 'CN-5 issue out A B in C']);
    expect(open(all, '2026-03-10')).toEqual(['CN-5 issue out A B in C']);
    // Each card once.
    const [notice] = noticesOn(all, '2026-03-10').open;
    expect(notice?.takeOut.map((c) => `${c.rev} ${c.label}`)).toEqual(['A small', 'A large', 'B small', 'B large']);
  });

  test('the bench that answered B takes out B alone, the other one A and B', () => {
    const half = append(all, '2026-03-02', receipt('CN-4', 'pumps', '2026-02-11'));
    expect(open(half, '2026-03-10', 'pumps')).toEqual(['CN-5 issue out B in C']);
    expect(open(half, '2026-03-10', 'winch')).toEqual(['CN-5 issue out A B in C']);
    expect(told(noticesOn(half, '2026-03-10').received)).toEqual(['CN-1 issue out - in A', 'CN-4 issue out A in B']);
  });

  test('age and limit by class', () => {
    const at = (day: string) => {
      const n = noticesOn(all, day).open.find((o) => o.number === 'CN-4' && o.bench === 'pumps');
      return [n?.age, n?.overdue];
    };
    expect(at('2026-02-10')).toEqual([0, false]);
    expect(at('2026-02-13')).toEqual([3, false]);
    expect(at('2026-02-14')).toEqual([4, true]);
    const minor = append(all.slice(0, 3), '2026-02-01', issue('MW-1', 'B', '2026-02-10', 'minor'));
    expect(noticesOn(minor, '2026-02-17').open[0]).toMatchObject({
      limitDays: RULES.receiptDays.minor,
      overdue: false,
    });
    expect(noticesOn(minor, '2026-02-18').open[0]?.overdue).toBe(true);
  });

  test('a day in the past knows nothing of later lines and receipts', () => {
    expect(open(all, '2026-01-05')).toEqual(['CN-1 issue out - in A']);
    expect(noticesOn(all, '2026-01-05').received).toEqual([]);
    expect(open(all, '2026-01-06')).toEqual([]);
    expect(noticesOn(all, '2026-01-04')).toEqual({ open: [], received: [] });
  });

  test('a first line that tells of an earlier day is due on its own', () => {
    const late = story(['2026-06-01', issue('MW-1', 'A', '2025-03-01')]);
    expect(noticesOn(late, '2026-06-01').open[0]).toMatchObject({ due: '2026-06-01', age: 0, overdue: false });
  });

  test('every bench of the line has its own, with its copy', () => {
    const { open: list } = noticesOn(all, '2026-03-10');
    expect(list.map((n) => `${n.bench} ${n.copy} of ${n.copies}`)).toEqual(['pumps 1 of 2', 'winch 2 of 2']);
  });
});

describe('stopped', () => {
  const before = story(
    ['2026-01-05', issue('MW-1', 'A', '2026-01-05')],
    ['2026-01-06', receipt('CN-1', 'pumps', '2026-01-06')],
    ['2026-02-01', issue('MW-1', 'B', '2026-02-10')],
  );
  const stopped = append(before, '2026-02-05', suspend('MW-1'));

  test('a suspension takes out what hangs, within its own days', () => {
    const { open: list } = noticesOn(stopped, '2026-02-05');
    expect(told(list)).toContain('CN-4 suspend out A in -');
    expect(list.find((n) => n.number === 'CN-4')).toMatchObject({ limitDays: 1, class: 'major' });
    expect(noticesOn(stopped, '2026-02-07').open.find((n) => n.number === 'CN-4')?.overdue).toBe(true);
  });

  test('nothing is put in while it lasts, though a new issue would hold', () => {
    for (const day of ['2026-02-05', '2026-02-10', '2026-03-01']) {
      expect(open(stopped, day)).toEqual(['CN-4 suspend out A in -']);
    }
  });

  test('the reinstatement puts in what holds then, and takes out what may still hang', () => {
    const lifted = append(stopped, '2026-02-20', reinstate('MW-1'));
    expect(open(lifted, '2026-02-20')).toEqual(['CN-5 reinstate out A in B']);
    const early = append(stopped, '2026-02-07', reinstate('MW-1'));
    expect(open(early, '2026-02-07')).toContain('CN-5 reinstate out - in A');
    expect(open(early, '2026-02-10')).toEqual(['CN-3 issue out A in B']);
  });

  test('a withdrawal takes out, and nothing that was to come is put in after it', () => {
    const gone = append(before, '2026-02-05', withdraw('MW-1', '2026-02-08'));
    expect(open(gone, '2026-02-05')).toEqual(['CN-4 withdraw out A in -']);
    expect(open(gone, '2026-02-20')).toEqual(['CN-4 withdraw out A in -']);
  });

  test('a withdrawal of what is suspended', () => {
    const gone = append(stopped, '2026-02-06', withdraw('MW-1', '2026-02-08'));
    expect(open(gone, '2026-02-07')).toEqual(['CN-4 suspend out A in -', 'CN-5 withdraw out A in -']);
    expect(open(gone, '2026-02-08')).toEqual(['CN-5 withdraw out A in -']);
  });
});

describe('temporary changes', () => {
  const base = story(
    ['2026-01-05', issue('MW-1', 'A', '2026-01-05')],
    ['2026-01-05', receipt('CN-1', 'pumps', '2026-01-05')],
    ['2026-01-05', receipt('CN-1', 'winch', '2026-01-05')],
  );
  const changed = append(base, '2026-01-08', temporary('TC-01', 'MW-1', 'A', '2026-01-10', '2026-01-20'));

  test('the card is exchanged for one with the change, and back when it has expired', () => {
    expect(open(changed, '2026-01-20')).toEqual(['CN-4 temporary out A in A+TC-01']);
    expect(open(changed, '2026-01-21')).toEqual(['CN-4-END temporary-expiry out A+TC-01 in A']);
    const answered = append(changed, '2026-01-22', receipt('CN-4-END', 'pumps', '2026-01-21'));
    expect(open(answered, '2026-01-22', 'pumps')).toEqual([]);
    expect(open(answered, '2026-01-22', 'winch')).toEqual(['CN-4-END temporary-expiry out A+TC-01 in A']);
  });

  test('ended before its day, no expiry follows; ended before it began, it is never put in', () => {
    const ended = append(changed, '2026-01-15', end('TC-01'));
    expect(open(ended, '2026-01-14')).toEqual(['CN-4 temporary out A in A+TC-01']);
    expect(open(ended, '2026-02-15')).toEqual(['CN-5 temporary-end out A+TC-01 in A']);
    const early = append(changed, '2026-01-09', end('TC-01'));
    expect(open(early, '2026-01-12')).toEqual([]);
  });

  test('only the benches and the cards in its scope are concerned', () => {
    const scope = { benches: ['winch'], variants: ['large'] };
    const scoped = append(base, '2026-01-08', temporary('TC-02', 'MW-1', 'A', '2026-01-10', '2026-01-20', scope));
    expect(open(scoped, '2026-01-10', 'pumps')).toEqual([]);
    const [notice] = noticesOn(scoped, '2026-01-10').open;
    expect(notice?.bench).toBe('winch');
    expect(notice?.putIn.map((c) => c.label)).toEqual(['large']);
  });

  test('a new issue takes the change out with its card', () => {
    const replaced = append(changed, '2026-01-12', issue('MW-1', 'B', '2026-01-15'));
    expect(open(replaced, '2026-01-25')).toEqual(['CN-5 issue out A in B']);
  });

  test('one change does not answer for another one, nor for an issue', () => {
    const small = { variants: ['small'] };
    const large = { variants: ['large'] };
    const two = append(
      append(
        story(['2026-01-05', issue('MW-1', 'A', '2026-01-05')]),
        '2026-01-08',
        temporary('TC-01', 'MW-1', 'A', '2026-01-10', '2026-01-20', small),
      ),
      '2026-01-08',
      temporary('TC-02', 'MW-1', 'A', '2026-01-11', '2026-01-25', large),
    );
    expect(open(two, '2026-01-12').map((n) => n.split(' ')[0])).toEqual(['CN-1', 'CN-2', 'CN-3']);
    expect(open(two, '2026-01-22').map((n) => n.split(' ')[0])).toEqual(['CN-1', 'CN-3', 'CN-2-END']);
  });

  test('while suspended, none begins; the suspension stays', () => {
    const stopped = append(changed, '2026-01-09', suspend('MW-1'));
    expect(open(stopped, '2026-01-12')).toEqual(['CN-5 suspend out A in -']);
    expect(open(stopped, '2026-02-12')).toEqual(['CN-5 suspend out A in -']);
  });
});
