/** `npm run schema`: JSON Schema files of the content, for an editor. */

import { mkdirSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { jsonSchemas } from '../src/model/index.ts';
import { runCommand } from './lib/faults.ts';
import { outFolder, readOptions } from './lib/options.ts';

await runCommand(() => {
  const options = readOptions('schema', 'Writes the JSON Schema files of all content files.', {
    out: { type: 'string', help: 'folder to write to; default: dist/schema' },
  });
  const folder = options['out'] === undefined ? path.join(outFolder({}), 'schema') : outFolder(options);
  mkdirSync(folder, { recursive: true });
  for (const [name, text] of jsonSchemas()) writeFileSync(path.join(folder, name), text);
  process.stdout.write(`${jsonSchemas().size} schema files in ${folder}\n`);
  return 0;
});
