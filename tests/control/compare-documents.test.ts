/** What changes in the head of a document and its variants; what is no change; the panel. */

import { describe, expect, test } from 'vitest';
import { compareEqual, compareIssues, panelOf } from '../../src/control/compare/index.ts';
import { fullSide, linesOf, miniLines, miniSide, stored, swap } from './compare-sides.ts';

const BASE = miniSide();
const MW1 = 'procedures/mw-1.yaml';
const PUMP = 'machines/pump.yaml';
const procedure = (...edits: readonly (readonly [string, string])[]) => ({ [MW1]: swap(...edits) });
const machine = (...edits: readonly (readonly [string, string])[]) => ({ [PUMP]: swap(...edits) });
const SMALL_10 = 'Step 10 (Large: step 12)';

describe('document and variants', () => {
  test('head of the document', () => {
    const changes = {
      'shop.yaml': swap(['local codes and licensed practice govern.', 'the law and licensed practice govern.']),
      ...machine(['name: pump\n', 'name: pump\nmark: P1\nwhere: hall 1\n']),
      ...procedure(
        ['title: Renew the cover gasket', 'title: Renew the gasket of the cover'],
        [
          'owner: ben\nreview: 24 months\n',
          'owner: ada\nreview: 12 months\npeople: 2\nsources: [{ document: Pump manual, edition: "4", place: page 12 }]\n',
        ],
      ),
    };
    const lines = miniLines(changes);
    expect(lines).toEqual([
      'document reworded: Title reworded: Renew the gasket of the cover',
      'document value: People needed 1 → 2',
      'document value: Owner Ben Holt → Ada Fern',
      'document value: Review interval 24 months → 12 months',
      'document added: Source added: Pump manual, 4, page 12',
      'document added: Mark on the machine added: P1',
      'document added: Place of the machine added: hall 1',
      "document reworded: Safety words reworded: The maker's manual, the site's lockout procedure, the law and licensed practice…",
    ]);
    const next = { ...changes, [MW1]: (t: string) => (changes[MW1]?.(t) ?? t).replace('edition: "4"', 'edition: "5"') };
    expect(linesOf(compareIssues(miniSide(changes), miniSide(next)))).toEqual([
      'document value: Edition of Pump manual 4 → 5',
    ]);
  });

  test('a card more, a card less, other serial numbers', () => {
    const small = procedure(['applies: { size: [small, large] }', 'applies: { size: [small] }']);
    expect(miniLines(small)).toEqual(['variant removed: Card removed: Large']);
    const added = compareIssues(miniSide(small), BASE);
    expect(linesOf(added)).toEqual(['variant added: New card: Large, serial numbers 51 to 99 [Large]']);
    expect(added.marks).toEqual({});
    expect(panelOf(added)?.lines).toEqual(['New card: Large, serial numbers 51 to 99'.replaceAll(' ', ' ')]);
    expect(miniLines(machine(['to: 99', 'to: 120']))).toEqual([
      'variant value: Serial numbers 51 to 99 → 51 to 120 [Large]',
    ]);
  });

  test('a document that gets variants is compared with its one card', () => {
    const [small] = BASE.document.variants;
    if (small === undefined) throw new Error('the small shop has two cards');
    const one = { ...BASE, document: { ...BASE.document, variants: [{ ...small, key: '', label: '', choices: [] }] } };
    const split = compareIssues(one, miniSide(procedure(['Measure the gap.', 'Measure it.'])));
    expect(linesOf(split)).toEqual([
      'pattern value: Step 11: bolt pattern of the cover joint 8 on a circle of 240 mm, the first at 22.5° → 12 on a circle of 320 mm, the first at 15° [Large]',
      'step added: New step 7: Take out the vent plug. [Large]',
      'step added: New step 9: Fit the vent plug. [Large]',
      `step reworded: ${SMALL_10}: text reworded: Measure it.`,
      'part value: Steps 6 and 11: quantity of cover screw 8 → 12 [Large]',
      'variant exchanged: Cards one for all → Small; Large',
      'variant value: Serial numbers 1 to 50 → 51 to 99 [Large]',
    ]);
    expect(linesOf(compareIssues(BASE, one))).toEqual(['variant exchanged: Cards Small; Large → one for all']);
  });
});

