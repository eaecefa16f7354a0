/** A document that is cited without its edition. */

import type { Check } from '../check.ts';
import { writtenIn } from '../written.ts';

/** `ISO 898-1:2013`, `PCC-1-2019`, `catalogue of 2019`: the name holds the edition; the number of `ST-2040` is none. */
const DATED = /(?:^|[\s:(]|\d-)(?:19|20)\d\d(?!\d)/;

export const sourceWithoutEdition: Check = {
  code: 'REV007',
  name: 'source-without-edition',
  severity: 'warning',
  title: 'A document is cited without its edition.',
  why: 'The maker changes a torque in the next edition, and nobody can tell which cards were written from the old one.',
  sources: [
    'ISO 9001:2015, 7.5.3.2: documents from outside are identified and controlled (read second-hand)',
    'common practice: manuals without edition are a usual finding of an audit',
  ],
  example: {
    bad: [
      {
        file: 'machines/pump.yaml',
        from: '    source: { document: Pump manual, edition: "3", place: page 12 }\n',
        to: '    source: { document: «Pump manual», place: page 12 }\n',
      },
    ],
  },
  found: (shop, tell) => {
    const { cited } = writtenIn(shop);
    const editions = new Map(cited.flatMap((c) => (c.edition === undefined ? [] : [[c.document, c.edition] as const])));
    for (const { document, edition, documentRange } of cited) {
      if (edition !== undefined || DATED.test(document)) continue;
      const elsewhere = editions.get(document);
      tell(documentRange, `\`${document}\` is cited without its edition`, {
        hint:
          elsewhere === undefined
            ? 'add `edition:` as it stands on its title page: edition, issue, revision or date'
            : `add \`edition:\`; elsewhere it is cited as \`${elsewhere}\``,
      });
    }
  },
};
