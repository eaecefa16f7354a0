/** Documents that are cited stand in the register of outside documents. */

import { foldedDocument } from '../../control/editions.ts';
import { outsideNamed } from '../../control/rests-on.ts';
import { didYouMean } from '../../diagnostics/index.ts';
import type { Check } from '../check.ts';
import { writtenIn } from '../written.ts';

export const outsideDocumentUnlisted: Check = {
  code: 'REV012',
  name: 'outside-document-unlisted',
  severity: 'warning',
  title: 'A document is cited that is not in the register of outside documents.',
  why: 'Nobody watches for its next edition; the maker halves a torque, and the card keeps the old one for years.',
  sources: [
    'ISO 9001:2015, 7.5.3.2: documents from outside are identified and controlled (read second-hand)',
    'common practice: they are listed with edition and owner',
  ],
  example: {
    bad: [
      {
        file: 'outside.yaml',
        to: 'pump-manual: { document: Pump manual, kind: maker\'s manual, edition: "3", owner: ben }\n',
      },
      {
        file: 'machines/pump.yaml',
        from: '    source: { document: Pump manual, edition: "3", place: page 12 }\n',
        to: '    source: { document: «Pump manaul», edition: "3", place: page 12 }\n',
      },
    ],
    good: [
      {
        file: 'outside.yaml',
        to: 'pump-manual: { document: Pump manual, kind: maker\'s manual, edition: "3", owner: ben }\n',
      },
    ],
  },
  found: (shop, tell) => {
    // What could not be read of the register may hold the name.
    if (shop.outside.length === 0 || shop.incomplete === true) return;
    const names = shop.outside.map((o) => o.document);
    const unlisted = Map.groupBy(
      writtenIn(shop).cited.filter((c) => outsideNamed(shop, c.document) === undefined),
      (c) => foldedDocument(c.document),
    );
    for (const [first, ...others] of unlisted.values()) {
      if (first === undefined) continue;
      const more =
        others.length === 0
          ? ''
          : ` (and at ${others.length === 1 ? 'another place' : `${others.length} other places`})`;
      tell(first.documentRange, `\`${first.document}\` is not in the register of outside documents${more}`, {
        hint:
          didYouMean(first.document, names) ??
          'add it to outside.yaml with `document`, `kind`, `edition` and `owner`: the one who watches for its next edition',
      });
    }
  },
};