describe('nothing', () => {
  test('a document and itself, from memory and from disk, is equal', () => {
    for (const side of [BASE, fullSide()]) {
      expect(compareIssues(side, stored(side))).toMatchObject({ changes: [], marks: {} });
      expect(compareIssues(stored(side), side).changes).toEqual([]);
      expect(compareEqual(side, stored(side))).toBe(true);
    }
  });

  test('comments, spacing, quotes and the revision itself are no change', () => {
    const spaced = miniSide({
      [MW1]: (t) =>
        `# A comment\n${t}`
          .replace('- do: Measure the gap.', '- do: >-\n          Measure\n          the   gap.')
          .replace(
            '- { rev: A, effective',
            '- { rev: A, effective: 2025-01-10, approved: 2025-01-08, author: ada, approver: ben, what: First issue, why: New pump }\n  - { rev: B, effective',
          ),
      [PUMP]: (t) => t.replaceAll(/\n( *)view: the cover side/g, '\n\n$1# seen from outside\n$1view: "the cover side"'),
    });
    expect(compareIssues(BASE, spaced)).toEqual({ format: 1, doc: 'MW-1', from: 'A', to: 'B', changes: [], marks: {} });
    expect(compareEqual(BASE, spaced)).toBe(true);
  });

  test('equal says what the list says', () => {
    const other = miniSide(machine(['torque: 160 N·m', 'torque: 170 N·m']));
    expect(compareEqual(BASE, other)).toBe(false);
    expect(compareEqual(BASE, miniSide(procedure(['review: 24 months', 'review: 12 months'])))).toBe(false);
    expect(panelOf(compareIssues(BASE, BASE))).toBeUndefined();
  });
});

describe('the list and its panel', () => {
  test('ordered by what it concerns, then by step; the panel holds five', () => {
    const changes = {
      ...machine(['torque: 160 N·m', 'torque: 170 N·m'], ['count: 12, first: 15 deg', 'count: 10, first: 18 deg']),
      ...procedure(
        ['review: 24 months', 'review: 12 months'],
        ['limit: 0.05 to 0.30 mm', 'limit: 0.05 to 0.40 mm'],
        ['level: warning', 'level: danger'],
        ['Measure the gap.', 'Measure it.'],
        ['gasket: discard', 'gasket: inspect'],
      ),
    };
    const comparison = compareIssues(BASE, miniSide(changes));
    expect(comparison.changes.map((c) => c.of)).toEqual([
      'torque',
      'limit',
      'pattern',
      'warning',
      'step',
      'part',
      'part',
      'document',
    ]);
    expect(panelOf(comparison)).toEqual({
      since: 'A',
      lines: [
        ...comparison.changes.slice(0, 2).map((c) => c.words),
        `${comparison.changes[2]?.words} (only Large)`,
        ...comparison.changes.slice(3, 5).map((c) => c.words),
      ],
      more: 3,
    });
    expect(JSON.stringify(compareIssues(stored(BASE), stored(miniSide(changes))))).toBe(JSON.stringify(comparison));
  });

  test('a long text is cut in the line only, near the place where it differs', () => {
    const long =
      'Wipe both faces with a clean cloth until the cloth stays white, then dry them with clean air from the crib line';
    const older = miniSide(procedure(['Measure the gap.', `${long}.`]));
    const [change] = compareIssues(older, miniSide(procedure(['Measure the gap.', `${long} and cover them.`]))).changes;
    expect(change?.words).toBe(`${SMALL_10}: text reworded: …air from the crib line and cover them.`);
    expect(change?.after).toBe(`${long} and cover them.`);
  });
});
