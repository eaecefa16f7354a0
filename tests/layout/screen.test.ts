/** The screen of cards against their layout: whatever the layout reports, the screen asked for it; and it spares most cards. */

import path from 'node:path';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { collector } from '../../src/diagnostics/index.ts';
import {
  loosening,
  looseningRounds,
  type Numbering,
  patternHoles,
  tighteningSequence,
} from '../../src/geometry/index.ts';
import { formatOf } from '../../src/layout/card/format.ts';
import { layoutCard, mm, needsLayout } from '../../src/layout/card/index.ts';
import { footOf } from '../../src/layout/card/page-foot.ts';
import { headerBlock } from '../../src/layout/card/page-frame.ts';
import { footerBound, headerBound } from '../../src/layout/card/screen-front.ts';
import { figureBound } from '../../src/layout/card/screen-joint.ts';
import { stepBound } from '../../src/layout/card/screen-step.ts';
import { TextRoom } from '../../src/layout/card/screen-text.ts';
import { settingFor } from '../../src/layout/card/setting.ts';
import { type StepScene, stepBlock } from '../../src/layout/card/step-block.ts';
import { figureOf, figureWidthMm } from '../../src/layout/card/torque-block.ts';
import { breakLines, loadFaces, widthOf } from '../../src/layout/type/index.ts';
import type { JointPlan, ResolvedShop } from '../../src/resolve/index.ts';
import { CATALOGUE } from '../../src/rules/index.ts';
import { FULL_SHOP } from '../fixtures/full-joint.ts';
import { compileMini } from '../fixtures/mini-shop.ts';
import {
  type Card,
  type CardFormat,
  cardsOf,
  change,
  changed,
  controlled,
  noted,
  panelled,
  shopAt,
  syntheticShop,
} from './screen-shops.ts';

const FORMATS: readonly CardFormat[] = ['A4', 'Letter', 'A5'];
const WEIGHTS = ['regular', 'semibold', 'bold'] as const;
const faces = loadFaces();
const demoShop = shopAt(path.resolve(import.meta.dirname, '..', '..', 'content'));

function asks({ shop, document, variant }: Card): boolean {
  return needsLayout(shop, document, variant);
}

/** Codes that the layout of the card reports. */
function reported({ shop, document, variant }: Card): readonly string[] {
  const { report, list } = collector(CATALOGUE);
  layoutCard(shop, document, variant, faces, report);
  return list().map((d) => d.code);
}

/** A joint of the demo with another bolt circle in place of its pattern: what a figure shows of it. */
function bolted(count: number, diameterMm: number, firstDeg: number, numbering: Numbering): JointPlan {
  const base = demoShop.machines.flatMap((m) => m.joints).find((j) => j.plan.rounds.length > 2)?.plan;
  if (base === undefined) throw new Error('the demo has no joint with rounds');
  const pattern = { kind: 'circle', diameterMm, count, firstDeg, numbering } as const;
  const sequence = tighteningSequence(pattern, {});
  return {
    ...base,
    ...{ pattern, count, sequence, features: [], holes: patternHoles(pattern), loosening: loosening(sequence) },
    looseningRounds: looseningRounds(count),
  };
}

/** Signs of which the table of widths is sure. */
const SIGNS = Array.from({ length: 0x2300 - 0x21 }, (_, i) => String.fromCharCode(0x21 + i)).filter((sign) => {
  const room = new TextRoom();
  room.add(`x${sign}`, 1);
  return room.sure;
});

test('every sign of the table is in all three faces, in one piece, and no wider than the table says', () => {
  expect(SIGNS.length).toBeGreaterThan(300);
  for (const sign of SIGNS) {
    expect(sign.normalize('NFC')).toBe(sign);
    for (const weight of WEIGHTS) {
      expect(faces[weight].font.hasGlyphForCodePoint(sign.charCodeAt(0)), sign).toBe(true);
      const room = new TextRoom();
      room.add(`x${sign}`, 1000);
      expect(room.takeWidth(), `${sign} ${weight}`).toBeGreaterThanOrEqual(widthOf(faces[weight], `x${sign}`, 1000));
    }
  }
});

test('pairs of signs of ASCII are never wider than the table says, kerning included', () => {
  const ascii = SIGNS.filter((s) => s < '\u007f');
  for (const weight of WEIGHTS) {
    const { font } = faces[weight];
    const scale = 1000 / font.unitsPerEm;
    for (const a of ascii) {
      for (const b of ascii) {
        const room = new TextRoom();
        room.add(a + b, 1000);
        const true_ = font.layout(a + b).advanceWidth * scale;
        if (room.takeWidth() < true_ - 1e-9) expect(`${weight} ${a}${b} ${true_}`).toBe('within the table');
      }
    }
  }
});

const word = fc.oneof(
  fc.constantFrom(
    'the',
    'gasket',
    'AVATAR',
    'N·m',
    'f/j',
    '(jig)',
    '24\u00a0mm',
    'counter-clockwise',
    'and/or',
    '\n',
    ' ',
    '',
  ),
  fc.string({ unit: fc.constantFrom(...SIGNS), maxLength: 9 }),
);

