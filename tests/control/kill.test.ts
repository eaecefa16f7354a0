/** `kill -9`, a full disk, and two at once: the ledger stays whole, nothing is half issued, and the next command works. */

import { mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { LEDGER, LOCK } from '../../src/control/files.ts';
import { ControlFault } from '../../src/control/write-ledger.ts';
import { keptFolder } from '../scripts/run.ts';
import { issueOne } from './issue-one.ts';
import {
  type Counted,
  counted,
  type Ended,
  folderLike,
  inTurn,
  left,
  lockText,
  startIssue,
  upTo,
} from './processes.ts';

const base = keptFolder();
const BEFORE = ['MW-1/A.changes.json', 'MW-1/A.json', 'head', 'ledger.jsonl'].map((f) => `issued/${f}`);
const AFTER = [...BEFORE.slice(0, 2), 'issued/MW-2/A.changes.json', 'issued/MW-2/A.json', ...BEFORE.slice(2)];
/** Operations of one issue that change the disk. */
let all: Counted;

beforeAll(async () => {
  issueOne(base, 'MW-1');
  const folder = path.join(keptFolder(), 'counted');
  mkdirSync(folder);
  issueOne(folder, 'MW-1');
  all = counted(await startIssue(folder, 'MW-2', { at: 0, do: 'count' }).ended);
});

/** All of the second issue, or nothing; then the next one in the same folder. Returns whether it was there. */
function wholeOrNothing(folder: string, point: string): boolean {
  const found = left(folder);
  expect(found.faults, point).toEqual([]);
  const done = found.entries.length === 2;
  // Before the next command clears up, files of an issue that was not done may lie there; the lock names them.
  if (done) expect(found.files, point).toEqual(AFTER);
  else expect(found.entries.length, point).toBe(1);
  const [entry] = issueOne(folder, done ? 'MW-3' : 'MW-2');
  expect(entry?.seq, point).toBe(done ? 3 : 2);
  const after = left(folder);
  expect(after.faults, point).toEqual([]);
  expect(after.hidden, point).toEqual([]);
  if (!done) expect(after.files, point).toEqual(AFTER);
  return done;
}

describe('killed', () => {
  test('before every operation that changes the disk', async () => {
    expect(all.count).toBeGreaterThan(20);
    const done: boolean[] = [];
    await inTurn(upTo(all.count), 2, async (at) => {
      const folder = folderLike(base);
      const ended = await startIssue(folder, 'MW-2', { at, do: 'before' }).ended;
      expect(ended.signal, `operation ${at}`).toBe('SIGKILL');
      done[at] = wholeOrNothing(folder, `operation ${at}`);
    });
    // Not there, and from one operation on there for good.
    const first = done.indexOf(true);
    expect(first).toBeGreaterThan(10);
    expect(done.slice(1, first).every((d) => !d) && done.slice(first).every((d) => d)).toBe(true);
  }, 240_000);

  test('in the middle of every file that is written', async () => {
    // Two for the lock, two files, ledger and head.
    expect(all.contents.length).toBe(6);
    await inTurn(all.contents, 2, async (at) => {
      const folder = folderLike(base);
      const ended = await startIssue(folder, 'MW-2', { at, do: 'half' }).ended;
      expect(ended.signal, `operation ${at}`).toBe('SIGKILL');
      wholeOrNothing(folder, `operation ${at}`);
    });
  }, 120_000);

  test('while the next command clears up', async () => {
    const folder = folderLike(base);
    await startIssue(folder, 'MW-2', { at: all.contents[4] ?? 0, do: 'before' }).ended;
    const other = folderLike(folder);
    const points = counted(await startIssue(other, 'MW-2', { at: 0, do: 'count' }).ended).count;
    await inTurn(upTo(12), 2, async (i) => {
      const again = folderLike(folder);
      await startIssue(again, 'MW-2', { at: Math.ceil((points * i) / 13), do: 'before' }).ended;
      wholeOrNothing(again, `operation ${Math.ceil((points * i) / 13)}`);
    });
  }, 120_000);

  test('at the very first issue of a shop', async () => {
    await inTurn(upTo(10), 2, async (i) => {
      const folder = folderLike();
      await startIssue(folder, 'MW-1', { at: Math.ceil((all.count * i) / 10), do: 'before' }).ended;
      const found = left(folder);
      expect(found.faults).toEqual([]);
      const [entry] = issueOne(folder, found.entries.length === 1 ? 'MW-2' : 'MW-1');
      expect(entry?.seq).toBe(found.entries.length + 1);
      expect(left(folder).faults).toEqual([]);
    });
  }, 120_000);
});

test('a disk that is full from any operation on leaves nothing half issued', async () => {
  const ended: Ended[] = [];
  await inTurn(all.writes, 2, async (at) => {
    const folder = folderLike(base);
    const { code, stderr, signal } = await startIssue(folder, 'MW-2', { at, do: 'full' }).ended;
    ended.push({ code, stderr, signal });
    const found = left(folder);
    expect(found.faults, `operation ${at}`).toEqual([]);
    expect(found.files, `operation ${at}`).toEqual(found.entries.length === 2 ? AFTER : BEFORE);
    if (code === 0) expect(found.entries.length).toBe(2);
    else expect(stderr).toMatch(/ENOSPC/);
    wholeOrNothing(folder, `operation ${at}`);
  });
  expect(ended.filter((e) => e.code !== 0).length).toBeGreaterThan(10);
}, 240_000);

test('a folder that cannot be written is left as it was', () => {
  const folder = folderLike();
  writeFileSync(path.join(folder, 'issued'), 'in the way');
  expect(() => issueOne(folder, 'MW-1')).toThrow(/EEXIST|ENOTDIR/);
  expect(readFileSync(path.join(folder, 'issued'), 'utf8')).toBe('in the way');
  expect(left(folder).faults).toEqual(['LDG006 the folder `issued/` cannot be read']);
});

describe('two at once', () => {
  test('the second is refused while the first is at work, and the first ends well', async () => {
    const folder = folderLike(base);
    const first = startIssue(folder, 'MW-2', { at: all.contents[2] ?? 0, do: 'stop' });
    await waitFor(() => readFileSync(`/proc/${first.pid}/stat`, 'utf8').includes(') T '));
    const second = await startIssue(folder, 'MW-3').ended;
    expect(second.code).toBe(1);
    expect(second.stderr).toMatch(/another command has been writing the ledger since 20.* \(process \d+\)/);
    // A build beside it sees the ledger as it was.
    expect(left(folder)).toMatchObject({ faults: [], entries: [{ seq: 1 }] });
    process.kill(first.pid, 'SIGCONT');
    expect(await first.ended).toMatchObject({ code: 0 });
    expect(left(folder)).toMatchObject({ faults: [], files: AFTER, hidden: [] });
  }, 120_000);

  test('of several that start together, those that end well are in the ledger', async () => {
    const folder = folderLike(base);
    const all = await Promise.all([2, 3, 4, 5].map((n) => startIssue(folder, `MW-${n}`).ended));
    const good = all.filter((e) => e.code === 0).length;
    expect(good).toBeGreaterThan(0);
    for (const e of all) if (e.code !== 0) expect(e.stderr).toMatch(/writing the ledger|written by several/);
    const { faults, entries, hidden } = left(folder);
    expect(faults).toEqual([]);
    expect(entries.length).toBe(1 + good);
    expect(hidden).toEqual([]);
  }, 120_000);
});

describe('a lock that lies there', () => {
  const withLock = (text: string): string => {
    const folder = folderLike(base);
    writeFileSync(path.join(folder, LOCK), text);
    return folder;
  };
  const refusal = (folder: string): ControlFault => {
    try {
      issueOne(folder, 'MW-2');
    } catch (cause) {
      if (cause instanceof ControlFault) return cause;
      throw cause;
    }
    throw new Error('it was not refused');
  };

  test('of a process that is dead is taken away', () => {
    const folder = withLock(lockText({ pid: 2 ** 22 + 1 }));
    expect(issueOne(folder, 'MW-2').length).toBe(1);
    expect(left(folder)).toMatchObject({ faults: [], files: AFTER, hidden: [] });
  });

  test('of a process whose number was given to another one', () => {
    expect(issueOne(withLock(lockText({ pid: process.pid, born: '1' })), 'MW-2').length).toBe(1);
  });

  test('of a process at work is respected', () => {
    const folder = withLock(lockText({ pid: process.pid }));
    expect(refusal(folder).message).toMatch(/another command has been writing/);
    rmSync(path.join(folder, LOCK));
    expect(issueOne(folder, 'MW-2').length).toBe(1);
  });

  test('of another machine is not judged', () => {
    const fault = refusal(withLock(lockText({ host: 'stores-pc' })));
    expect(fault.message).toBe('the machine `stores-pc` has been writing the ledger since 2026-03-01T08:00:00.000Z');
    expect(fault.hint).toContain(`take \`${LOCK}\` away`);
  });

  test.each([['{'], [''], ['{"pid":"x"}']])('that cannot be read is told: %s', (text) => {
    const folder = withLock(text);
    const fault = refusal(folder);
    expect(fault.message).toBe(`\`${LOCK}\` cannot be read`);
    expect(fault.hint).toMatch(/make sure that nobody is issuing/);
    expect(readFileSync(path.join(folder, LOCK), 'utf8')).toBe(text);
  });

  test('of somebody who died while clearing up is taken away too', () => {
    const folder = withLock(lockText({ pid: 2 ** 22 + 1 }));
    writeFileSync(path.join(folder, `${LOCK}-recovery`), lockText({ pid: 2 ** 22 + 2 }));
    writeFileSync(path.join(folder, `${LOCK}.4194306`), 'never linked');
    writeFileSync(path.join(folder, 'issued/MW-1/.B.json.part'), 'half a snap');
    expect(issueOne(folder, 'MW-2').length).toBe(1);
    expect(left(folder)).toMatchObject({ faults: [], files: AFTER, hidden: [] });
  });
});

test('an act that is refused under the lock leaves no trace', () => {
  const folder = folderLike(base);
  const text = readFileSync(path.join(folder, LEDGER), 'utf8');
  writeFileSync(path.join(folder, LEDGER), text.replace('A procedure', 'B procedure'));
  expect(() => issueOne(folder, 'MW-2')).toThrow(/was altered after it was written/);
  const found = left(folder);
  expect(found.hidden).toEqual([]);
  expect(found.files).toEqual(BEFORE);
});

async function waitFor(isThere: () => boolean): Promise<void> {
  for (let i = 0; i < 600; i++) {
    if (isThere()) return;
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
  throw new Error('it has not come');
}
