/** `npm run receipt -- CN-17 --bench BENCH --by PERSON --on DATE`: enters receipts of change notices, one or a file of them. */

import { ControlFault } from '../src/control/index.ts';
import { recordActs } from '../src/pipeline/index.ts';
import { ledgerNow, openShop, SHOP_OPTION, say, tellLater } from './lib/control-command.ts';
import { judgeReceipts, type ReceiptFile, readReceipts } from './lib/control-receipts.ts';
import { counted, openLines, openNotices } from './lib/control-words.ts';
import { runCommand, UsageFault } from './lib/faults.ts';
import { needed, type OptionValues, oneWord, readCommand, said } from './lib/options.ts';

const USAGE = 'receipt -- NOTICE --bench BENCH --by PERSON --on DATE';

await runCommand(() => {
  const { options, words } = readCommand(
    'receipt',
    'Enters that a bench has done what a change notice asks, and prints what is still open. A file of receipts is entered whole or not at all.',
    {
      ...SHOP_OPTION,
      bench: { type: 'string', help: 'bench whose copy it is; may be left out when the notice went to one bench' },
      by: { type: 'string', help: 'who signed the notice, from people.yaml' },
      on: { type: 'string', help: 'day on the signed notice, such as 2026-11-26' },
      file: {
        type: 'string',
        help: 'YAML file with rows `- { notice: CN-17, bench: pumps, by: ada, on: 2026-11-26 }`',
      },
    },
    { name: 'NOTICE', help: 'number of the change notice, such as CN-17' },
  );
  const { rows, faults, faultCount } = asked(options, words);
  const { compiled, control } = openShop(options);
  const told: string[] = [];
  try {
    const entries = recordActs(compiled, control, undefined, (facts) => {
      const judged = judgeReceipts(facts, rows);
      told.push(...judged.faults);
      if (judged.faults.length > 0 || faultCount > 0) throw new ControlFault('no receipt is entered', '');
      return judged.acts;
    });
    say([
      ...entries.flatMap((e) =>
        e.kind === 'receipt' ? [`receipt of ${e.notice} from ${e.bench}, copy ${e.copy}, on ${e.on}`] : [],
      ),
      `${counted(entries.length, 'receipt')} entered`,
      '',
      ...openLines(openNotices(ledgerNow(control, compiled.resolved), compiled.resolved, control.today), control.today),
    ]);
    tellLater(compiled);
    return 0;
  } catch (cause) {
    // The rows' own faults have been gathered; anything else concerns all of them.
    if (!(cause instanceof ControlFault) || (told.length === 0 && faultCount === 0) || cause.hint !== '') throw cause;
    const count = told.length / 2 + faultCount;
    process.stderr.write(
      `${faults}${told.map((l) => `${l}\n`).join('')}${counted(count, 'fault')}: no receipt is entered\n`,
    );
    return 1;
  }
});

/** One receipt from the command line, or those of a file. */
function asked(options: OptionValues, words: readonly string[]): ReceiptFile {
  const file = said(options['file']);
  if (file === '') {
    const notice = oneWord(words, 'the number of the change notice', USAGE);
    const bench = said(options['bench']);
    const given = { notice, ...needed(options, USAGE, 'by', 'on'), ...(bench === '' ? {} : { bench }) };
    return { rows: [{ given }], faults: '', faultCount: 0 };
  }
  if (words.length > 0 || ['bench', 'by', 'on'].some((o) => options[o] !== undefined)) {
    throw new UsageFault('a file of receipts says all about each of them', 'give `--file FILE` alone');
  }
  const read = readReceipts(file);
  if (read.rows.length === 0 && read.faultCount === 0) {
    throw new UsageFault(
      `\`${file}\` holds no receipts`,
      'write one row for each: `- { notice: CN-17, bench: pumps, by: ada, on: 2026-11-26 }`',
    );
  }
  return read;
}
