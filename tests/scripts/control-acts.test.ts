/** Suspension, reinstatement, withdrawal, review and temporary changes from the command line, and what refuses them. */

import { readdirSync } from 'node:fs';
import path from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { type ControlShop, controlShop, copyOf, runOn } from './control-shop.ts';
import { digest, keptFolder, temporaryFolder } from './run.ts';

const DAY = '2026-03-02';

const TEMPORARY = `TC-1:
  doc: MW-1
  rev: A
  step: 5
  text: Use the hand pump.
  reason: The power pump is at its maker's.
  scope: { benches: [spares] }
  author: ada
  approver: ben
  approved: 2026-03-01
  from: 2026-03-02
  until: 2026-03-20
`;

const shop = controlShop(path.join(keptFolder(), 'shop'), { 'temporary.yaml': TEMPORARY });
beforeAll(async () => {
  for (const doc of ['MW-1', 'MW-2']) {
    const { code, stderr } = await shop.run('issue.ts', DAY, doc);
    expect(code, stderr).toBe(0);
  }
});

type Refusal = readonly [script: string, args: readonly string[], fault: string, hint: string];

/** Each ends with the code and its fault and hint, and changes nothing. */
async function refuse(of: ControlShop, day: string, code: number, refusals: readonly Refusal[]): Promise<void> {
  // Each in a copy of its own: two commands at once would be refused for that.
  const copies = refusals.map(() => copyOf(of));
  const before = digest(of.folder);
  const ended = await Promise.all(refusals.map(([script, args], i) => copies[i]?.run(script, day, ...args)));
  for (const [i, end] of ended.entries()) {
    const { code: got, stdout, stderr } = end ?? { code: null, stdout: '', stderr: '' };
    const [script, args, fault, hint] = refusals[i] ?? ['', [], '', ''];
    // Warnings of the content may stand before it.
    expect(stderr.slice(stderr.indexOf('fault: ')), `${script} ${args.join(' ')}`).toBe(
      `fault: ${fault}\n  hint: ${hint}\n`,
    );
    expect(stdout).toBe('');
    expect(got).toBe(code);
    expect(digest(copies[i]?.folder ?? '')).toEqual(before);
  }
}

const STOP = ['MW-1', '--by', 'ada', '--reason', 'Cracked cover found'];
const LIFT = ['MW-1', '--by', 'ada', '--approver', 'ben', '--reason', 'Covers were checked'];

describe('a safety stop', () => {
  test('lists the benches to visit, works with errors in the content, and is lifted by two people', async () => {
    const own = copyOf(shop);
    own.edit('procedures/mw-1.yaml', (t) => t.replace('<tool:hoist>', '<tool:hoost>'));
    const stopped = await own.run('suspend.ts', DAY, ...STOP);
    expect(stopped.code, stopped.stderr).toBe(0);
    expect(stopped.stdout).toBe(`suspended MW-1: no copy may be used (line 3 of the ledger)
  reason  Cracked cover found
  by      Ada Fern, Fitter
  notice  CN-3

go there now and take the cards out (2 benches)
  pumps   Pumps, Hall 1   copy 1
  spares  Spares, Hall 2  copy 2

next: \`npm run build\`: from then on every scan of its cards, of any revision, says stop
to lift it: \`npm run reinstate -- MW-1 --by PERSON --approver PERSON --reason TEXT\`
`);
    expect(stopped.stderr).toBe(
      '1 error in the content: this is recorded all the same, but nothing is published until they are mended (`npm run check` shows them)\n',
    );
    own.edit('procedures/mw-1.yaml', (t) => t.replace('<tool:hoost>', '<tool:hoist>'));
    await refuse(own, '2026-03-04', 1, [
      ['suspend.ts', STOP, 'MW-1 is suspended already, since 2026-03-02: Cracked cover found', 'nothing is to be done'],
      [
        'reinstate.ts',
        ['MW-1', '--by', 'ben', '--approver', 'ben', '--reason', 'x'],
        '`ben` asks for it and would approve it too',
        'have it approved by a second person',
      ],
      [
        'reinstate.ts',
        ['MW-1', '--by', 'ada', '--approver', 'cal', '--reason', 'x'],
        '`cal` may not approve major changes by people.yaml',
        'those who may: `ben`',
      ],
    ]);
    const lifted = await own.run('reinstate.ts', '2026-03-04', ...LIFT);
    expect(lifted.code, lifted.stderr).toBe(0);
    expect(lifted.stdout).toContain('reinstated MW-1: the suspension is lifted (line 4 of the ledger)\n');
    expect(lifted.stdout).toContain('the cards go back to (2 benches)\n  pumps   Pumps, Hall 1   copy 1\n');
    await refuse(own, '2026-03-04', 1, [['reinstate.ts', LIFT, 'MW-1 is not suspended', 'nothing is to be done']]);
  });

  test('waits for no register: a person who cannot be looked up is entered, and no bench is forgotten', async () => {
    const own = copyOf(shop);
    own.edit('people.yaml', () => 'ada: [\n');
    own.edit('benches.yaml', (t) => t.replace('copy: 2', 'copy: two'));
    const { code, stdout, stderr } = await own.run('suspend.ts', DAY, ...STOP);
    expect(code, stderr).toBe(0);
    expect(stderr).toContain('warning: people.yaml cannot be read whole: `ada` is entered as given\n');
    expect(stderr).toContain('warning: benches.yaml cannot be read whole: the benches of the last notice');
    expect(stdout).toContain('go there now and take the cards out (2 benches)\n');
    expect(stdout).toContain('copy 1\n');
    expect(stdout).toMatch(/\n {2}spares .* copy 2\n/);
    expect(stdout).toContain('  by      ada\n');
  });

  test('needs a document that was issued, a known person and a reason', async () => {
    await refuse(shop, DAY, 1, [
      ['suspend.ts', ['MW-3', ...STOP.slice(1)], 'there is no document MW-3', 'did you mean `MW-1`?'],
      ['suspend.ts', ['MW-1', '--by', 'adda', '--reason', 'x'], '`adda` is not in people.yaml', 'did you mean `ada`?'],
    ]);
    await refuse(shop, DAY, 2, [
      [
        'suspend.ts',
        ['MW-1', '--reason', '  '],
        '`--by` and `--reason` are missing',
        'write `npm run suspend -- DOC --by PERSON --reason TEXT`',
      ],
    ]);
  });
});