test('a paragraph takes no more lines than the screen says', () => {
  fc.assert(
    fc.property(
      fc.array(
        fc.record({
          text: fc.array(word, { maxLength: 14 }).map((w) => w.join(' ')),
          weight: fc.constantFrom(...WEIGHTS),
          size: fc.constantFrom(8, 9, 10.5, 11.5, 18),
        }),
        { minLength: 1, maxLength: 3 },
      ),
      fc.double({ min: 30, max: 500, noNaN: true }),
      (parts, width) => {
        const room = new TextRoom();
        for (const { text, size } of parts) room.add(text, size);
        const bound = room.lines(width);
        let faults = 0;
        const count = (): void => {
          faults += 1;
        };
        const lines = breakLines(
          faces,
          parts.map((p) => ({ ...p, ink: 'ink' as const })),
          width,
          { missing: count, tooWide: count },
        );
        if (!room.sure) return;
        expect(faults).toBe(0);
        expect(lines.length).toBeLessThanOrEqual(bound);
      },
    ),
    { numRuns: 1500 },
  );
});

test('the figure of a plain bolt circle is no larger than its bound', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 48 }),
      fc.constantFrom(62.5, 160, 240, 318, 1234.5),
      fc.constantFrom(0, 15, 22.5, 45, 171.4),
      fc.constantFrom('the cover side', 'the drive end, with the guard off and the lamp standing at the left', ''),
      fc.constantFrom(undefined, 'the drain', 'the punched line on the flange beside the filling plug of the gearbox'),
      fc.constantFrom<Numbering>('clockwise', 'anticlockwise'),
      (count, diameterMm, firstDeg, view, top, numbering) => {
        const joint = {
          ...bolted(count, diameterMm, firstDeg, numbering),
          view,
          ...(top === undefined ? {} : { top }),
        };
        for (const dimensions of [true, false]) {
          const bound = figureBound(joint, mm(164), dimensions, false, new TextRoom());
          const width = figureWidthMm(joint, dimensions);
          const { height } = figureOf(joint, width, { dimensions, loosen: !dimensions });
          if (bound === undefined) continue;
          expect(mm(width), `${count} ${diameterMm} ${dimensions}`).toBeLessThanOrEqual(bound.width);
          expect(mm(height), `${count} ${diameterMm} ${dimensions}`).toBeLessThanOrEqual(bound.height);
        }
      },
    ),
    { numRuns: 150 },
  );
});

test('no step and no edge of a card is higher than its bound', () => {
  const shops = [demoShop, compileMini({ ...FULL_SHOP }).resolved].flatMap((shop) => [shop, ...controlled(shop)]);
  let compared = 0;
  for (const card of shops.flatMap((shop) => FORMATS.flatMap((f) => cardsOf(shop, f)))) {
    const { shop, document, variant } = card;
    const format = formatOf(shop.info.cardFormat);
    const setting = settingFor(faces, format, document.range, () => undefined);
    const room = new TextRoom();
    expect(headerBound(document, variant, format, room)).toBeGreaterThanOrEqual(
      headerBlock(setting, card, 1, 1).height - 0.01,
    );
    expect(footerBound(shop, document, variant, format, room)).toBeGreaterThanOrEqual(
      footOf(setting, card, 1, 1).block.height - 0.01,
    );
    const tools = new Map(shop.tools.map((t) => [t.id, t.name]));
    const scene: StepScene = {
      joint: (id) => variant.joints.find((j) => j.id === id),
      tool: (id) => tools.get(id) ?? id,
      person: (id) => id,
    };
    for (const step of variant.stages.flatMap((s) => s.steps)) {
      const { height } = stepBlock(setting, step, scene);
      for (const drawn of [false, true]) {
        const bound = stepBound(step, scene, format, drawn, room);
        expect(bound, `${document.doc} ${variant.key} step ${step.number}`).toBeGreaterThanOrEqual(height - 0.01);
        compared += 1;
      }
    }
  }
  expect(compared).toBeGreaterThan(1000);
});

test('more than four in five cards are spared on A4, and none of them has a fault', () => {
  for (const shop of [demoShop, syntheticShop(30)]) {
    const cards = cardsOf(shop, 'A4');
    const spared = cards.filter((card) => !asks(card));
    expect(spared.length / cards.length).toBeGreaterThan(0.8);
    expect(spared.filter((card) => reported(card).length > 0)).toEqual([]);
  }
});

function sound(cards: readonly Card[], runs: number, changes: number, met: Map<string, number>): void {
  fc.assert(
    fc.property(fc.constantFrom(...cards), fc.array(change, { minLength: 1, maxLength: changes }), (card, list) => {
      const other = changed(card, list);
      const codes = reported(other);
      const asked = asks(other);
      for (const code of codes) met.set(code, (met.get(code) ?? 0) + 1);
      if (codes.length === 0 && !asked) met.set('spared', (met.get('spared') ?? 0) + 1);
      if (codes.length > 0) expect({ codes, asked }).toEqual({ codes, asked: true });
    }),
    { numRuns: Number(process.env['FETTLEBOOK_EDITS'] ?? 300) * (runs / 300) },
  );
}

