/** Which issue is in force on a day, and what every printed card is then. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { answersOf, fingerprintsOf } from '../../src/control/answers.ts';
import { checkActs } from '../../src/control/check-acts.ts';
import { addDays } from '../../src/control/dates.ts';
import { cardStanding, documentStates } from '../../src/control/state.ts';
import type { Entry } from '../../src/control/types.ts';
import type { Act } from '../../src/control/write-ledger.ts';
import { append } from './history.ts';
import { end, issue, reinstate, review, stateOn, story, suspend, temporary, withdraw } from './story.ts';

/** `A superseded, B current` */
function standings(entries: readonly Entry[], day: string, doc = 'MW-1'): string {
  const state = stateOn(entries, day, doc);
  return state.issues.map((i) => `${i.rev} ${cardStanding(state, i)}`).join(', ');
}

describe('by date', () => {
  const all = story(
    ['2026-01-05', issue('MW-1', 'A', '2026-01-10')],
    ['2026-02-01', issue('MW-1', 'B', '2026-02-10')],
    ['2026-02-05', issue('MW-1', 'C', '2026-03-01')],
  );

  test.each([
    ['2026-01-05', 'A not yet effective', 'not yet effective'],
    ['2026-01-10', 'A current', 'in force'],
    ['2026-02-09', 'A current, B not yet effective, C not yet effective', 'in force'],
    ['2026-02-10', 'A superseded, B current, C not yet effective', 'in force'],
    ['2026-02-28', 'A superseded, B current, C not yet effective', 'in force'],
    ['2026-03-01', 'A superseded, B superseded, C current', 'in force'],
    ['2031-01-01', 'A superseded, B superseded, C current', 'in force'],
  ])('on %s: %s', (day, words, standing) => {
    expect(standings(all, day)).toBe(words);
    expect(stateOn(all, day).standing).toBe(standing);
  });

  test('a day before the first line knows of nothing, and what was written later does not count', () => {
    expect(documentStates(all, '2026-01-04')).toEqual([]);
    expect(standings(all, '2026-02-01')).toBe('A current, B not yet effective');
    expect(stateOn(all, '2026-01-20').issues.length).toBe(1);
  });

  test('a document that was never issued is not there', () => {
    expect(documentStates(all, '2026-05-01').map((s) => s.doc)).toEqual(['MW-1']);
  });

  test('two that take effect on one day: the one issued later holds', () => {
    const both = story(
      ['2026-01-05', issue('MW-1', 'A', '2026-01-10')],
      ['2026-01-06', issue('MW-1', 'B', '2026-01-10')],
    );
    expect(standings(both, '2026-01-09')).toBe('A not yet effective, B not yet effective');
    expect(standings(both, '2026-01-10')).toBe('A superseded, B current');
  });

  test('documents are sorted by number, and the title is that of the issue in force', () => {
    const list = append(
      append(story(['2026-01-05', issue('MW-2', 'A', '2026-01-05')]), '2026-01-06', issue('MW-1', 'A', '2026-01-06')),
      '2026-01-07',
      {
        ...(issue('MW-2', 'B', '2026-02-01') as Extract<Act, { kind: 'issue' }>),
        title: 'Another title',
      },
    );
    expect(documentStates(list, '2026-01-08').map((s) => `${s.doc} ${s.title}`)).toEqual([
      'MW-1 Renew the cover gasket',
      'MW-2 Renew the cover gasket',
    ]);
    expect(stateOn(list, '2026-02-01', 'MW-2').title).toBe('Another title');
  });
});

