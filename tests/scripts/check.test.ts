/** `check` from the command line: exit codes, forms of output, bad options. */

import { expect, test } from 'vitest';
import { writeMiniShop } from '../fixtures/mini-shop.ts';
import { run } from './run.ts';

test('a sound shop ends with 0 and says so', async () => {
  const { code, stdout } = await run('check.ts', ['--shop', writeMiniShop()]);
  expect(stdout).toContain('no faults in 1 procedure, 2 cards');
  expect(code).toBe(0);
});

test('faults end with 1; --json is an array with the agreed keys', async () => {
  const shop = writeMiniShop({ 'tools.yaml': (t) => t.replace('feeler:', 'feeler-gauge:') });
  const { code, stdout, stderr } = await run('check.ts', ['--shop', shop, '--json']);
  expect(JSON.parse(stdout)).toEqual([
    {
      code: 'REF001',
      name: 'undefined-tool',
      severity: 'error',
      message: 'tool `feeler` is not in the register',
      file: `${shop}/procedures/mw-1.yaml`,
      line: 45,
      column: 17,
      hint: 'did you mean `feeler-gauge`?',
      related: [],
    },
  ]);
  expect(stderr).toBe('');
  expect(code).toBe(1);
});

test('the shop folder may come from the environment', async () => {
  const { code, stdout } = await run('check.ts', ['--json'], { env: { FETTLEBOOK_SHOP: writeMiniShop() } });
  expect([code, stdout]).toEqual([0, '[]\n']);
});

test('a folder that is not there ends with 1 and names it', async () => {
  const { code, stdout } = await run('check.ts', ['--shop', '/no/such/shop', '--short']);
  expect(code).toBe(1);
  expect(stdout).toBe(
    '/no/such/shop:1:1: error SRC001: the shop folder `/no/such/shop` is not there (give the shop folder with `--shop DIR`)\n',
  );
});

test('an unknown option ends with 2 and the nearest one', async () => {
  const { code, stderr } = await run('check.ts', ['--jsn']);
  expect(code).toBe(2);
  expect(stderr).toContain('did you mean `--json`?');
  expect(stderr).not.toContain('    at ');
});
