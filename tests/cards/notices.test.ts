/** Change notices, painted and read back: each cause in its own words, everything the bench needs, one sheet where it fits. */

import { describe, expect, test } from 'vitest';
import type { Notice } from '../../src/control/types.ts';
import { paintNotice } from '../../src/render/pdf/index.ts';
import { AS_OF, card, fixtureShop, NOTICES, notice } from '../control/audit-fixture.ts';
import { elements, type ReadPdf, readPdf, squeeze } from './read-pdf.ts';

const shop = fixtureShop();
const paint = (n: Notice): Promise<Uint8Array> => paintNotice(n, shop, AS_OF);
const read = async (n: Notice): Promise<ReadPdf> => readPdf(await paint(n));
const words = (pdf: ReadPdf): string => pdf.pages.map((p) => p.joined).join('');

const ORDERS: Readonly<Record<Notice['cause'], string>> = {
  issue: 'Take the old cards of OF-104 out of the binder and put the new ones in.',
  suspend: 'Take every copy of OF-340 out of the binder and hand it to quality. Do not use it.',
  reinstate: 'OF-104 may be used again. Put the cards named below into the binder.',
  withdraw: 'OF-450 is not used any more. Take every copy out of the binder and hand it to quality.',
  temporary: 'Exchange the cards of OF-104: the new ones carry temporary change TC-07.',
  'temporary-end': 'Temporary change TC-08 has been ended: do not follow it any more.',
  'temporary-expiry': 'The last day of temporary change TC-07 is over: do not follow it any more.',
};

describe.each(Object.keys(ORDERS) as Notice['cause'][])('a notice because of %s', (cause) => {
  const own = NOTICES.find((n) => n.cause === cause);
  if (own === undefined) throw new Error(`no notice because of ${cause}`);

  test('says what to do, where, by when, why, and asks for the sheet back', async () => {
    const pdf = await read(own);
    const all = words(pdf);
    for (const text of [
      `CHANGE NOTICE ${own.number}`,
      ORDERS[cause],
      own.doc,
      own.title,
      own.benchName,
      own.place,
      `${own.copy} of ${own.copies}`,
      own.due,
      `class ${own.class}`,
      'TAKE OUT',
      'PUT IN',
      own.what,
      own.why,
      'Return this sheet to quality by',
      'Signature',
      'UNCONTROLLED',
      `as of ${AS_OF}`,
      shop.info.name,
    ])
      expect(all, text).toContain(squeeze(text));
    for (const c of [...own.takeOut, ...own.putIn]) expect(all).toContain(squeeze(`${c.sides} ${c.fingerprint}`));
    for (const c of own.putIn) expect(all).toContain(squeeze(c.file ?? 'no file'));
    expect(pdf.pages).toHaveLength(1);
  });

  test('is tagged, complete in its faces, within its margins, and the same again', async () => {
    const bytes = await paint(own);
    const pdf = await readPdf(bytes);
    expect(pdf.pages.flatMap((p) => p.faults)).toEqual([]);
    expect(pdf.marked).toBe(true);
    expect(pdf.info.Title).toBe(`Change notice ${own.number}: ${own.doc}, ${own.benchName}`);
    expect(pdf.fonts.filter((f) => !f.embedded)).toEqual([]);
    const tags = pdf.pages.flatMap((p) => elements(p.structure)).map((n) => n.role);
    for (const tag of ['H1', 'H2', 'Table', 'TR', 'TH', 'TD']) expect(tags).toContain(tag);
    expectInside(pdf);
    expect(Buffer.compare(bytes, await paint(own))).toBe(0);
  });
});

/** Holes of the file lie 12 mm from the left edge; nothing is printed there, and nothing within 8 mm of the other edges. */
function expectInside(pdf: ReadPdf): void {
  const pt = 72 / 25.4;
  for (const page of pdf.pages) {
    for (const t of page.texts) {
      expect(t.x, t.text).toBeGreaterThanOrEqual(20 * pt);
      expect(t.x + t.width, t.text).toBeLessThanOrEqual(page.width - 8 * pt);
      expect(t.y, t.text).toBeGreaterThanOrEqual(8 * pt);
      expect(t.y, t.text).toBeLessThanOrEqual(page.height - 8 * pt);
    }
  }
}

test('first issue, stop, withdrawal: what is not taken out or put in is said in words', async () => {
  const first = words(await read(notice({ number: 'CN-1', cause: 'issue', takeOut: [] })));
  expect(first).toContain(squeeze('Put the cards of OF-104 into the binder.'));
  expect(first).toContain(squeeze('Nothing is taken out: no earlier revision hangs here.'));
  expect(first).not.toContain(squeeze('Taken out by'));
  const stop = words(await read(notice({ number: 'CN-2', cause: 'suspend', putIn: [] })));
  expect(stop).toContain(squeeze('STOP: SUSPENDED'));
  expect(stop).toContain(squeeze('Nothing is put in: a further notice comes'));
  expect(stop).toContain(squeeze('None stays at the bench, none is destroyed.'));
  expect(stop).not.toContain(squeeze('destroyed here'));
  const gone = words(await read(notice({ number: 'CN-3', cause: 'withdraw', putIn: [] })));
  expect(gone).toContain(squeeze('is marked WITHDRAWN on every side'));
  const next = words(await read(notice({ number: 'CN-4', cause: 'issue' })));
  expect(next).toContain(squeeze('is marked SUPERSEDED on every side'));
  expect(next).toContain(squeeze('destroyed here'));
});

