/** `issue` from the command line: what it says and writes, and each rule that refuses. */

import { existsSync } from 'node:fs';
import path from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { type ControlShop, controlShop, copyOf, RAISED, runOn } from './control-shop.ts';
import { digest, keptFolder, temporaryFolder } from './run.ts';

const DAY = '2026-03-02';

const first = controlShop(path.join(keptFolder(), 'shop'));
beforeAll(async () => {
  const { code, stdout, stderr } = await first.run('issue.ts', DAY, 'MW-1');
  expect(code, stderr).toBe(0);
  expect(stdout).toContain('issued MW-1 Rev A, Renew the cover gasket (line 1 of the ledger)\n');
  expect(stdout).toContain('first issue of this document\n');
});

describe('an issue', () => {
  test('says what was issued, what changed, who gets a notice and what comes next', async () => {
    const shop = copyOf(first);
    shop.edit('machines/pump.yaml', RAISED);
    shop.revise('B', '2026-03-03', { affects: '[MW-2]' });
    const { code, stdout, stderr } = await shop.run('issue.ts', DAY, 'MW-1');
    expect(code, stderr).toBe(0);
    expect(stdout).toMatch(
      new RegExp(
        [
          'issued MW-1 Rev B, Renew the cover gasket \\(line 2 of the ledger\\)',
          '  class of change  major',
          '  what             Torque raised',
          '  why              Joint came loose',
          '  effective        2026-03-03, tomorrow',
          '  author           Ada Fern, Fitter',
          '  approver         Ben Holt, Quality lead, on 2026-03-02',
          '  signature        not signed',
          '  also affects     MW-2 Renew the cover gasket at sea: see whether a revision is due',
          '',
          '2 cards',
          '  MW-1 Small  fingerprint [0-9A-F]{8}  \\d sides',
          '  MW-1 Large  fingerprint [0-9A-F]{8}  \\d sides',
          '',
          'changed since Rev A',
          '  .*torque of the cover joint.160.→.165.N.m',
          '',
          'change notice CN-2 goes to \\(2 benches\\)',
          '  pumps   Pumps, Hall 1   copy 1',
          '  spares  Spares, Hall 2  copy 2',
          '',
          'next: `npm run build` prints the cards and notices beforehand; the cards are exchanged on 2026-03-03',
          'then enter each receipt: `npm run receipt -- CN-2 --bench BENCH --by PERSON --on DATE`',
        ].join('\n'),
      ),
    );
    expect(shop.ledger().split('\n')).toHaveLength(3);
    for (const file of ['A.json', 'B.json', 'B.changes.json']) {
      expect(existsSync(path.join(shop.folder, 'issued', 'MW-1', file)), file).toBe(true);
    }
    expect((await shop.run('check.ts', DAY)).code).toBe(0);
  });

  test('without a change in meaning says so; a minor one is approved by an editor', async () => {
    const shop = copyOf(first);
    shop.edit('procedures/mw-1.yaml', (t) => `# looked through\n${t}`);
    shop.revise('B', DAY, { class: 'minor', approver: 'cal' });
    const { code, stdout, stderr } = await shop.run('issue.ts', DAY, 'MW-1');
    expect(code, stderr).toBe(0);
    expect(stdout).toContain('  class of change  minor\n');
    expect(stdout).toContain('nothing has changed in meaning since Rev A');
    expect(stdout).toContain('next: `npm run build` publishes it');
  });

  test('tells warnings of the content, and issues all the same', async () => {
    const shop = copyOf(first);
    shop.edit('machines/pump.yaml', (t) => t.replace('rounds: [30 %,', 'rounds: [40 %,'));
    shop.revise('B', DAY);
    const { code, stdout, stderr } = await shop.run('issue.ts', DAY, 'MW-1');
    expect(code).toBe(0);
    expect(stderr).toContain('warning TRQ027');
    expect(stdout).toContain('issued MW-1 Rev B');
  });
});

/** Nothing is written, whatever stands in the way: `code`, and words of what is said. */
async function refused(shop: ControlShop, day: string, doc: string, words: readonly string[]): Promise<void> {
  const before = digest(shop.folder);
  const { code, stdout, stderr } = await shop.run('issue.ts', day, doc);
  expect(stdout).toBe('');
  for (const w of words) expect(stderr).toContain(w);
  expect(stderr).not.toContain('    at ');
  expect(code).toBe(1);
  expect(digest(shop.folder)).toEqual(before);
}

