/** Procedures follow the edition of an outside document that the shop holds, or were compared with it. */

import { isSameEdition } from '../../control/editions.ts';
import { confirmationOf, restsOn } from '../../control/rests-on.ts';
import type { Range } from '../../diagnostics/index.ts';
import { type Document, type OutsideDocument, placeOf, READ_FROM, type ResolvedShop } from '../../resolve/index.ts';
import type { Check, Tell } from '../check.ts';
import { type Stale, staleCitations } from './stale-citations.ts';

/** A hint is read at a glance; the site lists them all. */
const MOST_NUMBERS = 6;

export const outsideEditionSuperseded: Check = {
  code: 'REV011',
  name: 'outside-edition-superseded',
  severity: 'warning',
  title: 'A procedure rests on another edition of a document than the shop holds.',
  why: 'The maker has raised a torque in the new edition, and the joint that is closed by the old card leaks at sea.',
  sources: [
    'ISO 9001:2015, 7.5.3.2: documents from outside are identified and controlled (read second-hand)',
    'common practice: a new edition of a manual triggers a review of every card that cites it',
  ],
  example: {
    bad: [
      {
        file: 'outside.yaml',
        to: 'pump-manual: { document: Pump manual, kind: maker\'s manual, edition: "4", owner: ben }\n',
      },
      {
        file: 'procedures/mw-1.yaml',
        from: '          source: { document: Pump manual, edition: "3", place: page 14 }\n',
        to: '          source: { document: Pump manual, edition: «"3"», place: page 14 }\n',
      },
    ],
    good: [
      {
        file: 'outside.yaml',
        to: `pump-manual:
  document: Pump manual
  kind: maker's manual
  edition: "4"
  owner: ben
  confirmed:
    MW-1: { by: ben, on: 2026-02-03, finding: "Torque, gap and pressure are the same in edition 4" }
`,
      },
    ],
  },
  found: (shop, tell) => {
    const groups = Map.groupBy(staleCitations(shop), (s) => s.outside);
    for (const [outside, stale] of groups) ofOutside(shop, outside, stale, tell);
  },
};

function ofOutside(shop: ResolvedShop, outside: OutsideDocument, stale: readonly Stale[], tell: Tell): void {
  const resting = shop.documents.filter((d) => stale.some((s) => s.users.includes(d.doc)));
  /** Places in files that several procedures share, with those that name the document nowhere themselves. */
  const shared = new Map<Stale, Document[]>();
  for (const d of resting) {
    if (confirmationOf(outside, d.doc) !== undefined) continue;
    const used = stale.filter((s) => s.users.includes(d.doc));
    const own = used.find((s) => s.range.file === d[READ_FROM].range.file);
    const [first] = used;
    if (own !== undefined) report(shop, own, [d], tell);
    else if (first !== undefined) shared.set(first, [...(shared.get(first) ?? []), d]);
  }
  for (const [place, documents] of shared) report(shop, place, documents, tell);
  for (const s of stale) {
    // A manual is named for its machine; the procedures that rest on it have been told, or were confirmed.
    const told = s.users.length > 0 || resting.some((d) => s.machine !== undefined && d.machine === s.machine);
    if (!told) report(shop, s, [], tell);
  }
}

function report(shop: ResolvedShop, place: Stale, documents: readonly Document[], tell: Tell): void {
  const { outside, edition, range } = place;
  const who = documents.length === 0 ? '' : `${documents.map((d) => d.doc).join(', ')}: `;
  const numbers = documents.flatMap((d) => numbersOf(shop, d, outside));
  const listed = [...new Set(numbers)];
  const shown = listed.slice(0, MOST_NUMBERS).join('; ');
  const more = listed.length > MOST_NUMBERS ? `; and ${listed.length - MOST_NUMBERS} more` : '';
  const compare =
    listed.length === 0
      ? 'look up in the new edition what was taken from it'
      : `compare with the new edition: ${shown}${more}`;
  const confirm =
    documents.length === 0
      ? ''
      : `, or a confirmation under \`${outside.id}\` in outside.yaml: \`${confirmation(documents)}\``;
  tell(range, `${who}\`${outside.document}\` is cited as \`${edition}\`, and the shop holds \`${outside.edition}\``, {
    related: [
      { range: placeOf(outside, 'edition'), message: 'the edition that the shop holds' },
      ...documents.flatMap((d) => earlier(outside, d.doc)),
    ],
    hint: `${compare}; then write the new edition at every place${confirm}`,
  });
}

/** A confirmation that the edition which came in since has made void. */
function earlier(
  outside: OutsideDocument,
  doc: string,
): readonly { readonly range: Range; readonly message: string }[] {
  return outside.confirmed
    .filter((c) => c.doc === doc)
    .map((c) => ({
      range: placeOf(outside, 'confirmed', doc, 'on'),
      message: `compared on ${c.on}, before this edition was received on ${outside.received ?? ''}`,
    }));
}

function numbersOf(shop: ResolvedShop, document: Document, outside: OutsideDocument): readonly string[] {
  return restsOn(shop, document)
    .filter((r) => r.outsideId === outside.id && r.edition !== '' && !isSameEdition(r.edition, outside.edition))
    .flatMap((r) => r.numbers);
}

function confirmation(documents: readonly Document[]): string {
  return `confirmed: { ${documents.map((d) => `${d.doc}: { by: …, on: …, finding: … }`).join(', ')} }`;
}
