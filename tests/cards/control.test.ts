/** The panel of changes, temporary changes, drafts and controlled copies: what a card shows of its control. */

import { describe, expect, test } from 'vitest';
import { type CardLayout, mm, stampCopy } from '../../src/layout/card/index.ts';
import { loadFaces } from '../../src/layout/type/index.ts';
import { paintCard } from '../../src/render/pdf/index.ts';
import type { Document } from '../../src/resolve/index.ts';
import { allMarked, CHANGES, documentOf, lay, note, standing, textsOf, withTemporary } from './controlled.ts';
import { demo } from './demo.ts';
import { readPdf, squeeze } from './read-pdf.ts';

const { shop } = demo();
const faces = loadFaces();
const FORMATS = ['A4', 'Letter', 'A5'] as const;

const OF_204 = documentOf('OF-204');
const ALL_MARKED = allMarked(OF_204);

describe('the panel of changes', () => {
  test('stands on the first side before the lists: its lines, how many more, and why', async () => {
    const pdf = await readPdf(await paintCard(lay({ ...OF_204, changes: CHANGES }), shop));
    const [first, ...others] = pdf.pages.map((p) => p.joined);
    for (const text of ['Changed since Rev C', ...CHANGES.lines, 'And 3 more', 'Why:'])
      expect(first).toContain(squeeze(text));
    expect(first?.indexOf('ChangedsinceRevC')).toBeLessThan(first?.indexOf(squeeze('Stored energy:')) ?? 0);
    const why = squeeze(OF_204.revision.why.slice(0, 30)).slice(1);
    expect(first?.split(why).length, 'said once').toBe(2);
    for (const page of others) expect(page).not.toContain(squeeze('Changed since'));
    expect(pdf.pages.flatMap((p) => p.faults)).toEqual([]);
  });

  test('seldom costs a side: of the demo at the most one card in six has one more', () => {
    const grown = shop.documents.map((d) => lay({ ...d, changes: CHANGES }).sides.length - lay(d).sides.length);
    expect(Math.max(...grown)).toBeLessThanOrEqual(1);
    expect(grown.filter((n) => n > 0).length).toBeLessThanOrEqual(shop.documents.length / 6);
  });

  test('says so when nothing on the card differs, and shows five lines at the most', () => {
    const words = (changes: Document['changes'] & object): string =>
      squeeze(
        lay({ ...OF_204, changes })
          .sides.flatMap((s) => s.body.flatMap((b) => textsOf(b.block.nodes)))
          .join(''),
      );
    expect(words({ since: '3', lines: [], more: 0 })).toContain(squeeze('No step, number or list differs'));
    const seven = words({ since: 'C', lines: ['one', 'two', 'three', 'four', 'five', 'six', 'seven'], more: 2 });
    expect(seven).toContain(squeeze('Five'));
    expect(seven).toContain(squeeze('And 4 more'));
    expect(seven).not.toContain('•Six');
  });

  test('is not there in a first issue', () => {
    expect(textsOf(lay(OF_204).sides[0]?.body.flatMap((b) => b.block.nodes) ?? []).join(' ')).not.toContain('Changed');
  });
});

describe('a draft', () => {
  test.each(FORMATS)('%s: says on every side, across it and in words, that it is not for work', async (name) => {
    const own = { ...shop, info: { ...shop.info, cardFormat: name } };
    const card = lay(standing(documentOf('OF-117'), 'draft'), own);
    const pdf = await readPdf(await paintCard(card, own));
    expect(pdf.info.Title).toMatch(/^DRAFT /u);
    for (const [i, page] of pdf.pages.entries()) {
      expect(page.joined.split('DRAFT:notforwork').length, 'top and foot').toBe(3);
      expect(page.joined.toLowerCase()).not.toContain('effective2');
      expect(page.joined).toContain(squeeze('UNCONTROLLED. A draft gets no copy number.'));
      expect(page.faults).toEqual([]);
      const ground = card.sides[i]?.ground;
      const [mark] = ground?.block.decoration ?? [];
      if (ground === undefined || mark?.kind !== 'drawing') throw new Error('no mark across the side');
      expect(mark.drawing.title).toBe('DRAFT');
      // From corner to corner of the text area, and not beyond.
      const points = mark.drawing.marks.flatMap((m) => (m.kind === 'path' ? m.points : []));
      const xs = points.map((p) => p.x);
      const ys = points.map((p) => p.y);
      expect(Math.min(...xs, ...ys)).toBeGreaterThanOrEqual(-0.01);
      expect(Math.max(...xs)).toBeLessThanOrEqual(mark.drawing.width + 0.01);
      expect(Math.max(...ys)).toBeLessThanOrEqual(mark.drawing.height + 0.01);
      expect((Math.max(...xs) - Math.min(...xs)) * (Math.max(...ys) - Math.min(...ys))).toBeGreaterThan(
        mark.drawing.width * mark.drawing.height * 0.6,
      );
    }
    expect(pdf.pages[0]?.joined).toContain(squeeze('to be approved by'));
    expect(stampCopy(card, { copy: 1, copies: 2, bench: 'Heat exchange' }, faces)).toBe(card);
  });

  test('is read as well as any other card: nothing but its standing differs', () => {
    const plain = lay(documentOf('OF-131'));
    const draft = lay(standing(documentOf('OF-131'), 'draft'));
    expect(draft.sides.length).toBe(plain.sides.length);
    expect(plain.sides.some((s) => s.ground !== undefined)).toBe(false);
  });
});

