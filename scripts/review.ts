/** `npm run review -- OF-204 --by PERSON --on DATE --finding TEXT`: enters a periodic review that leaves the document as it is. */

import { diskFiles, documentStates, reviewAct, snapshotOf } from '../src/control/index.ts';
import { reviewStates } from '../src/control/reviews.ts';
import { recordActs } from '../src/pipeline/index.ts';
import { ledgerNow, type Opened, openShop, SHOP_OPTION, say, tellLater, written } from './lib/control-command.ts';
import { columns, personWords } from './lib/control-words.ts';
import { runCommand } from './lib/faults.ts';
import { needed, oneWord, readCommand } from './lib/options.ts';

const USAGE = 'review -- DOC --by PERSON --on DATE --finding TEXT';

await runCommand(() => {
  const { options, words } = readCommand(
    'review',
    'Enters a review that found the revision in force fit for use. A document that must change is issued anew instead.',
    {
      ...SHOP_OPTION,
      by: { type: 'string', help: 'who reviewed it, from people.yaml' },
      on: { type: 'string', help: 'day of the review, such as 2026-11-26' },
      finding: { type: 'string', help: 'what was looked at, and what was found' },
    },
    { name: 'DOC', help: 'document number' },
  );
  const doc = oneWord(words, 'the document number', USAGE);
  const given = needed(options, USAGE, 'by', 'on', 'finding');
  const opened = openShop(options);
  const { compiled, control } = opened;
  const entry = written(recordActs(compiled, control, undefined, (facts) => [reviewAct(facts, { doc, ...given })]));
  if (entry.kind !== 'review') throw new RangeError('no review was written');
  const shop = compiled.resolved;
  const next = nextReview(opened, doc);
  say([
    `reviewed ${doc} Rev ${entry.rev} on ${entry.on} (line ${entry.seq} of the ledger)`,
    ...columns([
      ['finding', entry.finding],
      ['by', personWords(shop, entry.by)],
      ...(next === undefined ? [] : [['next review', `by ${next}`] as const]),
    ]),
  ]);
  tellLater(compiled);
  return 0;
});

/** By the interval of the issue in force, which may not be that of the draft. */
function nextReview({ compiled, control }: Opened, doc: string): string | undefined {
  const { entries } = ledgerNow(control, compiled.resolved);
  const states = documentStates(entries, control.today).filter((s) => s.doc === doc);
  const current = states[0]?.current;
  const snapshot = current && snapshotOf(diskFiles(control.folder), current, control.shown);
  if (snapshot === undefined) return undefined;
  return reviewStates(states, new Map([[doc, snapshot.document]]), control.today, 0)[0]?.due;
}
