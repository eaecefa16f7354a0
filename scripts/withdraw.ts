/** `npm run withdraw -- OF-204 --by PERSON --approver PERSON --reason TEXT`: takes a document out of use for good. */

import { type WithdrawEntry, withdrawAct } from '../src/control/index.ts';
import { recordActs } from '../src/pipeline/index.ts';
import type { ResolvedShop } from '../src/resolve/index.ts';
import { KEY_OPTION, openShop, SHOP_OPTION, say, tellLater, written } from './lib/control-command.ts';
import { columns, dayWords, personWords, signatureWords, visitLines } from './lib/control-words.ts';
import { runCommand } from './lib/faults.ts';
import { needed, oneWord, readCommand, said } from './lib/options.ts';

const USAGE = 'withdraw -- DOC --by PERSON --approver PERSON --reason TEXT';

await runCommand(() => {
  const { options, words } = readCommand(
    'withdraw',
    'Takes a document out of use for good: its number is not used again.',
    {
      ...SHOP_OPTION,
      by: { type: 'string', help: 'who asks for it, from people.yaml' },
      approver: { type: 'string', help: 'who approves it: a second person who may approve major changes' },
      reason: { type: 'string', help: 'why it is no longer used' },
      effective: { type: 'string', help: 'first day without it, such as 2026-12-01; default: today' },
      replacement: { type: 'string', help: 'document to use instead' },
      ...KEY_OPTION,
    },
    { name: 'DOC', help: 'document number' },
  );
  const doc = oneWord(words, 'the document number', USAGE);
  const given = needed(options, USAGE, 'by', 'approver', 'reason');
  const { compiled, control } = openShop(options);
  const effective = said(options['effective']) || control.today;
  const replacement = said(options['replacement']);
  const entry = written(
    recordActs(compiled, control, given.approver, (facts) => [
      withdrawAct(facts, { doc, ...given, effective, ...(replacement === '' ? {} : { replacement }) }),
    ]),
  );
  if (entry.kind !== 'withdraw') throw new RangeError('no withdrawal was written');
  say(lines(entry, compiled.resolved, control.today));
  tellLater(compiled);
  return 0;
});

function lines(entry: WithdrawEntry, shop: ResolvedShop, today: string): readonly string[] {
  const { doc, effective } = entry;
  const binders = shop.benches.filter((b) => b.binder.includes(doc)).map((b) => b.id);
  const listed = shop.documents.some((d) => d.doc === doc);
  const leave = [
    ...(listed ? ['its procedure file'] : []),
    ...(binders.length === 0 ? [] : [`\`${doc}\` in the binders of ${binders.join(', ')} in benches.yaml`]),
  ].join(', and ');
  return [
    `withdrawn ${doc} (line ${entry.seq} of the ledger)`,
    ...columns([
      ['effective', dayWords(effective, today)],
      ['use instead', entry.replacement ?? 'no other document'],
      ['reason', entry.reason],
      ['by', personWords(shop, entry.by)],
      ['approver', personWords(shop, entry.approver)],
      ['signature', signatureWords(entry, shop)],
      ['notice', `CN-${entry.seq}`],
    ]),
    '',
    ...visitLines(
      shop,
      entry.distribution,
      effective > today ? `take the cards out on ${effective} at` : 'go there and take the cards out',
    ),
    '',
    `next: \`npm run build\`: ${effective > today ? `from ${effective} on` : 'from then on'} every scan of its cards says withdrawn`,
    ...(leave === '' ? [] : [`${effective > today ? `after ${effective}` : 'afterwards'} take out ${leave}`]),
  ];
}