test('a folder that is no shop is refused, and nothing is begun in it', async () => {
  const folder = temporaryFolder();
  const { code, stderr } = await runOn(DAY, 'suspend.ts', ['--shop', folder, ...STOP]);
  expect(stderr).toBe(
    `fault: \`${folder}\` is not a shop’s folder\n  hint: give the shop folder with \`--shop DIR\`\n`,
  );
  expect(code).toBe(2);
  expect(readdirSync(folder)).toEqual([]);
});

describe('a withdrawal', () => {
  test('lists the benches, names the replacement and what to take out of the content', async () => {
    const own = copyOf(shop);
    const gone = await own.run(
      'withdraw.ts',
      DAY,
      'MW-2',
      ...LIFT.slice(1),
      '--replacement',
      'MW-1',
      '--effective',
      '2026-03-09',
    );
    expect(gone.code, gone.stderr).toBe(0);
    expect(gone.stdout).toBe(`withdrawn MW-2 (line 3 of the ledger)
  effective    2026-03-09, in 7 days
  use instead  MW-1
  reason       Covers were checked
  by           Ada Fern, Fitter
  approver     Ben Holt, Quality lead
  signature    not signed
  notice       CN-3

take the cards out on 2026-03-09 at (1 bench)
  pumps  Pumps, Hall 1  copy 1

next: \`npm run build\`: from 2026-03-09 on every scan of its cards says withdrawn
after 2026-03-09 take out its procedure file, and \`MW-2\` in the binders of pumps in benches.yaml
`);
    await refuse(own, DAY, 1, [
      [
        'withdraw.ts',
        ['MW-2', ...LIFT.slice(1)],
        'MW-2 was withdrawn (2026-03-09)',
        'a withdrawn number is not used again',
      ],
      ['issue.ts', ['MW-2'], 'MW-2 was withdrawn (2026-03-09)', 'a withdrawn number is not used again'],
    ]);
  });

  test('takes effect today unless a later day is named; a past one, no day and itself are refused', async () => {
    await refuse(shop, DAY, 1, [
      [
        'withdraw.ts',
        [...LIFT, '--effective', '2026-03-01'],
        '2026-03-01 is past',
        'let it take effect today (2026-03-02) or later',
      ],
      [
        'withdraw.ts',
        [...LIFT, '--effective', '2026-02-30'],
        '`2026-02-30` is not a day (effective date)',
        'write it like 2026-03-02',
      ],
      [
        'withdraw.ts',
        [...LIFT, '--replacement', 'MW-1'],
        'a document does not replace itself',
        'name the document to use instead',
      ],
      ['withdraw.ts', [...LIFT, '--replacement', 'MW-9'], 'there is no document MW-9', 'did you mean `MW-1`?'],
    ]);
    const own = copyOf(shop);
    const gone = await own.run('withdraw.ts', DAY, ...LIFT);
    expect(gone.stdout).toContain('  effective    2026-03-02, today\n  use instead  no other document\n');
    expect(gone.stdout).toContain('go there and take the cards out (2 benches)\n');
    expect(gone.stdout).toContain('afterwards take out its procedure file, and `MW-1` in the binders of pumps, spares');
    await refuse(own, DAY, 1, [
      ['suspend.ts', STOP, 'MW-1 was withdrawn (2026-03-02)', 'a withdrawn number is not used again'],
    ]);
  });
});

