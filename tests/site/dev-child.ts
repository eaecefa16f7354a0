/** Started by dev.test.ts: the dev server in a process of its own, since Astro behaves differently inside the test runner. */

import { compileShop } from '../../src/pipeline/index.ts';
import { devSite } from '../../src/site/dev-site.ts';

const [, , content = '', port = ''] = process.argv;
const say = (word: string) => process.stdout.write(`${word}\n`);

const site = await devSite({
  port: Number(port),
  watchDirs: [content],
  onCompiled: ({ errors }) => say(`compiled ${errors}`),
  compile: async () => {
    const { checked, diagnostics } = compileShop({ folder: content, shown: 'content' });
    const errors = diagnostics.filter((d) => d.severity === 'error').length;
    const diagnosticsText = diagnostics.map((d) => `${d.code} ${d.message}`).join('\n');
    return checked === undefined ? { diagnosticsText, errors } : { shop: checked.shop, diagnosticsText, errors };
  },
});
say(`serves ${site.address}`);
