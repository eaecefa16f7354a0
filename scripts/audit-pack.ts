/** `npm run audit-pack -- --out DIR`: everything about control on a day, as lists, a PDF and the ledger, with checksums. */

import { writeFileSync } from 'node:fs';
import path from 'node:path';
import { auditPack, CHECKSUMS } from '../src/control/audit-pack.ts';
import { diskFiles, LEDGER, publishShop } from '../src/control/index.ts';
import { collector, hasErrors, renderFull } from '../src/diagnostics/index.ts';
import { paintAuditPack } from '../src/render/pdf/index.ts';
import { CATALOGUE } from '../src/rules/index.ts';
import { openShop, SHOP_OPTION, say, tellFaults } from './lib/control-command.ts';
import { counted } from './lib/control-words.ts';
import { runCommand } from './lib/faults.ts';
import { needed, outFolder, readOptions } from './lib/options.ts';
import { publishingDay } from './lib/publishing-day.ts';
import { openStaging } from './lib/staging.ts';
import { today } from './lib/today.ts';

const PDF = 'audit-pack.pdf';
const LINES = 'ledger.jsonl';

await runCommand(async () => {
  const options = readOptions(
    'audit-pack',
    'Writes a folder for an auditor: register, effective pages, changes, approvals, distribution, reviews, and what is open.',
    {
      ...SHOP_OPTION,
      out: { type: 'string', help: 'folder to write to; an audit pack that is there is replaced' },
      'as-of': {
        type: 'string',
        help: 'day of which it tells, such as 2026-12-01; default: that of the last line of the ledger',
      },
    },
  );
  needed(options, 'audit-pack -- --out DIR', 'out');
  const out = outFolder(options);
  const { compiled, control } = openShop(options);
  // Warnings are for authors; the pack is for somebody else.
  if (hasErrors(compiled.diagnostics)) {
    tellFaults(compiled, 'no audit pack is written');
    return 1;
  }
  const { ledger } = compiled.control;
  // Not the day of the clock: the same commit gives the same bytes.
  const last = ledger.entries.at(-1)?.recorded ?? today();
  const asOf = publishingDay(options['as-of'], ledger, () => undefined, last);
  const { report, list } = collector(CATALOGUE);
  const files = diskFiles(control.folder);
  const { view, shop } = publishShop(
    compiled.resolved,
    compiled.control,
    files,
    { asOf, drafts: false, shown: control.shown },
    report,
  );
  if (hasErrors(list())) {
    process.stderr.write(`${renderFull(list(), compiled.textOf)}\nno audit pack is written\n`);
    return 1;
  }
  const others = [
    {
      name: PDF,
      bytes: await paintAuditPack(view, shop, ledger),
      says: 'The lists on paper.',
    },
    {
      name: LINES,
      bytes: files.read(LEDGER) ?? new Uint8Array(),
      says: 'The ledger itself, byte for byte, as it lies in the folder of the shop.',
    },
  ];
  const pack = auditPack(view, shop, ledger, others);
  const staging = openStaging(out, control.folder, { mark: CHECKSUMS, what: 'an audit pack' });
  try {
    for (const { name, text } of pack) writeFileSync(path.join(staging.folder, name), text);
    for (const { name, bytes } of others) writeFileSync(path.join(staging.folder, name), bytes);
    staging.publish();
  } finally {
    staging.discard();
  }
  say([`audit pack as of ${asOf}: ${counted(pack.length + others.length, 'file')} in ${out}`]);
  return 0;
});