test('a card whose day has not come says from when it holds, in a box', async () => {
  const later = standing(documentOf('OF-117'), 'not yet effective');
  const card = lay({ ...later, revision: { ...later.revision, effective: '2026-12-01' } });
  const pdf = await readPdf(await paintCard(card, shop));
  for (const page of pdf.pages) {
    expect(page.joined).toContain(squeeze('Not before 2026-12-01'));
    expect(page.joined).toContain(squeeze('· not before 2026-12-01'));
    expect(page.joined).not.toMatch(/effective\d/iu);
  }
  expect(card.sides.some((s) => s.ground !== undefined)).toBe(false);
  const stroked = card.sides[0]?.header.block.decoration.filter((d) => d.kind === 'rect' && d.stroke === 'ink');
  // The variant's tag and the standing.
  expect(stroked?.length).toBe(2);
});

describe('a temporary change', () => {
  const step = OF_204.variants[0]?.stages.flatMap((s) => s.steps).find((s) => s.warnings.length > 0 && s.number > 2);
  if (step === undefined) throw new Error('no step with a warning');
  const document = withTemporary(OF_204, step.number, note('TC-07', { approver: shop.people[0]?.id ?? '' }));

  test('stands before the warnings of its step, with its days, scope, reason and approver', async () => {
    const pdf = await readPdf(await paintCard(lay(document), shop));
    const all = pdf.pages.map((p) => p.joined).join('');
    const places = [
      'TEMPORARY CHANGE TC-07 until 2026-12-20',
      'At the bench Heat exchange only; serial numbers 1001 to 1040 only.',
      'Use the blue sealing ring of lot 7',
      `Why: The maker delivers the black ring late. Approved by ${shop.people[0]?.name}.`,
      step.warnings[0]?.hazard[0]?.runs.map((r) => r.text).join('') ?? '',
      step.text[0]?.runs.map((r) => r.text).join('') ?? '',
    ].map((text) => all.indexOf(squeeze(text)));
    expect(places.filter((at) => at < 0)).toEqual([]);
    expect(places).toEqual([...places].sort((a, b) => a - b));
    for (const page of pdf.pages) expect(page.joined).toContain(squeeze('with temporary change TC-07'));
    expect(pdf.pages.flatMap((p) => p.faults)).toEqual([]);
  });

  test('is boxed by a heavy broken rule', () => {
    const block = lay(document)
      .sides.flatMap((s) => s.body)
      .find((b) => textsOf(b.block.nodes).join('').includes('TEMPORARY'));
    const dashes = block?.block.decoration.filter((d) => d.kind === 'line' && d.width > mm(0.6)) ?? [];
    expect(dashes.length).toBeGreaterThan(20);
  });

  test('two of them are named in every foot, each once; without a scope none is named', () => {
    const card = lay(withTemporary(OF_204, step.number, note('TC-09', { scope: '' }), note('TC-07'), note('TC-07')));
    expect(card.temporary).toEqual(['TC-07', 'TC-09']);
    for (const side of card.sides)
      expect(squeeze(textsOf(side.footer.block.nodes).join(''))).toContain(
        squeeze('with temporary changes TC-07 and TC-09'),
      );
  });
});

describe('a controlled copy', () => {
  const card = lay(withTemporary(ALL_MARKED, 3, note('TC-07')));
  const stamped = stampCopy(card, { copy: 3, copies: 7, bench: 'Heat exchange' }, faces);

  test('says which one it is in place of the words of a loose card, on every side', async () => {
    const pdf = await readPdf(await paintCard(stamped, shop));
    for (const page of pdf.pages) {
      expect(page.joined).toContain(squeeze('CONTROLLED COPY 3 of 7 · Heat exchange'));
      expect(page.joined).not.toContain('UNCONTROLLED');
      expect(page.joined).not.toContain(squeeze('Copy of Bench'));
    }
    expect(pdf.pages.flatMap((p) => p.faults)).toEqual([]);
    const loose = await readPdf(await paintCard(card, shop));
    for (const page of loose.pages)
      expect(page.joined).toContain(squeeze('UNCONTROLLED unless it bears a copy number.'));
  });

  test('is in everything else the same card', () => {
    const { sides, ...rest } = stamped;
    const { sides: before, ...restBefore } = card;
    expect(rest).toEqual(restBefore);
    const without = (list: CardLayout['sides']) => list.map(({ copy, ...side }) => ({ ...side, at: [copy.x, copy.y] }));
    expect(without(sides)).toEqual(without(before));
  });

  test.each(FORMATS)('%s: even the longest name of a bench has its room in the foot', (name) => {
    const bench =
      'Workshop of the north quay for heat exchangers, condensers and everything that is cooled by sea water '
        .repeat(2)
        .trim();
    const [first] = shop.benches;
    if (first === undefined) throw new Error('no bench');
    const own = {
      ...shop,
      info: { ...shop.info, cardFormat: name },
      benches: [...shop.benches, { ...first, id: 'long', name: bench }],
    };
    for (const bench of own.benches) {
      const long = stampCopy(lay(OF_204, own), { copy: 999, copies: 999, bench: bench.name }, faces);
      for (const side of long.sides) {
        const last = squeeze(`fingerprint ${long.fingerprint}`);
        const identity = side.footer.block.nodes.find((n) => squeeze(textsOf([n]).join('')).includes(last));
        const top = Math.min(...(identity?.items ?? []).flatMap((i) => (i.kind === 'text' ? [i.y - i.size] : [])));
        expect(side.copy.y + side.copy.block.height).toBeLessThanOrEqual(side.footer.y + top + 0.01);
      }
    }
  });
});
