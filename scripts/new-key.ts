/** `npm run new-key -- PERSON --out FILE`: a pair of keys for an approver; the public half goes into the shop's folder. */

import { createPrivateKey, createPublicKey } from 'node:crypto';
import { existsSync, mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { KEYS, keyIdOf, newKeyPair } from '../src/control/index.ts';
import { didYouMean } from '../src/diagnostics/index.ts';
import { compileShop } from '../src/pipeline/index.ts';
import type { Person } from '../src/resolve/index.ts';
import { isInside, SHOP_OPTION, say } from './lib/control-command.ts';
import { columns } from './lib/control-words.ts';
import { runCommand, UsageFault } from './lib/faults.ts';
import { needed, oneWord, readCommand, shopFolder, typedPath } from './lib/options.ts';

const USAGE = 'new-key -- PERSON --out FILE';

await runCommand(() => {
  const { options, words } = readCommand(
    'new-key',
    'Makes a pair of Ed25519 keys for an approver. The private half is the approver’s alone and never lies in the shop’s folder.',
    { ...SHOP_OPTION, out: { type: 'string', help: 'new file for the private key, outside the shop’s folder' } },
    { name: 'PERSON', help: 'approver, from people.yaml' },
  );
  const id = oneWord(words, 'the person', USAGE);
  const { out } = needed(options, USAGE, 'out');
  const shop = shopFolder(options);
  const person = personOf(compileShop({ ...shop, cards: 'suspect' }).resolved.people, id);
  const file = typedPath(out);
  refuseUnsafe(file, out, shop.folder);
  const { publicPem, privatePem } = newKeyPair();
  const name = `${KEYS}/${id}.pem`;
  const older = writePair(file, privatePem, path.join(shop.folder, name), publicPem);
  say([
    `made a pair of keys for ${person.name}, ${person.role}`,
    ...columns([
      ['key', keyIdOf(createPublicKey(createPrivateKey(privatePem)))],
      [
        'public half',
        `${shop.shown}/${name}${older ? ', above the older ones, which stay: what they signed is still verified' : ''}`,
      ],
      ['private half', `${out}: only its owner may read it; keep it off shared disks and out of version control`],
    ]),
    ...(person.approves.length === 0
      ? ['', `\`${id}\` may approve nothing by people.yaml, so that nothing will be signed with it yet`]
      : []),
    '',
    `next: keep ${name} with the shop’s folder; sign with \`npm run issue -- DOC --key ${out}\``,
  ]);
  return 0;
});

function personOf(people: readonly Person[], id: string): Person {
  const found = people.find((p) => p.id === id);
  if (found !== undefined) return found;
  const ids = people.map((p) => p.id);
  throw new UsageFault(
    `\`${id}\` is not in people.yaml`,
    didYouMean(id, ids) ??
      (ids.length === 0 ? 'no person can be read: run `npm run check`' : `known are ${ids.join(', ')}`),
  );
}

function refuseUnsafe(file: string, given: string, shop: string): void {
  if (!existsSync(path.dirname(file))) {
    throw new UsageFault(`the folder of \`${given}\` is not there`, 'make it, or name another file with `--out FILE`');
  }
  if (isInside(file, shop)) {
    throw new UsageFault(
      `\`${given}\` lies in the shop’s folder, where others would find the private key`,
      'choose a file outside it with `--out FILE`',
    );
  }
  if (existsSync(file)) {
    throw new UsageFault(
      `\`${given}\` is there already`,
      'choose a new file with `--out FILE`: a key is never overwritten',
    );
  }
}

/** The private half first: a public one without it would be of no use. Returns whether older keys stand below. */
function writePair(file: string, privatePem: string, publicFile: string, publicPem: string): boolean {
  writeFileSync(file, privatePem, { mode: 0o600, flag: 'wx' });
  // Outside `keys/`, so that a killed command leaves no half key among the keys; the reader of content passes dots over.
  const part = path.join(path.dirname(path.dirname(publicFile)), `.${path.basename(publicFile)}.part`);
  try {
    const older = existsSync(publicFile) ? readFileSync(publicFile, 'utf8') : '';
    mkdirSync(path.dirname(publicFile), { recursive: true });
    writeFileSync(part, publicPem + older);
    renameSync(part, publicFile);
    return older !== '';
  } catch (cause) {
    rmSync(part, { force: true });
    rmSync(file, { force: true });
    throw cause;
  }
}
