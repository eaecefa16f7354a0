/** One document cited in two editions. */

import { foldedDocument, foldedEdition } from '../../control/editions.ts';
import { outsideNamed } from '../../control/rests-on.ts';
import type { Check } from '../check.ts';
import { type Cited, writtenIn } from '../written.ts';

export const editionsDiffer: Check = {
  code: 'REV008',
  name: 'editions-differ',
  severity: 'warning',
  title: 'The same document is cited in two editions.',
  why: 'Two cards for one machine rest on two manuals; where the maker changed a limit between them, one card is wrong.',
  sources: [
    'common practice: a new edition of a manual triggers a review of every card that cites it',
    'ISO 9001:2015, 7.5.3.2 (read second-hand)',
  ],
  example: {
    bad: [
      {
        file: 'procedures/mw-1.yaml',
        from: '          source: { document: Pump manual, edition: "3", place: page 14 }\n',
        to: '          source: { document: Pump manual, edition: «"2"», place: page 14 }\n',
      },
    ],
  },
  found: (shop, tell) => {
    const documents = Map.groupBy(
      // Of a listed document the register says which edition is the right one.
      writtenIn(shop).cited.filter((c) => c.edition !== undefined && outsideNamed(shop, c.document) === undefined),
      (c) => foldedDocument(c.document),
    );
    for (const all of documents.values()) {
      const editions = [...Map.groupBy(all, (c) => foldedEdition(c.edition ?? '')).values()];
      const [usual, ...others] = editions.sort((a, b) => b.length - a.length);
      const [first] = usual ?? [];
      if (usual === undefined || first === undefined) continue;
      for (const c of others.flat()) {
        tell(
          c.editionRange ?? c.documentRange,
          `\`${c.document}\` is cited as \`${c.edition}\` here, and as \`${first.edition}\` ${places(usual)}`,
          {
            related: [{ range: first.editionRange ?? first.documentRange, message: `cited as \`${first.edition}\`` }],
            hint: 'see which edition lies at the bench, look the number up in it again, and write that edition at every place',
          },
        );
      }
    }
  },
};

function places(cited: readonly Cited[]): string {
  return cited.length === 1 ? 'at another place' : `at ${cited.length} other places`;
}
