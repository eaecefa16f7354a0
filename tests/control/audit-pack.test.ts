/** The files of the audit pack, read back as an auditor's spreadsheet reads them. */

import { createHash } from 'node:crypto';
import { describe, expect, test } from 'vitest';
import { auditPack, CHECKSUMS } from '../../src/control/audit-pack.ts';
import { EMPTY_LEDGER } from '../../src/control/types.ts';
import { AS_OF, EMPTY_VIEW, fixtureShop, LEDGER, VIEW } from './audit-fixture.ts';
import { readRecords } from './read-csv.ts';

const shop = fixtureShop();
const files = new Map(auditPack(VIEW, shop, LEDGER).map((f) => [f.name, f.text]));
const records = (name: string): Record<string, string>[] => readRecords(files.get(name) ?? '');
const of = (name: string, key: string, value: string): Record<string, string>[] =>
  records(name).filter((r) => r[key] === value);

test('the pack has its files, sorted by name', () => {
  expect([...files.keys()]).toEqual([
    'README.txt',
    'approvals.csv',
    'change-records.csv',
    'checksums.txt',
    'copies.csv',
    'distribution.csv',
    'effective-pages.csv',
    'feedback.csv',
    'ledger.csv',
    'open-receipts.csv',
    'outside-documents.csv',
    'register.csv',
    'reviews.csv',
    'temporary-changes.csv',
  ]);
});

test('the same input gives the same bytes, and the order of the shop’s feedback does not matter', () => {
  const again = auditPack(VIEW, { ...shop, feedback: [...shop.feedback].reverse() }, LEDGER);
  expect(again).toEqual(auditPack(VIEW, shop, LEDGER));
});

describe('what holds', () => {
  test('register: every standing in words, with why and what comes', () => {
    expect(records('register.csv').map((r) => [r['Document'], r['Standing'], r['Revision']])).toEqual([
      ['OF-104', 'in force', 'B'],
      ['OF-231', 'in force', 'A'],
      ['OF-340', 'suspended', 'A'],
      ['OF-450', 'withdrawn', 'A'],
    ]);
    const detail = (doc: string): string | undefined =>
      of('register.csv', 'Document', doc)[0]?.['Since, why, what comes'];
    expect(detail('OF-104')).toBe('with temporary change TC-07 until 2026-04-02');
    expect(detail('OF-231')).toBe('Rev B not before 2026-12-01');
    expect(detail('OF-340')).toBe('since 2026-03-03: The gland follower cracked on two boats');
    expect(detail('OF-450')).toBe('since 2026-03-05: The cradle was scrapped, use OF-231 instead');
    const [first] = records('register.csv');
    const issue = VIEW.documents[0]?.current;
    expect(first?.['SHA-256 of the snapshot']).toBe(issue?.snapshot.sha256);
    expect(first?.['Fingerprints of its cards']).toBe(issue?.cards.map((c) => c.fingerprint).join('; '));
    expect(first?.['Approved by']).toBe('Maren Osei');
    expect(first?.['Benches']).toBe('Heat exchange; Pumps and valves');
  });

  test('effective pages: only cards in force, with the temporary change of their variant', () => {
    expect(
      records('effective-pages.csv').map((r) => [r['Document'], r['Variant'], r['Sides'], r['With temporary change']]),
    ).toEqual([
      ['OF-104', 'Large', '2', 'TC-07 (Heat exchange)'],
      ['OF-104', 'Small', '3', ''],
      ['OF-231', '', '2', ''],
    ]);
  });

  test('copies: what hangs at a bench, and what must not', () => {
    expect(records('copies.csv').map((r) => [r['Copy number'], r['Not to hang there now']])).toEqual([
      ['1', 'OF-340 suspended'],
      ['2', 'OF-450 withdrawn'],
    ]);
  });
});

