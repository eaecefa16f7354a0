/** Who answers for this revision, what changed, and on what it rests. */

import type { Document, ResolvedShop } from '../../resolve/types.ts';
import { textWidthOf } from './format.ts';
import { type Block, mm, stack } from './items.ts';
import { paragraph, type Setting, span } from './setting.ts';
import { sentence, sourceText } from './source-text.ts';

export function controlBlock(setting: Setting, shop: ResolvedShop, document: Document): Block {
  const width = textWidthOf(setting.format);
  const { small } = setting.format.type;
  const said = (head: string, words: string): Block =>
    paragraph(setting, [span(head, small, 'semibold'), span(words, small)], width);
  const { sources, revision } = document;
  const { report } = shop.info;
  return stack(
    [
      said(`Revision\u00a0${revision.rev}: `, revisionText(shop, document)),
      ...(sources.length === 0 ? [] : [said('Rests on: ', sources.map(sourceText).join('; '))]),
      ...(report === undefined ? [] : [said('Something wrong on this card? ', sentence(report))]),
    ],
    mm(0.6),
  );
}

/** The change record in a line. Why it was changed stands in the panel of changes, where there is one. */
export function revisionText(shop: ResolvedShop, document: Document): string {
  const { revision, changes } = document;
  const name = (id: string): string => personName(shop, id);
  const approval =
    document.standing === 'draft'
      ? `to be approved by ${name(revision.approver)}`
      : `approved by ${name(revision.approver)} on ${revision.approved}`;
  const why = changes === undefined ? ` ${sentence(revision.why)}` : '';
  return `${sentence(revision.what)}${why} Written by ${name(revision.author)}, ${approval}. Review every ${document.review}.`;
}

/** Name of a person of the register; what is no id there stays as it is. */
export function personName(shop: ResolvedShop, id: string): string {
  return shop.people.find((p) => p.id === id)?.name ?? id;
}
