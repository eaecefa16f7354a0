/** What a published folder says is in force, beside the ledger; its files; and the fingerprint that is typed in. */

import { expect, test } from 'vitest';
import { AGAINST_MANIFEST, fileFindings } from '../../scripts/lib/verify-files.ts';
import { answerFingerprint, typedFingerprint } from '../../scripts/lib/verify-fingerprint.ts';
import type { Manifest } from '../../scripts/lib/verify-manifest.ts';
import { documentFindings, outOfDate, publishedLines, sinceWords } from '../../scripts/lib/verify-standing.ts';
import { type Act, documentStates, type Entry, type Ledger, NO_SEAL } from '../../src/control/index.ts';
import { compileMini } from '../fixtures/mini-shop.ts';
import { append, issueAct } from './history.ts';

const told = (doc: string): Act => ({ kind: 'suspend', doc, reason: 'Crack', by: 'ada', distribution: [] });

/** MW-1 A, then B for a later day; MW-2 A. */
const LINES = [
  ['2026-03-01', issueAct('MW-1', 'A', 'x', { effective: '2026-03-01' })],
  ['2026-03-01', issueAct('MW-2', 'A', 'x', { effective: '2026-03-01' })],
  ['2026-03-05', issueAct('MW-1', 'B', 'x', { effective: '2026-03-10' })],
] as const;
const ENTRIES = LINES.reduce<readonly Entry[]>((before, [on, act]) => append(before, on, act), []);

function ledgerOf(entries: readonly Entry[]): Ledger {
  return { entries, head: entries.at(-1)?.seal ?? NO_SEAL };
}

/** What the build writes for a day. */
function manifest(asOf: string, entries: readonly Entry[] = ENTRIES): Manifest {
  return {
    shop: 'Mini Works',
    asOf,
    engine: '0.1.0',
    ledger: { entries: entries.length, head: entries.at(-1)?.seal ?? NO_SEAL },
    documents: documentStates(entries, asOf).flatMap(({ standing, current }) =>
      standing !== 'in force' || current === undefined
        ? []
        : [
            {
              document: current.doc,
              revision: current.rev,
              effective: current.effective,
              variants: current.cards.map(({ variant, path, fingerprint }) => ({
                variant,
                path: `${path}/`,
                card: '',
                fingerprint,
              })),
            },
          ],
    ),
    files: {},
  };
}

/** The manifest with its first document changed. */
function forged(change: (d: Manifest['documents'][number]) => Manifest['documents'][number]): Manifest {
  const made = manifest('2026-03-06');
  return { ...made, documents: made.documents.map((d, i) => (i === 0 ? change(d) : d)) };
}

const words = (m: Manifest, entries: readonly Entry[] = ENTRIES): readonly string[] =>
  documentFindings(m, entries).map((f) => f.words);

test('what was built for a day holds on that day', () => {
  for (const asOf of ['2026-03-02', '2026-03-06', '2026-03-10']) expect(words(manifest(asOf))).toEqual([]);
});

test('an older revision, a forged card, a lost document and one that was never issued are each named', () => {
  expect(words({ ...manifest('2026-03-06'), asOf: '2026-03-10' })).toEqual([
    'MW-1 is shown as Rev A, and by the ledger Rev B was in force on 2026-03-10',
  ]);
  const [card] = manifest('2026-03-06').documents[0]?.variants ?? [];
  expect(
    words(
      forged((d) => ({ ...d, variants: d.variants.map((v, i) => (i === 0 ? { ...v, fingerprint: '00000000' } : v)) })),
    ),
  ).toEqual([`the card MW-1-SMALL Rev A has the fingerprint 00000000, and ${card?.fingerprint ?? ''} was issued`]);
  expect(words(forged((d) => ({ ...d, variants: d.variants.slice(1) })))).toEqual([
    'the card MW-1-SMALL Rev A was issued, and the manifest does not name it',
  ]);
  expect(
    words(
      forged((d) => ({ ...d, variants: [...d.variants, { variant: 'huge', path: '', card: '', fingerprint: '' }] })),
    ),
  ).toEqual(['the card MW-1-HUGE Rev A was not issued']);
  expect(
    words(
      forged((d) => ({ ...d, variants: d.variants.map((v) => ({ ...v, path: v.path.replace('/A/', '/B/') })) })),
    )[0],
  ).toBe('the card MW-1-SMALL Rev A has the address C/MW-1/B/SMALL/, and C/MW-1/A/SMALL/ was issued');
  expect(words({ ...manifest('2026-03-06'), documents: manifest('2026-03-06').documents.slice(1) })).toEqual([
    'MW-1 Rev A was in force on 2026-03-06 by the ledger, and the manifest does not name it',
  ]);
  expect(words(forged((d) => ({ ...d, document: 'MW-9' })))).toEqual([
    'MW-1 Rev A was in force on 2026-03-06 by the ledger, and the manifest does not name it',
    'MW-9 Rev A is shown as in force, and by the ledger it was never issued',
  ]);
});