describe('what was decided', () => {
  test('change records: quotes, line breaks and what looks like a formula come back as written', () => {
    const [row] = of('change-records.csv', 'Line', '5');
    expect(row?.['What']).toBe(
      'Torque of the end-cover joint 85 → 95 N·m, and the "tell-tale" is looked at,\nthen wiped',
    );
    expect(row?.['Why']).toBe("'=SUM(1,2) stood in a report, and the joint wept");
    expect(row?.['Affected documents']).toBe('OF-231; OF-340');
    expect(row?.['Effective']).toBe('2026-03-02');
    expect(records('change-records.csv')).toHaveLength(LEDGER.entries.filter((e) => e.kind === 'issue').length);
  });

  test('approvals: every act with an approver, signed or not; a safety stop is none', () => {
    const acts = LEDGER.entries.filter((e) => 'approver' in e);
    expect(records('approvals.csv').map((r) => r['Line'])).toEqual(acts.map((e) => String(e.seq)));
    const [signed] = of('approvals.csv', 'Line', '5');
    expect([signed?.['Signed'], signed?.['Key'], signed?.['Result']]).toEqual([
      'yes',
      '00aa11bb22cc33dd',
      'signature holds',
    ]);
    const [unsigned] = of('approvals.csv', 'Line', '7');
    expect([unsigned?.['What was approved'], unsigned?.['Signed'], unsigned?.['Approved on']]).toEqual([
      'withdrawal of OF-450',
      'no',
      '2026-03-04',
    ]);
  });

  test('ledger: every line in its order with its seals, also one written after the day', () => {
    const rows = records('ledger.csv');
    expect(rows.map((r) => r['Seal of this line'])).toEqual(LEDGER.entries.map((e) => e.seal));
    expect(rows.slice(1).map((r) => r['Seal of the line before'])).toEqual(
      rows.slice(0, -1).map((r) => r['Seal of this line']),
    );
    expect(rows.at(-1)?.['What it says']).toBe('Written after the day');
    expect(new Set(rows.map((r) => r['Act']))).toContain('temporary-end');
  });

  test('what was written after the day stands in no other list', () => {
    const early = new Map(auditPack({ ...VIEW, asOf: '2026-02-01' }, shop, LEDGER).map((f) => [f.name, f.text]));
    expect(readRecords(early.get('change-records.csv') ?? '')).toHaveLength(4);
    expect(readRecords(early.get('temporary-changes.csv') ?? '')).toHaveLength(0);
    expect(readRecords(early.get('ledger.csv') ?? '')).toHaveLength(LEDGER.entries.length);
  });
});

describe('who was told', () => {
  test('distribution: each holder with its notices by number, and holders without any', () => {
    const rows = records('distribution.csv');
    const own = rows.filter((r) => r['Document'] === 'OF-104' && r['Copy number'] === '1').map((r) => r['Notice']);
    expect(own).toEqual(['CN-1', 'CN-5', 'CN-8', 'CN-8-END', 'CN-10', 'CN-12', 'CN-13']);
    expect(rows.find((r) => r['Document'] === 'OF-231')?.['State']).toBe('no notice');
    const done = rows.find((r) => r['State'] === 'received');
    expect([done?.['Receipt'], done?.['Signed by'], done?.['Age']]).toEqual(['2026-03-04', 'Petr Adeyinka', '']);
  });

  test('open receipts: those without a receipt, in the order of the view, with age and state', () => {
    const rows = records('open-receipts.csv');
    expect(rows.map((r) => r['Notice'])).toEqual(VIEW.open.map((n) => n.number));
    expect(rows.map((r) => r['State'])).toEqual(
      VIEW.open.map((n) => (n.overdue ? 'overdue' : n.age === undefined ? 'not due yet' : 'waiting')),
    );
    expect(of('open-receipts.csv', 'Notice', 'CN-7')[0]?.['Age']).toBe('1 day');
    expect(of('open-receipts.csv', 'Notice', 'CN-13')[0]?.['Age']).toBe('');
  });
});

