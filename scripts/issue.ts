/** `npm run issue -- OF-204`: freezes the draft of a procedure and enters it in the ledger; or a temporary change by its number. */

import type { IssueEntry, TemporaryEntry } from '../src/control/index.ts';
import { type Issued, issueDocument, issueTemporary } from '../src/pipeline/index.ts';
import type { ResolvedShop } from '../src/resolve/index.ts';
import { KEY_OPTION, openShop, SHOP_OPTION, say, tellFaults } from './lib/control-command.ts';
import {
  changeLines,
  columns,
  counted,
  dayWords,
  personWords,
  signatureWords,
  table,
  visitLines,
} from './lib/control-words.ts';
import { runCommand } from './lib/faults.ts';
import { oneWord, readCommand } from './lib/options.ts';

await runCommand(() => {
  const { options, words } = readCommand(
    'issue',
    'Freezes the draft of a procedure, or a temporary change, and enters it in the ledger. What was issued stays as it is.',
    { ...SHOP_OPTION, ...KEY_OPTION },
    { name: 'DOC', help: 'document number, or number of a temporary change in temporary.yaml' },
  );
  const doc = oneWord(words, 'the document number', 'issue -- DOC');
  const opened = openShop(options);
  const { compiled, control } = opened;
  if (tellFaults(compiled, `${doc} is not issued, the ledger stays as it was`)) return 1;
  const shop = compiled.resolved;
  if (shop.temporaryChanges.some((t) => t.number === doc)) {
    const entry = issueTemporary(compiled, doc, control);
    if (entry?.kind !== 'temporary') throw new RangeError('no temporary change was written');
    say(temporaryLines(entry, shop, control.today));
  } else {
    say(issueLines(issueDocument(compiled, doc, control), shop, control.today));
  }
  return 0;
});

function issueLines({ entry, comparison }: Issued, shop: ResolvedShop, today: string): readonly string[] {
  const notice = `CN-${entry.seq}`;
  return [
    `issued ${entry.doc} Rev ${entry.rev}, ${entry.title} (line ${entry.seq} of the ledger)`,
    ...columns([
      ['class of change', entry.change.class],
      ['what', entry.change.what],
      ['why', entry.change.why],
      ['effective', dayWords(entry.effective, today)],
      ['author', personWords(shop, entry.author)],
      ['approver', `${personWords(shop, entry.approver)}, on ${entry.approved}`],
      ['signature', signatureWords(entry, shop)],
      ['also affects', entry.affects.length === 0 ? 'no other document' : affected(entry, shop)],
    ]),
    '',
    counted(entry.cards.length, 'card'),
    ...table(
      entry.cards.map((c) => [
        `${entry.doc}${c.label === '' ? '' : ` ${c.label}`}`,
        `fingerprint ${c.fingerprint}`,
        counted(c.sides, 'side'),
      ]),
    ),
    '',
    ...changeLines(comparison),
    '',
    ...visitLines(shop, entry.distribution, `change notice ${notice} goes to`),
    '',
    entry.effective > today
      ? `next: \`npm run build\` prints the cards and notices beforehand; the cards are exchanged on ${entry.effective}`
      : 'next: `npm run build` publishes it, with the cards and notices to print',
    ...(entry.distribution.length === 0 ? [] : [receiptHint(notice)]),
  ];
}

/** Each with its title; whether it was revised as well is for people to say. */
function affected({ affects }: IssueEntry, { documents }: ResolvedShop): string {
  const named = affects.map((doc) => {
    const title = documents.find((d) => d.doc === doc)?.title;
    return title === undefined ? doc : `${doc} ${title}`;
  });
  return `${named.join('; ')}: see whether a revision is due`;
}

function temporaryLines(entry: TemporaryEntry, shop: ResolvedShop, today: string): readonly string[] {
  const { benches, variants, serials } = entry.scope;
  const scope = [
    ...(benches === undefined ? [] : [`benches ${benches.join(', ')}`]),
    ...(variants === undefined ? [] : [`variants ${variants.join(', ')}`]),
    ...(serials === undefined ? [] : [`serial numbers ${serials.from} to ${serials.to}`]),
  ];
  const notice = `CN-${entry.seq}`;
  const concerned = entry.distribution.filter((d) => benches === undefined || benches.includes(d.bench));
  return [
    `issued temporary change ${entry.number} of ${entry.doc} Rev ${entry.rev} (line ${entry.seq} of the ledger)`,
    ...columns([
      ['before step', String(entry.step)],
      ['done otherwise', entry.text],
      ['why', entry.reason],
      ['holds for', scope.length === 0 ? 'every bench, variant and serial number' : scope.join('; ')],
      ['from', dayWords(entry.from, today)],
      ['last day', dayWords(entry.until, today)],
      ['author', personWords(shop, entry.author)],
      ['approver', `${personWords(shop, entry.approver)}, on ${entry.approved}`],
      ['signature', signatureWords(entry, shop)],
    ]),
    '',
    ...visitLines(shop, concerned, `change notice ${notice} goes to`),
    '',
    'next: `npm run build` publishes it, with the cards and notices to print',
    ...(concerned.length === 0 ? [] : [receiptHint(notice)]),
  ];
}

function receiptHint(notice: string): string {
  return `then enter each receipt: \`npm run receipt -- ${notice} --bench BENCH --by PERSON --on DATE\``;
}
