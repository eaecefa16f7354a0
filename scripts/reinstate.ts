/** `npm run reinstate -- OF-204 --by PERSON --approver PERSON --reason TEXT`: lifts a suspension. */

import { reinstateAct } from '../src/control/index.ts';
import { recordActs } from '../src/pipeline/index.ts';
import { KEY_OPTION, openShop, SHOP_OPTION, say, tellLater, written } from './lib/control-command.ts';
import { columns, personWords, signatureWords, visitLines } from './lib/control-words.ts';
import { runCommand } from './lib/faults.ts';
import { needed, oneWord, readCommand } from './lib/options.ts';

const USAGE = 'reinstate -- DOC --by PERSON --approver PERSON --reason TEXT';

await runCommand(() => {
  const { options, words } = readCommand(
    'reinstate',
    'Lifts the suspension of a document: its revision in force may be used again.',
    {
      ...SHOP_OPTION,
      by: { type: 'string', help: 'who asks for it, from people.yaml' },
      approver: { type: 'string', help: 'who approves it: a second person who may approve major changes' },
      reason: { type: 'string', help: 'why it is safe again' },
      ...KEY_OPTION,
    },
    { name: 'DOC', help: 'document number' },
  );
  const doc = oneWord(words, 'the document number', USAGE);
  const given = needed(options, USAGE, 'by', 'approver', 'reason');
  const { compiled, control } = openShop(options);
  const entry = written(recordActs(compiled, control, given.approver, (f) => [reinstateAct(f, { doc, ...given })]));
  if (entry.kind !== 'reinstate') throw new RangeError('no reinstatement was written');
  const shop = compiled.resolved;
  say([
    `reinstated ${doc}: the suspension is lifted (line ${entry.seq} of the ledger)`,
    ...columns([
      ['reason', entry.reason],
      ['by', personWords(shop, entry.by)],
      ['approver', personWords(shop, entry.approver)],
      ['signature', signatureWords(entry, shop)],
      ['notice', `CN-${entry.seq}`],
    ]),
    '',
    ...visitLines(shop, entry.distribution, 'the cards go back to'),
    '',
    'next: `npm run build`: until then every scan still says stop',
  ]);
  tellLater(compiled);
  return 0;
});
