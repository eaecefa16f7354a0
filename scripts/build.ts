/** `npm run build`: checks the shop, and publishes it only when no error stands. */

import { hasErrors, renderFull } from '../src/diagnostics/index.ts';
import { buildReport, compileShop, publishCompiled } from '../src/pipeline/index.ts';
import { runCommand } from './lib/faults.ts';
import { outFolder, readOptions, shopFolder } from './lib/options.ts';
import { progress } from './lib/progress.ts';
import { publish } from './lib/publish.ts';
import { publishingDay, refuseRollBack } from './lib/publishing-day.ts';
import { openStaging, type Staging } from './lib/staging.ts';
import { acceptedLines, draftLines, faultCount, publishedCount } from './lib/summary.ts';

let staging: Staging | undefined;
for (const [signal, code] of [
  ['SIGINT', 130],
  ['SIGTERM', 143],
  ['SIGHUP', 129],
] as const) {
  process.on(signal, () => {
    staging?.discard();
    process.stderr.write('\nstopped: nothing was changed\n');
    process.exit(code);
  });
}

await runCommand(async () => {
  const options = readOptions('build', 'Checks the shop folder and publishes site, cards and binders.', {
    shop: { type: 'string', help: 'the shop folder (or FETTLEBOOK_SHOP); default: content' },
    out: { type: 'string', help: 'folder to publish to; default: dist' },
    'as-of': { type: 'string', help: 'day for which it is published, such as 2026-12-01; default: today' },
    drafts: { type: 'boolean', help: 'shows drafts as well, marked across page and card; not for the bench' },
  });
  const shop = shopFolder(options);
  const out = outFolder(options);
  const shown = progress();
  const compiled = compileShop({ ...shop, cards: 'suspect', onStage: shown.stage });
  shown.end();
  const { diagnostics, accepted, textOf, checked } = compiled;
  if (diagnostics.length > 0) process.stderr.write(`${renderFull(diagnostics, textOf)}\n`);
  if (hasErrors(diagnostics) || checked === undefined) {
    process.stderr.write(`${faultCount(diagnostics)}: nothing is published, the earlier build stays as it was\n`);
    return 1;
  }
  const { ledger } = compiled.control;
  const asOf = publishingDay(options['as-of'], ledger, (text) => process.stderr.write(`warning: ${text}\n`));
  refuseRollBack(out, ledger);
  const made = publishCompiled(compiled, { asOf, drafts: options['drafts'] === true, shown: shop.shown });
  if (made.published === undefined) {
    process.stderr.write(`${renderFull(made.diagnostics, textOf)}\n`);
    process.stderr.write(`${faultCount(made.diagnostics)}: nothing is published, the earlier build stays as it was\n`);
    return 1;
  }
  staging = openStaging(out, shop.folder);
  try {
    const files = await publish(made.published, buildReport(compiled), staging.folder, shown);
    staging.publish();
    process.stdout.write(acceptedLines(accepted, textOf));
    process.stdout.write(draftLines(made.published.view));
    process.stdout.write(`${publishedCount(made.published)}: ${files} files in ${out}\n`);
    return 0;
  } finally {
    staging.discard();
  }
});
