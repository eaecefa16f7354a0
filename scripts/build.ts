/** `npm run build`: checks the shop, and publishes it only when no error stands. */

import { hasErrors, renderFull } from '../src/diagnostics/index.ts';
import { buildReport, compileShop } from '../src/pipeline/index.ts';
import { runCommand } from './lib/faults.ts';
import { outFolder, readOptions, shopFolder } from './lib/options.ts';
import { progress } from './lib/progress.ts';
import { publish } from './lib/publish.ts';
import { openStaging, type Staging } from './lib/staging.ts';
import { acceptedLines, faultCount, shopCount } from './lib/summary.ts';

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
  });
  const shop = shopFolder(options);
  const out = outFolder(options);
  const shown = progress();
  const compiled = compileShop({ ...shop, onStage: shown.stage });
  shown.end();
  const { diagnostics, accepted, textOf, resolved, checked } = compiled;
  if (diagnostics.length > 0) process.stderr.write(`${renderFull(diagnostics, textOf)}\n`);
  if (hasErrors(diagnostics) || checked === undefined) {
    process.stderr.write(`${faultCount(diagnostics)}: nothing is published, the earlier build stays as it was\n`);
    return 1;
  }
  staging = openStaging(out, shop.folder);
  try {
    const files = await publish(checked, buildReport(compiled), staging.folder, shown);
    staging.publish();
    process.stdout.write(acceptedLines(accepted, textOf));
    process.stdout.write(`${shopCount(resolved)}: ${files} files in ${out}\n`);
    return 0;
  } finally {
    staging.discard();
  }
});
