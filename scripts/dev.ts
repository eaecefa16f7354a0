/** `npm run dev`: the site of the working content with live reload; faults appear in the page and here. */

import { hasErrors, renderFull } from '../src/diagnostics/index.ts';
import { buildReport, compileShop, publishCompiled } from '../src/pipeline/index.ts';
import { devSite } from '../src/site/dev-site.ts';
import { runCommand, UsageFault } from './lib/faults.ts';
import { readOptions, shopFolder } from './lib/options.ts';
import { faultCount, shopCount } from './lib/summary.ts';
import { today } from './lib/today.ts';

await runCommand(async () => {
  const options = readOptions('dev', 'Serves the site with live reload while you write.', {
    shop: { type: 'string', help: 'the shop folder (or FETTLEBOOK_SHOP); default: content' },
    port: { type: 'string', help: 'port on this machine; default: 4321 or the next free one' },
  });
  const { port } = options;
  if (port !== undefined && !/^\d{2,5}$/.test(String(port))) {
    throw new UsageFault(`\`--port ${String(port)}\` is not a port number`, 'give a number such as 4321');
  }
  const shop = shopFolder(options);
  const site = await devSite({
    ...(port === undefined ? {} : { port: Number(port) }),
    watchDirs: [shop.folder],
    compile: async () => {
      const compiled = compileShop({ ...shop, cards: 'suspect' });
      const { diagnostics, textOf, resolved } = compiled;
      process.stdout.write(
        diagnostics.length > 0
          ? `${renderFull(diagnostics, textOf)}\n${faultCount(diagnostics)}\n`
          : `${shopCount(resolved)}: no faults\n`,
      );
      // A clock that is behind the ledger stops a build; here it only shows the day of the last line.
      const last = compiled.control.ledger.entries.at(-1)?.recorded ?? '';
      const asOf = [today(), last].sort().at(-1) ?? last;
      const { published } = publishCompiled(compiled, { asOf, drafts: true, shown: shop.shown });
      return {
        report: buildReport(compiled),
        diagnosticsText: renderFull(diagnostics, textOf),
        errors: hasErrors(diagnostics) ? diagnostics.filter((d) => d.severity === 'error').length : 0,
        // A shop with errors is half resolved; the last sound one stays behind the list of faults.
        ...(published === undefined ? {} : { shop: published.shop, control: published.view }),
      };
    },
  });
  process.stdout.write(`serving ${site.address} (end with Ctrl-C)\n`);
  return 0;
});