test('a review says when the next one is due; one that is still to come is refused', async () => {
  const own = copyOf(shop);
  const seen = ['--by', 'ben', '--finding', 'Fit for use'];
  const { code, stdout, stderr } = await own.run('review.ts', '2026-03-05', 'MW-1', ...seen, '--on', '2026-03-04');
  expect(code, stderr).toBe(0);
  expect(stdout).toBe(`reviewed MW-1 Rev A on 2026-03-04 (line 3 of the ledger)
  finding      Fit for use
  by           Ben Holt, Quality lead
  next review  by 2028-03-04
`);
  await refuse(own, '2026-03-05', 1, [
    [
      'review.ts',
      ['MW-1', ...seen, '--on', '2026-03-06'],
      'the review of 2026-03-06 is still to come',
      'enter it when it has been done',
    ],
    [
      'review.ts',
      ['MW-1', ...seen, '--on', 'lately'],
      '`lately` is not a day (day of the review)',
      'write it like 2026-03-02',
    ],
  ]);
});

test('a temporary change is issued by its number, goes to the benches of its scope, and ends once', async () => {
  const own = copyOf(shop);
  const issued = await own.run('issue.ts', DAY, 'TC-1');
  expect(issued.code, issued.stderr).toBe(0);
  expect(issued.stdout).toBe(`issued temporary change TC-1 of MW-1 Rev A (line 3 of the ledger)
  before step     5
  done otherwise  Use the hand pump.
  why             The power pump is at its maker's.
  holds for       benches spares
  from            2026-03-02, today
  last day        2026-03-20, in 18 days
  author          Ada Fern, Fitter
  approver        Ben Holt, Quality lead, on 2026-03-01
  signature       not signed

change notice CN-3 goes to (1 bench)
  spares  Spares, Hall 2  copy 2

next: \`npm run build\` publishes it, with the cards and notices to print
then enter each receipt: \`npm run receipt -- CN-3 --bench BENCH --by PERSON --on DATE\`
`);
  const end = (number: string): readonly string[] => [number, '--by', 'ada', '--reason', 'The pump is back'];
  await refuse(own, DAY, 1, [
    ['issue.ts', ['TC-1'], 'temporary change TC-1 is issued already', 'a further change takes a number of its own'],
    ['end-temporary.ts', end('TC-2'), 'no temporary change TC-2 was issued', 'did you mean `TC-1`?'],
  ]);
  await refuse(own, '2026-03-21', 1, [
    ['end-temporary.ts', end('TC-1'), 'temporary change TC-1 has expired on 2026-03-20', 'nothing is to be done'],
  ]);
  const ended = await own.run('end-temporary.ts', '2026-03-10', ...end('TC-1'));
  expect(ended.code, ended.stderr).toBe(0);
  expect(ended.stdout).toContain('ended temporary change TC-1 (line 4 of the ledger)\n');
  expect(ended.stdout).toContain('the card without it goes to (1 bench)\n  spares  Spares, Hall 2  copy 2\n');
  await refuse(own, '2026-03-10', 1, [
    ['end-temporary.ts', end('TC-1'), 'temporary change TC-1 has ended already', 'nothing is to be done'],
  ]);
});

test('every command of control says how it is called', async () => {
  const scripts = [
    'issue',
    'suspend',
    'reinstate',
    'withdraw',
    'end-temporary',
    'receipt',
    'review',
    'new-key',
    'compare',
    'verify',
    'audit-pack',
  ];
  const ended = await Promise.all(scripts.map((s) => runOn(DAY, `${s}.ts`, ['--help'])));
  for (const [i, { code, stdout }] of ended.entries()) {
    expect(stdout).toContain(`npm run ${scripts[i] ?? ''} -- [options]`);
    expect(stdout).toContain('--shop …');
    expect(code).toBe(0);
  }
});