describe('stopped', () => {
  const all = story(
    ['2026-01-05', issue('MW-1', 'A', '2026-01-10')],
    ['2026-02-01', issue('MW-1', 'B', '2026-02-10')],
    ['2026-02-05', suspend('MW-1')],
    ['2026-02-15', reinstate('MW-1')],
    ['2026-02-20', withdraw('MW-1', '2026-03-01')],
  );

  test.each([
    ['2026-02-04', 'A current, B not yet effective'],
    ['2026-02-05', 'A suspended, B suspended'],
    ['2026-02-12', 'A suspended, B suspended'],
    ['2026-02-15', 'A superseded, B current'],
    ['2026-02-28', 'A superseded, B current'],
    ['2026-03-01', 'A withdrawn, B withdrawn'],
  ])('on %s: %s', (day, words) => {
    expect(standings(all, day)).toBe(words);
  });

  test('while suspended, the issue that would hold is known', () => {
    expect(stateOn(all, '2026-02-05').current?.rev).toBe('A');
    expect(stateOn(all, '2026-02-12').current?.rev).toBe('B');
    expect(stateOn(all, '2026-02-12').suspended?.reason).toBe('A cover cracked');
  });

  test('suspended before it took effect', () => {
    const early = story(['2026-01-05', issue('MW-1', 'A', '2026-01-10')], ['2026-01-06', suspend('MW-1')]);
    expect(standings(early, '2026-01-07')).toBe('A suspended');
    expect(standings(early, '2026-01-20')).toBe('A suspended');
  });

  test('withdrawn beats suspended, and a suspension of one document leaves the others', () => {
    const two = append(
      append(all.slice(0, 3), '2026-02-06', issue('MW-2', 'A', '2026-02-06')),
      '2026-02-07',
      withdraw('MW-1', '2026-02-08'),
    );
    expect(standings(two, '2026-02-07')).toBe('A suspended, B suspended');
    expect(standings(two, '2026-02-08')).toBe('A withdrawn, B withdrawn');
    expect(standings(two, '2026-02-08', 'MW-2')).toBe('A current');
  });
});

describe('temporary changes', () => {
  const all = story(
    ['2026-01-05', issue('MW-1', 'A', '2026-01-05')],
    ['2026-01-06', temporary('TC-01', 'MW-1', 'A', '2026-01-10', '2026-01-20')],
    ['2026-01-07', temporary('TC-02', 'MW-1', 'A', '2026-01-07', '2026-03-01')],
    ['2026-01-15', end('TC-02')],
    ['2026-02-01', temporary('TC-03', 'MW-1', 'A', '2026-02-01', '2026-04-01')],
    ['2026-02-02', issue('MW-1', 'B', '2026-02-10')],
  );
  const open = (day: string) => stateOn(all, day).temporaries.map((t) => `${t.number} ${t.daysLeft}`);

  test.each([
    ['2026-01-06', []],
    ['2026-01-07', ['TC-02 54']],
    ['2026-01-10', ['TC-01 11', 'TC-02 51']],
    ['2026-01-14', ['TC-01 7', 'TC-02 47']],
    ['2026-01-15', ['TC-01 6']],
    ['2026-01-20', ['TC-01 1']],
    ['2026-01-21', []],
    ['2026-02-09', ['TC-03 52']],
    ['2026-02-10', []],
  ])('open on %s: %s', (day, words) => {
    expect(open(day)).toEqual(words);
  });
});

test('reviews are kept in their order', () => {
  const all = story(
    ['2026-01-05', issue('MW-1', 'A', '2026-01-05')],
    ['2026-02-01', review('MW-1', 'A', '2026-02-01')],
    ['2026-03-01', review('MW-1', 'A', '2026-03-01')],
  );
  expect(stateOn(all, '2026-02-15').reviews.map((r) => r.on)).toEqual(['2026-02-01']);
  expect(stateOn(all, '2026-03-15').reviews.map((r) => r.on)).toEqual(['2026-02-01', '2026-03-01']);
});

// --- any history ------------------------------------------------------------------------------------------------------

const DOCS = ['MW-1', 'MW-2', 'MW-3'];
const LETTERS = 'ABCDEFGHJKLMNPRTUVWY';

interface Chance {
  readonly doc: number;
  readonly days: number;
  readonly kind: 'issue' | 'suspend' | 'reinstate' | 'withdraw' | 'temporary' | 'review';
  readonly wait: number;
}