test('whatever the layout reports of hostile cards, the screen asked for it', () => {
  const met = new Map<string, number>();
  const small = compileMini({ ...FULL_SHOP }).resolved;
  sound(
    FORMATS.flatMap((f) => cardsOf(small, f)),
    200,
    3,
    met,
  );
  sound(
    controlled(small).flatMap((shop) => FORMATS.flatMap((f) => cardsOf(shop, f))),
    150,
    3,
    met,
  );
  sound(
    FORMATS.flatMap((f) => [...cardsOf(demoShop, f), ...cardsOf(syntheticShop(2), f)]),
    30,
    4,
    met,
  );
  // The comparison is worth something only where the faults of text come up, and where some changed cards are spared.
  for (const code of ['CRD001', 'CRD002', 'CRD003', 'spared']) expect(met.get(code) ?? 0, code).toBeGreaterThan(2);
});

test('panel of changes, temporary change and name of a bench that are too long are asked for, and short ones are not', () => {
  const small = compileMini({ ...FULL_SHOP }).resolved;
  const wide = 'W'.repeat(90);
  const long = 'Measure the gap once more. '.repeat(400);
  const prose = (text: string) => [{ kind: 'paragraph' as const, runs: [{ text }] }];
  const cards = (shop: ResolvedShop): Card[] => cardsOf(shop, 'A4');
  for (const [name, shop] of [
    ['line of the panel', { ...small, documents: small.documents.map((d) => panelled(d, [wide])) }],
    ['lines of the panel', { ...small, documents: small.documents.map((d) => panelled(d, [long])) }],
    ['scope', noted(small, { scope: wide })],
    ['reason', noted(small, { reason: wide })],
    ['text', noted(small, { text: prose(long) })],
    ['number', noted(small, { number: wide })],
  ] as const) {
    for (const card of cards(shop)) {
      expect(reported(card).length, name).toBeGreaterThan(0);
      expect(asks(card), name).toBe(true);
    }
  }
  const spared = cards(small).filter((card) => !asks(card));
  expect(spared.length).toBeGreaterThan(0);
  for (const shop of controlled(small)) expect(cards(shop).filter((card) => !asks(card)).length).toBe(spared.length);
});

test('addresses of every length and kind', () => {
  const [card] = cardsOf(demoShop, 'A4');
  if (card === undefined) throw new Error('the demo has no card');
  const seen = new Set<boolean>();
  for (let length = 10; length < 120; length += length < 60 ? 9 : 3) {
    for (const sign of ['A', 'a']) {
      const variant = { ...card.variant, address: `HTTPS://${sign.repeat(length - 8)}` };
      const faulty = reported({ ...card, variant }).includes('CRD004');
      seen.add(faulty);
      if (faulty) expect(asks({ ...card, variant })).toBe(true);
    }
  }
  expect(seen.size).toBe(2);
});

/** Each cell of the front's lists with something that its column cannot hold. */
const CELLS: readonly (readonly ['parts' | 'tools' | 'consumables', Readonly<Record<string, unknown>>])[] = [
  ...(['parts', 'tools', 'consumables'] as const).flatMap(
    (list) =>
      [
        [list, { name: 'W'.repeat(60) }],
        [list, { steps: [100_000_000, 100_000_001, 100_000_002] }],
        // So many lines that three rows do not fit a side.
        [list, { steps: Array.from({ length: 120 }, (_, i) => 2 * i) }],
      ] as const,
  ),
  ['parts', { number: 'W'.repeat(30) }],
  ['parts', { quantity: 1e9 }],
  ['parts', { kit: 'W'.repeat(30) }],
  ['tools', { detail: 'W'.repeat(30) }],
  ['consumables', { amount: 'W'.repeat(40) }],
  ['consumables', { hazards: ['W'.repeat(60)] }],
];

test('a fault in any cell of the lists on the front is asked for', () => {
  const card = cardsOf(demoShop, 'A4').find((c) => !asks(c) && c.variant.consumables.length > 0);
  if (card === undefined) throw new Error('the demo has no card that is spared');
  for (const [list, wrong] of CELLS) {
    const rows = card.variant[list].map((row) => ({ ...row, ...wrong }));
    const other = { ...card, variant: { ...card.variant, [list]: rows } };
    expect(reported(other).length, `${list} ${Object.keys(wrong)}`).toBeGreaterThan(0);
    expect(asks(other), `${list} ${Object.keys(wrong)}`).toBe(true);
  }
});

test('the heading of a stage without steps stands together with what comes after it', () => {
  const card = cardsOf(demoShop, 'A4').find((c) => !asks(c));
  const [stage] = card?.variant.stages ?? [];
  if (card === undefined || stage === undefined) throw new Error('the demo has no card that is spared');
  const intro = [{ kind: 'paragraph' as const, runs: [{ text: 'Read this before the first step. '.repeat(80) }] }];
  const stages = [{ ...stage, intro, steps: [] }, { ...stage, intro, steps: [] }, ...card.variant.stages];
  const other = { ...card, variant: { ...card.variant, stages } };
  expect(reported(other)).toContain('CRD001');
  expect(asks(other)).toBe(true);
});