test('a suspended document that is shown as in force is named; a draft is no claim', () => {
  const stopped = append(ENTRIES, '2026-03-06', told('MW-2'));
  expect(words(manifest('2026-03-06'), stopped)).toEqual([
    'MW-2 is shown as Rev A in force, and by the ledger it was suspended on 2026-03-06',
  ]);
  const draft = { document: 'MW-7', revision: 'A', standing: 'draft', effective: '2026-03-09', variants: [] };
  expect(words({ ...manifest('2026-03-06'), documents: [...manifest('2026-03-06').documents, draft] })).toEqual([]);
});

test('the ledger of the folder is the beginning of the shop’s, or that is said', () => {
  const stopped = append(ENTRIES, '2026-03-06', told('MW-2'));
  const of = (m: Manifest, entries: readonly Entry[]): string => {
    const found = publishedLines(m, ledgerOf(entries));
    return 'finding' in found ? found.finding.words : (sinceWords(found.lines, ledgerOf(entries)) ?? 'the same');
  };
  expect(of(manifest('2026-03-06'), ENTRIES)).toBe('the same');
  expect(of(manifest('2026-03-06', []), [])).toBe('the same');
  expect(of(manifest('2026-03-06'), stopped)).toBe(
    'the folder is older than the ledger: 1 line came after it (suspension of MW-2)',
  );
  expect(of(manifest('2026-03-06', stopped), ENTRIES)).toContain(
    'from 4 lines of a ledger, and the ledger of this shop has 3',
  );
  const branch = append(ENTRIES, '2026-03-06', told('MW-1'));
  expect(of(manifest('2026-03-06', stopped), branch)).toBe(
    'it comes from another history: line 4 of the ledger from which it was published is not the one of this shop',
  );
});

test('a folder that stood still while a day came is out of date', () => {
  const of = (asOf: string, today: string): readonly string[] =>
    outOfDate(manifest(asOf), ENTRIES, ledgerOf(ENTRIES), today).map((f) => f.words);
  expect(of('2026-03-06', '2026-03-09')).toEqual([]);
  expect(of('2026-03-06', '2026-03-10')).toEqual([
    'MW-1: the folder shows in force Rev A, Rev B not yet effective, and now it is in force Rev B',
  ]);
  // Published for a day to come: looked at as of that day.
  expect(of('2026-03-10', '2026-03-06')).toEqual([]);
});

test('files are compared by name and digest, whatever they are called', () => {
  const found = new Map([
    ['a', '1'],
    ['b', undefined],
    ['toString', '3'],
  ]);
  expect(
    fileFindings(found, { a: '1', b: '2', c: '4' }, AGAINST_MANIFEST).map((f) => [f.kind, f.words.split(':')[0]]),
  ).toEqual([
    ['differs', 'b'],
    ['missing', 'c'],
    ['surplus', 'toString'],
  ]);
});

test('a fingerprint is read as people type it, and answered as of the day', () => {
  expect(typedFingerprint(' 1a2b-3c4d ')).toBe('1A2B3C4D');
  expect(typedFingerprint('OO112233')).toBe('00112233');
  for (const wrong of ['1A2B3C4', '1A2B3C4G', '']) expect(() => typedFingerprint(wrong)).toThrow('is no fingerprint');
  const { resolved } = compileMini();
  const issued = issueAct('MW-1', 'B', 'x').cards[0]?.fingerprint ?? '';
  const of = (fingerprint: string, today: string): string =>
    answerFingerprint(fingerprint, ledgerOf(ENTRIES), resolved, today).lines.join('\n');
  expect(of(issued, '2026-03-06')).toContain(
    'MW-1 Rev B, small, Renew the cover gasket. As of 2026-03-06 it is not yet effective',
  );
  expect(of(issued, '2026-03-10')).toContain('it is current: it may be used');
  const draft = resolved.documents[0]?.variants[0]?.fingerprint ?? '';
  expect(of(draft, '2026-03-10')).toContain('It is a draft that was not issued: do not use it');
  const slip = `${issued.slice(0, 7)}${issued.endsWith('0') ? '1' : '0'}`;
  expect(of(slip, '2026-03-10')).toContain(`there is a card with ${issued}: read the fingerprint once more`);
});
