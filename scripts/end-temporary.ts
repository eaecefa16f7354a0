/** `npm run end-temporary -- TC-07 --by PERSON --reason TEXT`: ends a temporary change before its last day. */

import { endTemporaryAct } from '../src/control/index.ts';
import { recordActs } from '../src/pipeline/index.ts';
import { openShop, SHOP_OPTION, say, tellLater, written } from './lib/control-command.ts';
import { columns, personWords, visitLines } from './lib/control-words.ts';
import { runCommand } from './lib/faults.ts';
import { needed, oneWord, readCommand } from './lib/options.ts';

const USAGE = 'end-temporary -- NUMBER --by PERSON --reason TEXT';

await runCommand(() => {
  const { options, words } = readCommand(
    'end-temporary',
    'Ends a temporary change before its last day: the card is exchanged for the one without it.',
    {
      ...SHOP_OPTION,
      by: { type: 'string', help: 'who ends it, from people.yaml' },
      reason: { type: 'string', help: 'why' },
    },
    { name: 'NUMBER', help: 'number of the temporary change, such as TC-07' },
  );
  const number = oneWord(words, 'the number of the temporary change', USAGE);
  const given = needed(options, USAGE, 'by', 'reason');
  const { compiled, control } = openShop(options);
  let scope: readonly string[] | undefined;
  const entry = written(
    recordActs(compiled, control, undefined, (facts) => {
      const act = endTemporaryAct(facts, { number, ...given });
      const change = facts.ledger.entries.find((e) => e.kind === 'temporary' && e.number === number);
      scope = change?.kind === 'temporary' ? change.scope.benches : undefined;
      return [act];
    }),
  );
  if (entry.kind !== 'temporary-end') throw new RangeError('no end of a temporary change was written');
  const shop = compiled.resolved;
  const concerned = entry.distribution.filter((d) => scope === undefined || scope.includes(d.bench));
  say([
    `ended temporary change ${number} (line ${entry.seq} of the ledger)`,
    ...columns([
      ['reason', entry.reason],
      ['by', personWords(shop, entry.by)],
      ['notice', `CN-${entry.seq}`],
    ]),
    '',
    ...visitLines(shop, concerned, 'the card without it goes to'),
    '',
    'next: `npm run build`; then take the change out of temporary.yaml',
  ]);
  tellLater(compiled);
  return 0;
});