test('a card with a temporary change is told from the plain one by its name and its foot', async () => {
  const begun = words(
    await read(
      notice({ number: 'CN-8', cause: 'temporary', takeOut: card('B', false), putIn: card('B', true, ['TC-07']) }),
    ),
  );
  expect(begun).toContain(squeeze('Large, with TC-07'));
  expect(begun).toContain(squeeze('and its foot: it must name temporary change TC-07.'));
  const over = words(
    await read(notice({ number: 'CN-9', cause: 'temporary-end', takeOut: card('B', false, ['TC-07']) })),
  );
  expect(over).toContain(squeeze('it must name no temporary change that has ended'));
});

test('the day of the answer follows from the due day and the days allowed', async () => {
  const text = async (due: string, limitDays: number): Promise<string> =>
    words(await read(notice({ number: 'CN-1', cause: 'issue', due, limitDays })));
  expect(await text('2026-02-27', 3)).toContain(squeeze('within 3 days by 2026-03-02'));
  expect(await text('2028-02-28', 1)).toContain(squeeze('within 1 day by 2028-02-29'));
  expect(await text('2026-12-31', 0)).toContain(squeeze('the same day by 2026-12-31'));
});

test('a receipt or its lateness is said', async () => {
  const late = words(await read(notice({ number: 'CN-5', cause: 'issue', overdue: true, age: 18 })));
  expect(late).toContain(squeeze('OVERDUE: 18 days since it was due.'));
  const received = NOTICES.find((n) => n.receipt !== undefined);
  if (received === undefined) throw new Error('no receipt');
  const done = words(await read(received));
  expect(done).toContain(squeeze('Confirmed by Petr Adeyinka on 2026-03-04.'));
  expect(done).not.toContain('OVERDUE');
});

test('no approver: the sheet says why there is none', async () => {
  const without = (cause: Notice['cause']): Promise<ReadPdf> =>
    read(notice({ number: 'CN-1', cause, approver: undefined }));
  expect(words(await without('suspend'))).toContain(squeeze('a safety stop needs no approval'));
  expect(words(await without('temporary-end'))).toContain(squeeze('an end before the last day needs no approval'));
  expect(words(await without('temporary-expiry'))).toContain(squeeze('approved up to its last day'));
});

test('many cards and long words: the notice runs over and loses nothing', async () => {
  const long = 'Prüfvorrichtungsaufnahmebolzen'.repeat(9);
  const putIn = Array.from({ length: 60 }, (_, i) => ({
    doc: 'OF-104',
    rev: 'B',
    label: i === 7 ? long : `Size ${i}`,
    sides: 2,
    fingerprint: (0x10000000 + i).toString(16).toUpperCase(),
    file: `cards/OF-104-${i === 7 ? long : i}.pdf`,
  }));
  const pdf = await read(
    notice({
      number: 'CN-5',
      cause: 'issue',
      title: long,
      benchName: long,
      place: long,
      putIn,
      why: `${'because it wept again '.repeat(300)}END`,
    }),
  );
  expect(pdf.pages.length).toBeGreaterThan(2);
  expect(pdf.pages.flatMap((p) => p.faults)).toEqual([]);
  expectInside(pdf);
  const all = words(pdf);
  for (const c of putIn) expect(all).toContain(c.fingerprint);
  for (const text of ['PUT IN, continued', 'END', 'Return this sheet to quality by'])
    expect(all).toContain(squeeze(text));
  expect(pdf.pages.at(-1)?.joined).toContain(squeeze(`Page ${pdf.pages.length} of ${pdf.pages.length}`));
  expect(all.match(new RegExp(long, 'g'))?.length).toBeGreaterThan(2);
});

test('a shop with Letter cards gets Letter sheets, one with A5 cards A4 ones', async () => {
  const size = async (cardFormat: 'A5' | 'Letter'): Promise<string> => {
    const pdf = await readPdf(
      await paintNotice(
        notice({ number: 'CN-1', cause: 'issue' }),
        { ...shop, info: { ...shop.info, cardFormat } },
        AS_OF,
      ),
    );
    return `${Math.round(pdf.pages[0]?.width ?? 0)} ${Math.round(pdf.pages[0]?.height ?? 0)}`;
  };
  expect(await size('Letter')).toBe('612 792');
  expect(await size('A5')).toBe('595 842');
});
