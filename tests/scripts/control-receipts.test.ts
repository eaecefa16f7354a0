/** `receipt` from the command line: one or a file of them, all or none, and what is still open. */

import { writeFileSync } from 'node:fs';
import path from 'node:path';
import { beforeAll, expect, test } from 'vitest';
import { controlShop, copyOf } from './control-shop.ts';
import { digest, keptFolder, temporaryFolder } from './run.ts';

const DAY = '2026-03-02';

const shop = controlShop(path.join(keptFolder(), 'shop'));
beforeAll(async () => {
  for (const doc of ['MW-1', 'MW-2']) {
    const { code, stderr } = await shop.run('issue.ts', DAY, doc);
    expect(code, stderr).toBe(0);
  }
});

test('a receipt is entered, and the others are told with age and limit, the oldest first', async () => {
  const own = copyOf(shop);
  const one = await own.run('receipt.ts', '2026-03-12', 'CN-1', '--bench', 'pumps', '--by', 'ada', '--on', DAY);
  expect(one.code, one.stderr).toBe(0);
  expect(one.stdout).toBe(`receipt of CN-1 from pumps, copy 1, on 2026-03-02
1 receipt entered

2 receipts open, 2 overdue
  CN-1  spares  copy 2  MW-1: put in Rev A  open for 10 days; limit 3 days: OVERDUE by 7 days
  CN-2  pumps   copy 1  MW-2: put in Rev A  open for 10 days; limit 3 days: OVERDUE by 7 days
`);
  const again = await own.run('receipt.ts', '2026-03-12', 'CN-1', '--bench', 'pumps', '--by', 'ada', '--on', DAY);
  expect(again.code).toBe(1);
  expect(again.stderr).toContain('fault: the receipt of CN-1 from pumps is there already, of 2026-03-02');
});

test('a file of receipts is entered whole; a new issue waits for its day', async () => {
  const own = copyOf(shop);
  own.revise('B', '2026-03-04');
  expect((await own.run('issue.ts', DAY, 'MW-1')).code).toBe(0);
  const rows = ['pumps', 'spares'].map((bench) => `- { notice: CN-1, bench: ${bench}, by: ada, on: ${DAY} }`);
  const file = path.join(temporaryFolder(), 'receipts.yaml');
  writeFileSync(file, [...rows, `- { notice: CN-2, by: ada, on: ${DAY} }`, ''].join('\n'));
  const { code, stdout, stderr } = await own.run('receipt.ts', DAY, '--file', file);
  expect(code, stderr).toBe(0);
  expect(stdout).toContain(
    'receipt of CN-2 from pumps, copy 1, on 2026-03-02\n3 receipts entered\n\n2 receipts open\n',
  );
  expect(stdout).toContain('take out Rev A, put in Rev B  to be done on 2026-03-04, in 2 days; limit ');
  expect(own.ledger().trimEnd().split('\n')).toHaveLength(6);
});

test('a file with faulty rows names each with its line and column, and nothing is written', async () => {
  const own = copyOf(shop);
  const file = path.join(temporaryFolder(), 'receipts.yaml');
  writeFileSync(
    file,
    `# of the week
- { notice: CN-1, bench: pumps, by: ada, on: 2026-03-02 }
- { notice: CN-9, bench: pumps, by: ada, on: 2026-03-02 }
- { notice: CN-2, by: adda, on: 2026-03-02 }
-  { notice: CN-1, by: ada, on: 2026-03-02 }
`,
  );
  const before = digest(own.folder);
  const { code, stdout, stderr } = await own.run('receipt.ts', DAY, '--file', file);
  expect(stderr).toBe(`fault: ${file}:3:3: no notice CN-9 for the bench \`pumps\` waits for a receipt
  hint: did you mean \`CN-1 pumps\`?
fault: ${file}:4:3: \`adda\` is not in people.yaml
  hint: did you mean \`ada\`?
fault: ${file}:5:4: notice CN-1 went to 2 benches
  hint: say whose receipt it is: \`--bench pumps\`, \`--bench spares\`
3 faults: no receipt is entered
`);
  expect(stdout).toBe('');
  expect(code).toBe(1);
  expect(digest(own.folder)).toEqual(before);
});

test('rows that cannot be read and rows that do not hold are told in one run', async () => {
  const own = copyOf(shop);
  const file = path.join(temporaryFolder(), 'receipts.yaml');
  writeFileSync(
    file,
    `- { notice: CN-1, bench: pumps, by: ada, on: 2.3.2026 }
- { notice: CN-2, bnech: pumps, by: ada, on: 2026-03-02 }
- { notice: CN-2, by: ada, on: 2026-03-03 }
- { notice: CN-1, bench: spares, by: ada, on: 2026-03-02 }
- { notice: CN-1, bench: spares, by: ada, on: 2026-03-02 }
`,
  );
  const before = digest(own.folder);
  const { code, stderr } = await own.run('receipt.ts', DAY, '--file', file);
  expect(stderr).toContain(`error FLD008 bad-date: \`2.3.2026\` is not a date\n  ${file}:1:46\n`);
  expect(stderr).toContain(`${file}:2:19`);
  expect(stderr).toContain('did you mean `bench`?');
  expect(stderr).toContain(`fault: ${file}:3:3: the receipt of 2026-03-03 is still to come`);
  expect(stderr).toContain(
    `fault: ${file}:5:3: the receipt of CN-1 from spares stands here a second time; the first is at ${file}:4:3`,
  );
  expect(stderr).toMatch(/\n4 faults: no receipt is entered\n$/);
  expect(code).toBe(1);
  expect(digest(own.folder)).toEqual(before);
});

test('a command line without what is needed is told so', async () => {
  const folder = temporaryFolder();
  const empty = path.join(folder, 'empty.yaml');
  writeFileSync(empty, '[]\n');
  const missing = path.join(folder, 'none.yaml');
  const cases = [
    [[], 'fault: the number of the change notice is missing'],
    [['CN-1'], 'fault: `--by` and `--on` are missing'],
    [['CN-1', '--file', empty], 'fault: a file of receipts says all about each of them'],
    [['--file', empty], `fault: \`${empty}\` holds no receipts`],
    [['--file', missing], `fault: \`${missing}\` is not there or cannot be read`],
  ] as const;
  const ended = await Promise.all(cases.map(([args]) => shop.run('receipt.ts', DAY, ...args)));
  for (const [i, { code, stderr }] of ended.entries()) {
    expect(stderr).toContain(cases[i]?.[1]);
    expect(stderr).toContain('\n  hint: ');
    expect(code).toBe(2);
  }
});