/** What the commands would allow of a row of chances. */
function lawful(chances: readonly Chance[]): readonly Entry[] {
  let day = '2026-01-01';
  let entries: readonly Entry[] = [];
  let changes = 0;
  for (const { doc: index, days, kind, wait } of chances) {
    day = addDays(day, days);
    const doc = DOCS[index] ?? 'MW-1';
    const own = entries.filter((e) => 'doc' in e && e.doc === doc);
    const issues = own.filter((e) => e.kind === 'issue');
    const latest = issues.at(-1);
    const gone = own.some((e) => e.kind === 'withdraw');
    const stop = own.findLast((e) => e.kind === 'suspend' || e.kind === 'reinstate')?.kind === 'suspend';
    const rev = LETTERS[issues.length];
    if (gone || (latest === undefined && kind !== 'issue')) continue;
    const effective = [addDays(day, wait), latest?.effective ?? ''].sort().at(-1) ?? day;
    if (kind === 'issue' && rev !== undefined) {
      const act = issue(doc, rev, effective);
      entries = append(entries, day, { ...act, approved: day } as Act);
    } else if (kind === 'suspend' && !stop) entries = append(entries, day, suspend(doc));
    else if (kind === 'reinstate' && stop) entries = append(entries, day, reinstate(doc));
    else if (kind === 'withdraw') entries = append(entries, day, withdraw(doc, addDays(day, wait)));
    else if (kind === 'review') entries = append(entries, day, review(doc, latest?.rev ?? '', day));
    else if (kind === 'temporary') {
      changes += 1;
      const act = temporary(`TC-${changes}`, doc, latest?.rev ?? '', addDays(day, 1), addDays(day, 1 + wait));
      entries = append(entries, day, { ...act, approved: day } as Act);
    }
  }
  return entries;
}

const histories = fc
  .array(
    fc.record({
      doc: fc.nat(2),
      days: fc.nat(9),
      kind: fc.constantFrom(
        'issue',
        'issue',
        'issue',
        'suspend',
        'reinstate',
        'temporary',
        'review',
        'withdraw',
      ) as fc.Arbitrary<Chance['kind']>,
      wait: fc.nat(15),
    }),
    { maxLength: 25 },
  )
  .map(lawful);

test('in any history, on any day: one issue of a document in force at most, and one standing for every card', () => {
  fc.assert(
    fc.property(histories, fc.nat(260), (entries, offset) => {
      const told: string[] = [];
      checkActs(
        entries,
        () => ({ file: '', start: 0, end: 0 }),
        (_, __, message) => told.push(message),
      );
      expect(told).toEqual([]);
      const day = addDays('2025-12-25', offset);
      const states = documentStates(entries, day);
      const answers = answersOf(states, []);
      const prints = fingerprintsOf(states);
      for (const state of states) {
        const known = entries.filter((e) => 'doc' in e && e.doc === state.doc && e.recorded <= day);
        // Told anew, without the program's own words.
        const holding = known.filter((e) => e.kind === 'issue' && e.effective <= day).at(-1);
        const stops =
          known.filter((e) => e.kind === 'suspend').length - known.filter((e) => e.kind === 'reinstate').length;
        const gone = known.some((e) => e.kind === 'withdraw' && e.effective <= day);
        const standing = state.issues.map((i) => cardStanding(state, i));
        expect(standing.filter((s) => s === 'current').length).toBe(
          holding !== undefined && !gone && stops === 0 ? 1 : 0,
        );
        expect(state.current?.seq).toBe(holding?.seq);
        if (gone) expect(new Set(standing)).toEqual(new Set(['withdrawn']));
        else if (stops > 0) expect(new Set(standing)).toEqual(new Set(['suspended']));
        const cards = state.issues.flatMap((i) => i.cards);
        const paths = cards.map((c) => c.path);
        expect(new Set(paths).size).toBe(paths.length);
        // Every card is a page of the issue in force, or is answered once.
        for (const [i, one] of state.issues.entries()) {
          for (const card of one.cards) {
            const found = answers.filter((a) => a.path === card.path);
            expect(found.map((a) => a.standing)).toEqual(standing[i] === 'current' ? [] : [standing[i]]);
            expect(prints.filter((p) => p.path === card.path).map((p) => p.standing)).toEqual([standing[i]]);
          }
        }
        for (const t of state.temporaries) expect(t.rev).toBe(holding?.kind === 'issue' ? holding.rev : '');
      }
    }),
    { numRuns: 300 },
  );
});

test('what a past day was does not change with what is written later', () => {
  fc.assert(
    fc.property(histories, fc.nat(200), (entries, offset) => {
      const day = addDays('2026-01-01', offset);
      const then = entries.filter((e) => e.recorded <= day);
      expect(documentStates(entries, day)).toEqual(documentStates(then, day));
    }),
    { numRuns: 200 },
  );
});
