/** Started by dev.test.ts: the dev server in a process of its own, since Astro behaves differently inside the test runner. */

import { buildReport, compileShop } from '../../src/pipeline/index.ts';
import { devSite } from '../../src/site/dev-site.ts';

const [, , content = '', port = ''] = process.argv;
const say = (word: string) => process.stdout.write(`${word}\n`);

const site = await devSite({
  port: Number(port),
  watchDirs: [content],
  onCompiled: ({ errors }) => say(`compiled ${errors}`),
  compile: async () => {
    const compiled = compileShop({ folder: content, shown: 'content' });
    const { checked, diagnostics } = compiled;
    const report = buildReport(compiled);
    const errors = diagnostics.filter((d) => d.severity === 'error').length;
    const diagnosticsText = diagnostics.map((d) => `${d.code} ${d.message}`).join('\n');
    const outcome = { report, diagnosticsText, errors };
    return checked === undefined ? outcome : { ...outcome, shop: checked.shop };
  },
});
say(`serves ${site.address}`);
