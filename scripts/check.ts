/** `npm run check`: every fault of the content, and no output files. */

import { hasErrors, renderFull, renderJson, renderSarif, renderShort } from '../src/diagnostics/index.ts';
import { compileShop } from '../src/pipeline/index.ts';
import { CHECKS } from '../src/rules/index.ts';
import { runCommand } from './lib/faults.ts';
import { readOptions, shopFolder } from './lib/options.ts';
import { acceptedLines, faultCount, shopCount } from './lib/summary.ts';

await runCommand(() => {
  const options = readOptions('check', 'Reads the shop folder and prints every fault. Writes no files.', {
    shop: { type: 'string', help: 'the shop folder (or FETTLEBOOK_SHOP); default: content' },
    json: { type: 'boolean', help: 'an array of {code, name, severity, message, file, line, column, hint, related}' },
    sarif: { type: 'boolean', help: 'SARIF 2.1.0' },
    short: { type: 'boolean', help: 'one line a fault' },
  });
  const { diagnostics, accepted, textOf, resolved } = compileShop({ ...shopFolder(options), cards: 'suspect' });
  if (options['json'] === true) process.stdout.write(renderJson(diagnostics, textOf));
  else if (options['sarif'] === true)
    process.stdout.write(renderSarif({ diagnostics, accepted, rules: CHECKS, textOf }));
  else if (options['short'] === true) process.stdout.write(renderShort(diagnostics, textOf));
  else {
    if (diagnostics.length > 0) process.stdout.write(`${renderFull(diagnostics, textOf)}\n`);
    process.stdout.write(acceptedLines(accepted, textOf));
    process.stdout.write(`${faultCount(diagnostics, accepted)} in ${shopCount(resolved) || 'an empty shop'}\n`);
  }
  return hasErrors(diagnostics) ? 1 : 0;
});
