/** Resolved shops for the tests of the screen, and cards with hostile texts made from them. */

import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import fc from 'fast-check';
import { writeSyntheticShop } from '../../scripts/bench/synthetic-shop.ts';
import { collector } from '../../src/diagnostics/index.ts';
import { readContent } from '../../src/model/index.ts';
import {
  type Document,
  type ResolvedShop,
  resolveShop,
  type TemporaryNote,
  type Variant,
} from '../../src/resolve/index.ts';
import { CATALOGUE } from '../../src/rules/index.ts';
import { readFiles } from '../../src/source/index.ts';

export type CardFormat = ResolvedShop['info']['cardFormat'];

export interface Card {
  readonly shop: ResolvedShop;
  readonly document: Document;
  readonly variant: Variant;
}

export function shopAt(folder: string): ResolvedShop {
  const { report } = collector(CATALOGUE);
  return resolveShop(readContent(readFiles(folder, 'shop', report), 'shop', report), report);
}

export function syntheticShop(procedures: number): ResolvedShop {
  const folder = mkdtempSync(path.join(tmpdir(), 'screen-'));
  try {
    writeSyntheticShop(folder, { procedures, steps: 30, seed: 7 });
    return shopAt(folder);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

export function cardsOf(shop: ResolvedShop, cardFormat: CardFormat): Card[] {
  const set = { ...shop, info: { ...shop.info, cardFormat } };
  return set.documents.flatMap((document) => document.variants.map((variant) => ({ shop: set, document, variant })));
}

/** The document with a panel of changes. */
export function panelled(document: Document, lines: readonly string[]): Document {
  return { ...document, changes: { since: 'A', lines, more: 2 } };
}

const NOTE: TemporaryNote = {
  number: 'TC-07',
  text: [{ kind: 'paragraph', runs: [{ text: 'Use the blue ring in place of the black one.' }] }],
  reason: 'the black one is late',
  scope: 'at the bench Pumps only',
  until: '2026-12-20',
  approver: 'lead',
};

/** The shop with a temporary change before the first step of every card. */
export function noted(shop: ResolvedShop, more: Partial<TemporaryNote> = {}): ResolvedShop {
  const documents = shop.documents.map((document) => ({
    ...document,
    variants: document.variants.map((variant) => ({
      ...variant,
      stages: variant.stages.map((stage) => ({
        ...stage,
        steps: stage.steps.map((step) => (step.number === 1 ? { ...step, temporary: [{ ...NOTE, ...more }] } : step)),
      })),
    })),
  }));
  return { ...shop, documents };
}

/** The shop as it is published under control: changed, as a draft, before its day, with temporary changes, at a bench with a long name. */
export function controlled(shop: ResolvedShop): ResolvedShop[] {
  const all = (change: (document: Document) => Document): ResolvedShop => ({
    ...shop,
    documents: shop.documents.map(change),
  });
  const lines = ['Torque of the cover 85 to 95 N·m', 'New step 12: measure the gap', 'Step 5: warning added'];
  const [bench] = shop.benches;
  return [
    all((d) => panelled(d, lines)),
    all((d) => ({ ...d, standing: 'draft' })),
    all((d) => ({ ...d, standing: 'not yet effective' })),
    noted(shop),
    ...(bench === undefined
      ? []
      : [
          {
            ...shop,
            benches: [...shop.benches, { ...bench, name: 'Everything that is cooled by sea water '.repeat(4) }],
          },
        ]),
  ];
}

/** Keys whose texts are printed as they are. */
const PRINTED = new Set([
  ...['text', 'name', 'title', 'what', 'why', 'limitText', 'toolName', 'by', 'facing', 'where', 'mark', 'document'],
  ...['place', 'label', 'safety', 'storedEnergy', 'review', 'wrenchName', 'socketName', 'fastenerName', 'note'],
  ...[
    'lubricantName',
    'rule',
    'hold',
    'witness',
    'detail',
    'number',
    'amount',
    'machineName',
    'report',
    'address',
    'doc',
  ],
  ...['reason', 'scope', 'until', 'approver', 'since'],
]);
const PRINTED_LISTS = new Set(['lines', 'ppe', 'energy', 'records', 'at', 'serials', 'hazards']);
/** Lists that may grow. */
const GROWING = new Set([
  'warnings',
  'measures',
  'records',
  'remove',
  'fit',
  'facing',
  'parts',
  'tools',
  'consumables',
  'at',
  'lines',
  'temporary',
]);

const WORDS = [
  'gasket',
  'the',
  'a',
  'counter-clockwise',
  'N·m',
  '24 mm',
  'Wörter',
  '(each)',
  'and/or',
  'MIMOSAWWW',
  'f.j',
  '"x"',
  '—',
];
const LONG = [
  'calibrated-against-the-master',
  'W'.repeat(14),
  'm'.repeat(40),
  'i'.repeat(60),
  '0'.repeat(25),
  'a\u00a0b\u00a0'.repeat(12),
];
const ODD = ['漢字', '🧽', '\ufeff', 'e\u0301', '\u00ad', '\u202e', '→', 'Ω', '\u2029', 'ŉ', '\u0000'];

const hostile = fc.oneof(
  {
    weight: 4,
    arbitrary: fc.array(fc.constantFrom(...WORDS), { minLength: 1, maxLength: 90 }).map((w) => w.join(' ')),
  },
  { weight: 2, arbitrary: fc.constantFrom(...LONG) },
  { weight: 1, arbitrary: fc.constantFrom(...ODD).map((c) => `Wipe ${c} dry`) },
  { weight: 1, arbitrary: fc.constantFrom('', ' ', 'a\nb\n\nc', 'a  b', '\t') },
);

export interface Change {
  /** Share of the way through the card's texts and lists. */
  readonly at: number;
  readonly grow: number;
  readonly text: string;
}

export const change: fc.Arbitrary<Change> = fc.record({
  at: fc.double({ min: 0, max: 1, noNaN: true, maxExcluded: true }),
  grow: fc.oneof(fc.constant(0), fc.constant(0), fc.integer({ min: 1, max: 30 })),
  text: hostile,
});

/** The card with each change at one of its texts, or with one of its lists grown. */
export function changed(card: Card, changes: readonly Change[]): Card {
  const { shop, document, variant } = structuredClone({
    shop: { ...card.shop, documents: [], statedTables: [], tables: [] },
    document: { ...card.document, variants: [] },
    variant: card.variant,
  });
  const places: ((change: Change) => void)[] = [];
  const lists: ((change: Change) => void)[] = [];
  const visit = (value: unknown): void => {
    if (typeof value !== 'object' || value === null) return;
    const own = value as Record<string, unknown>;
    for (const [key, inner] of Object.entries(own)) {
      if (typeof inner === 'string' && PRINTED.has(key))
        places.push(({ text }) => {
          own[key] = text;
        });
      if (Array.isArray(inner)) {
        if (GROWING.has(key) && inner.length > 0)
          lists.push(({ grow }) => {
            own[key] = Array.from({ length: inner.length + grow }, (_, i) => inner[i % inner.length] as unknown);
          });
        if (PRINTED_LISTS.has(key) && inner.length > 0)
          places.push(({ text }) => {
            inner[0] = text;
          });
      }
      if (key !== 'range' && key !== 'ranges') visit(inner);
    }
  };
  visit({ info: shop.info, people: shop.people, machines: shop.machines.filter((m) => m.id === document.machine) });
  visit(document);
  visit(variant);
  for (const c of changes) {
    const among = c.grow > 0 ? lists : places;
    among[Math.floor(c.at * among.length)]?.(c);
  }
  return { shop, document, variant };
}
