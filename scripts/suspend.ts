/** `npm run suspend -- OF-204 --by PERSON --reason TEXT`: a safety stop, and the benches to visit. */

import { recordActs } from '../src/pipeline/index.ts';
import { openShop, SHOP_OPTION, say, tellLater, written } from './lib/control-command.ts';
import { stopAct } from './lib/control-stop.ts';
import { columns, personWords, visitLines } from './lib/control-words.ts';
import { runCommand } from './lib/faults.ts';
import { needed, oneWord, readCommand } from './lib/options.ts';

const USAGE = 'suspend -- DOC --by PERSON --reason TEXT';

await runCommand(() => {
  const { options, words } = readCommand(
    'suspend',
    'Stops a document: no copy of it may be used. Needs no approval, and content with errors does not hold it up.',
    {
      ...SHOP_OPTION,
      by: { type: 'string', help: 'who stops it, from people.yaml' },
      reason: { type: 'string', help: 'why, in words that the bench understands' },
    },
    { name: 'DOC', help: 'document number' },
  );
  const doc = oneWord(words, 'the document number', USAGE);
  const { by, reason } = needed(options, USAGE, 'by', 'reason');
  const { compiled, control } = openShop(options);
  const warn = (text: string): void => {
    process.stderr.write(`warning: ${text}\n`);
  };
  const entry = written(
    recordActs(compiled, control, undefined, (facts) => [stopAct(facts, compiled, control, { doc, by, reason }, warn)]),
  );
  if (entry.kind !== 'suspend') throw new RangeError('no suspension was written');
  const shop = compiled.resolved;
  say([
    `suspended ${doc}: no copy may be used (line ${entry.seq} of the ledger)`,
    ...columns([
      ['reason', entry.reason],
      ['by', personWords(shop, entry.by)],
      ['notice', `CN-${entry.seq}`],
    ]),
    '',
    ...visitLines(shop, entry.distribution, 'go there now and take the cards out'),
    '',
    'next: `npm run build`: from then on every scan of its cards, of any revision, says stop',
    `to lift it: \`npm run reinstate -- ${doc} --by PERSON --approver PERSON --reason TEXT\``,
  ]);
  tellLater(compiled);
  return 0;
});
