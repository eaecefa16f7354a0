/** `npm run check`: every fault of the content, and no output files. */

import { hasErrors, renderFull, renderJson, renderShort } from '../src/diagnostics/index.ts';
import { compileShop } from '../src/pipeline/index.ts';
import { runCommand } from './lib/faults.ts';
import { readOptions, shopFolder } from './lib/options.ts';
import { faultCount, shopCount } from './lib/summary.ts';

await runCommand(() => {
  const options = readOptions('check', 'Reads the shop folder and prints every fault. Writes no files.', {
    shop: { type: 'string', help: 'the shop folder (or FETTLEBOOK_SHOP); default: content' },
    json: { type: 'boolean', help: 'an array of {code, severity, message, file, line, column, hint}' },
    short: { type: 'boolean', help: 'one line a fault' },
  });
  const { diagnostics, textOf, resolved } = compileShop(shopFolder(options));
  if (options['json'] === true) process.stdout.write(renderJson(diagnostics, textOf));
  else if (options['short'] === true) process.stdout.write(renderShort(diagnostics, textOf));
  else {
    if (diagnostics.length > 0) process.stdout.write(`${renderFull(diagnostics, textOf)}\n`);
    process.stdout.write(`${faultCount(diagnostics)} in ${shopCount(resolved) || 'an empty shop'}\n`);
  }
  return hasErrors(diagnostics) ? 1 : 0;
});
