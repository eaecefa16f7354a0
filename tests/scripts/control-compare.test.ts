/** `compare` from the command line: two issues, an issue and the draft, in words and as JSON. */

import path from 'node:path';
import { beforeAll, expect, test } from 'vitest';
import { controlShop, RAISED } from './control-shop.ts';
import { keptFolder } from './run.ts';

const DAY = '2026-03-02';

const shop = controlShop(path.join(keptFolder(), 'shop'));
beforeAll(async () => {
  const { code, stderr } = await shop.run('issue.ts', DAY, 'MW-1');
  expect(code, stderr).toBe(0);
  shop.edit('machines/pump.yaml', RAISED);
  shop.revise('B', DAY);
  const second = await shop.run('issue.ts', DAY, 'MW-1');
  expect(second.code, second.stderr).toBe(0);
  shop.edit('procedures/mw-1.yaml', (t) =>
    t.replace('- do: Wipe both faces', '- do: Read the marks on the cover.\n      - do: Wipe both faces'),
  );
});

test('two issues by meaning, grouped, old and new', async () => {
  const { code, stdout, stderr } = await shop.run('compare.ts', DAY, 'MW-1', 'A', 'B');
  expect(code, stderr).toBe(0);
  expect(stdout.replaceAll('\u00a0', ' ')).toBe(`MW-1: Rev A and Rev B differ in 1 thing

Torques
  Step 9 (Large: step 11): torque of the cover joint 160 → 165 N·m
    old, step 9  160 N·m
    new, step 9  165 N·m
`);
});

test('an issue and the draft; without a revision, the latest issue', async () => {
  const [latest, older, json] = await Promise.all([
    shop.run('compare.ts', DAY, 'MW-1'),
    shop.run('compare.ts', DAY, 'MW-1', 'A'),
    shop.run('compare.ts', DAY, 'MW-1', '--json'),
  ]);
  expect(latest.code, latest.stderr).toBe(0);
  expect(latest.stdout).toContain('MW-1: Rev B and the draft (Rev B) differ in 1 thing\n\nSteps\n');
  expect(latest.stdout).toContain('Read the marks on the cover.');
  expect(older.stdout).toContain('MW-1: Rev A and the draft (Rev B) differ in 2 things\n\nTorques\n');
  const comparison = JSON.parse(json.stdout) as { doc: string; from: string; changes: { kind: string; of: string }[] };
  expect(comparison).toMatchObject({ doc: 'MW-1', from: 'B', changes: [{ kind: 'added', of: 'step' }] });
});

test('what is not there is named, with what is near', async () => {
  const cases = [
    [['MW-1', 'A', 'C'], 'fault: there is no issue C of MW-1\n  hint: its issues are A, B'],
    [['MW-1', 'a', 'B'], 'fault: there is no issue a of MW-1\n  hint: did you mean `A`?'],
    [['MW-2'], 'fault: MW-2 was never issued: there is nothing to compare its draft with'],
    [['MW-7'], 'fault: there is no document MW-7\n  hint: did you mean `MW-1`?'],
    [[], 'fault: the document number is missing'],
    [['MW-1', 'A', 'B', 'C'], 'fault: `C` is one word too many'],
  ] as const;
  const ended = await Promise.all(cases.map(([args]) => shop.run('compare.ts', DAY, ...args)));
  for (const [i, { code, stderr }] of ended.entries()) {
    expect(stderr).toContain(cases[i]?.[1]);
    expect(code).toBe(2);
  }
});