describe('what is kept up', () => {
  test('reviews with those entered', () => {
    expect(records('reviews.csv').map((r) => r['State'])).toEqual(['in order', 'due soon', 'overdue']);
    expect(of('reviews.csv', 'Document', 'OF-231')[0]?.['Reviews entered']).toBe(
      '2026-03-10, Rev A, Maren Osei: Still as the work is done',
    );
  });

  test('outside documents: what rests on an old edition, confirmed or not; those on which nothing rests', () => {
    const rows = records('outside-documents.csv');
    expect(rows.map((r) => [r['Id'], r['Procedure'], r['Rests on edition']])).toEqual([
      ['cooler-manual', 'OF-104', '4th edition'],
      ['cooler-manual', 'OF-340', '4th edition'],
      ['pump-manual', 'OF-231', ''],
      ['wire-standard', '', 'nothing rests on an older edition'],
    ]);
    expect(rows.map((r) => r['Compared with the edition held'])).toEqual([
      '2026-02-11, Maren Osei: The same numbers on page 33',
      'not yet: it is not issued again before that',
      '2026-02-12, Tomas Hallworth: Nothing differs',
      '',
    ]);
  });

  test('temporary changes: scope and what became of each', () => {
    const states = (asOf: string, entries = LEDGER.entries): (string | undefined)[] => {
      const view = { ...VIEW, asOf, documents: VIEW.documents.map((d) => ({ ...d, temporaries: [] })) };
      const text = auditPack(view, shop, { ...LEDGER, entries }).find((f) => f.name === 'temporary-changes.csv')?.text;
      return readRecords(text ?? '').map((r) => r['State']);
    };
    expect(records('temporary-changes.csv').map((r) => [r['Scope'], r['State']])).toEqual([
      ['benches Heat exchange; variants Large; serial numbers 1001 to 1040', 'open, 14 days left'],
      ['everywhere', 'ended 2026-03-09 by Tomas Hallworth: The gauge is back'],
    ]);
    expect(states('2026-04-03')[0]).toBe('expired after 2026-04-02');
    const unended = LEDGER.entries.filter((e) => e.kind !== 'temporary-end');
    expect(states('2026-04-03', unended)[1]).toBe('expired after 2026-03-30');
    expect(states('2026-03-05')[0]).toBe('not begun');
  });

  test('feedback: open first', () => {
    const rows = records('feedback.csv');
    expect(rows.map((r) => [r['Number'], r['State'], r['From']])).toEqual([
      ['FB-02', 'open', 'Petr Adeyinka'],
      ['FB-01', 'answered', 'Heat exchange'],
    ]);
    expect(rows[0]?.['What it says']).toBe("'-2 °C is too cold for the paste");
    expect(rows[1]?.['Answer']).toBe('2026-03-01, Maren Osei: Temporary change TC-07.');
  });
});

describe('README and checksums', () => {
  const readme = files.get('README.txt') ?? '';

  test('the README names every file, the day, the head and how to verify', () => {
    for (const name of files.keys()) if (name !== 'README.txt') expect(readme).toContain(`\n${name}\n`);
    for (const text of [AS_OF, LEDGER.head, '14 lines', 'npm run verify', shop.info.name])
      expect(readme).toContain(text);
    expect(readme.split('\n').filter((l) => l.length > 78 && !l.includes(LEDGER.head))).toEqual([]);
  });

  test('the checksums hold for every other file, those beside the texts too', () => {
    const bytes = new Uint8Array([1, 2, 3]);
    const pack = auditPack(VIEW, shop, LEDGER, [{ name: 'audit-pack.pdf', bytes, says: 'The same on paper.' }]);
    const sums = new Map(
      (pack.find((f) => f.name === CHECKSUMS)?.text ?? '')
        .split('\n')
        .filter((l) => l !== '')
        .map((l): [string, string] => [l.slice(66), l.slice(0, 64)]),
    );
    const hash = (data: string | Uint8Array): string => createHash('sha256').update(data).digest('hex');
    for (const f of pack) if (f.name !== CHECKSUMS) expect(sums.get(f.name), f.name).toBe(hash(f.text));
    expect(sums.get('audit-pack.pdf')).toBe(hash(bytes));
    expect(sums.size).toBe(pack.length);
    expect(pack.find((f) => f.name === 'README.txt')?.text).toContain('audit-pack.pdf\n    The same on paper.');
  });

  test('a shop without any history: heads without rows, and words that say so', () => {
    const bare = { ...shop, benches: [], outside: [], feedback: [] };
    const pack = auditPack(EMPTY_VIEW, bare, EMPTY_LEDGER);
    for (const f of pack) if (f.name.endsWith('.csv')) expect(readRecords(f.text), f.name).toEqual([]);
    const text = (pack.find((f) => f.name === 'README.txt')?.text ?? '').replaceAll(/\s+/g, ' ');
    for (const words of ['No receipt is open.', 'No temporary change has been approved.', 'Nothing has been issued.'])
      expect(text).toContain(words);
  });
});