describe('is refused', () => {
  test('an author who approves', async () => {
    const shop = copyOf(first);
    shop.revise('B', DAY, { author: 'ben' });
    await refused(shop, DAY, 'MW-1', ['self-approval', '1 error: MW-1 is not issued, the ledger stays as it was']);
  });

  test('an approver who may not approve the class', async () => {
    const shop = copyOf(first);
    shop.revise('B', DAY, { approver: 'cal' });
    await refused(shop, DAY, 'MW-1', ['approver-not-authorised', 'MW-1 is not issued']);
  });

  test('a date of effect before the approval', async () => {
    const shop = copyOf(first);
    shop.revise('B', '2026-03-01');
    await refused(shop, DAY, 'MW-1', ['early-effective-date', 'MW-1 is not issued']);
  });

  test('a revision that skips one of the scheme', async () => {
    const shop = copyOf(first);
    shop.revise('C', DAY);
    await refused(shop, DAY, 'MW-1', [
      'fault: after revision A of MW-1 comes B, and the draft asks for C',
      'hint: name the new revision B; one revision is issued at a time',
    ]);
  });

  test('a draft with errors, each with its place', async () => {
    const shop = copyOf(first);
    shop.edit('procedures/mw-1.yaml', (t) => t.replace('<tool:hoist>', '<tool:hoost>'));
    shop.revise('B', DAY);
    await refused(shop, DAY, 'MW-1', [
      'REF001',
      'procedures/mw-1.yaml:23:',
      'did you mean `hoist`?',
      'MW-1 is not issued',
    ]);
  });

  test('a revision that is issued already, also when its draft has changed since', async () => {
    const shop = copyOf(first);
    shop.edit('machines/pump.yaml', RAISED);
    await refused(shop, DAY, 'MW-1', [
      'fault: revision A of MW-1 is issued already, on 2026-03-02',
      'hint: a change takes a new revision: add its change record at the end of `revisions` in the procedure',
    ]);
  });

  test('an approval that is still to come', async () => {
    const shop = copyOf(first);
    shop.revise('B', '2026-03-09', { approved: '2026-03-05' });
    await refused(shop, DAY, 'MW-1', [
      'fault: revision B of MW-1 is approved on 2026-03-05, and today is 2026-03-02',
      'hint: issue it when it has been approved',
    ]);
  });

  test('a date of effect that is past: nobody was told', async () => {
    const shop = copyOf(first);
    shop.revise('B', '2026-03-03');
    await refused(shop, '2026-03-05', 'MW-1', [
      'fault: revision B of MW-1 would have been in force since 2026-03-03, and nobody was told',
      'hint: let it take effect today (2026-03-05) or later',
    ]);
  });

  test('a date of effect before that of the issue before it', async () => {
    const shop = copyOf(first);
    shop.revise('B', '2026-03-09');
    expect((await shop.run('issue.ts', DAY, 'MW-1')).code).toBe(0);
    shop.revise('C', '2026-03-04');
    await refused(shop, DAY, 'MW-1', ['MW-1', '2026-03-04', '2026-03-09']);
  });

  test('a clock that is behind the ledger', async () => {
    const shop = copyOf(first);
    shop.edit('procedures/mw-2.yaml', (t) => t.replace('what: First issue', 'what: The first issue'));
    await refused(shop, '2026-02-27', 'MW-2', [
      'fault: the clock of this machine says 2026-02-27, and the last line of the ledger was written on 2026-03-02, 3 days later',
      'hint: set the clock',
    ]);
  });

  test('a ledger that does not hold', async () => {
    const shop = copyOf(first);
    shop.edit('issued/ledger.jsonl', (t) => t.replace('First issue', 'Other words'));
    await refused(shop, DAY, 'MW-2', ['LDG002', 'line 1 of the ledger was altered', 'MW-2 is not issued']);
  });

  test('a procedure that rests on an old edition of an outside document, until that is confirmed', async () => {
    const shop = copyOf(first);
    const register = (edition: string): string =>
      `pump-manual: { document: Pump manual, kind: "maker's manual", edition: "${edition}", owner: ben }\n`;
    const outside = controlShop(path.join(temporaryFolder(), 'shop'), { 'outside.yaml': register('4') });
    await refused(outside, DAY, 'MW-1', ['3', '4', 'Pump manual']);
    expect(shop.ledger()).not.toBe('');
    outside.edit('outside.yaml', () =>
      register('4').replace(
        ' }',
        ', confirmed: { MW-1: { by: ada, on: 2026-03-01, finding: Numbers compared and equal }, MW-2: { by: ada, on: 2026-03-01, finding: Numbers compared and equal } } }',
      ),
    );
    const { code, stderr } = await outside.run('issue.ts', DAY, 'MW-1');
    expect(code, stderr).toBe(0);
  });

  test('a document that is not there; the words of the command line are looked at first', async () => {
    await refused(first, DAY, 'MW-11', [
      'fault: there is no procedure or temporary change MW-11',
      'did you mean `MW-1`?',
    ]);
    const cases = [
      [[], 'fault: the document number is missing', 'hint: write `npm run issue -- DOC`'],
      [['MW-1', 'MW-2'], 'fault: `MW-2` is one word too many', '`npm run issue -- DOC`'],
      [['MW-1', '--kez', 'x'], 'fault: `--kez` is not an option of issue', 'hint: did you mean `--key`?'],
    ] as const;
    const ended = await Promise.all(cases.map(([args]) => runOn(DAY, 'issue.ts', args)));
    for (const [i, { code, stderr }] of ended.entries()) {
      expect(stderr).toContain(cases[i]?.[1]);
      expect(stderr).toContain(cases[i]?.[2]);
      expect(code).toBe(2);
    }
  });
});
