/** Runs a command of this program and measures its time and the peak memory of its processes (Linux only for memory). */

import { spawn } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { PROGRAM_FOLDER } from '../lib/options.ts';

export interface Measured {
  readonly ms: number;
  /** Largest sum seen of the peak memory of the process and its children, in MB; NaN where it cannot be read. */
  readonly peakMb: number;
}

/** Throws when the command does not end with 0: a benchmark of a failing run would mean nothing. */
export function measureCommand(script: string, args: readonly string[]): Promise<Measured> {
  const started = performance.now();
  const child = spawn(process.execPath, [path.join(PROGRAM_FOLDER, 'scripts', script), ...args], {
    stdio: ['ignore', 'ignore', 'pipe'],
  });
  let words = '';
  child.stderr.setEncoding('utf8').on('data', (t: string) => {
    words += t;
  });
  const peaks = new Map<number, number>();
  const timer = setInterval(() => {
    if (child.pid === undefined) return;
    for (const pid of familyOf(child.pid)) peaks.set(pid, Math.max(peaks.get(pid) ?? 0, peakOf(pid)));
  }, 50);
  return new Promise((resolve, reject) => {
    child.on('error', reject);
    child.on('close', (code) => {
      clearInterval(timer);
      const sum = [...peaks.values()].reduce((a, b) => a + b, 0);
      if (code === 0) resolve({ ms: performance.now() - started, peakMb: peaks.size === 0 ? Number.NaN : sum / 1024 });
      else reject(new Error(`${script} ended with ${code}: ${words.slice(-500)}`));
    });
  });
}

function peakOf(pid: number): number {
  try {
    return Number(/^VmHWM:\s+(\d+) kB$/m.exec(readFileSync(`/proc/${pid}/status`, 'utf8'))?.[1] ?? 0);
  } catch {
    return 0;
  }
}

function familyOf(root: number): readonly number[] {
  const parents = new Map<number, number>();
  try {
    for (const name of readdirSync('/proc')) {
      if (!/^\d+$/.test(name)) continue;
      try {
        parents.set(
          Number(name),
          Number(/^PPid:\s+(\d+)$/m.exec(readFileSync(`/proc/${name}/status`, 'utf8'))?.[1] ?? 0),
        );
      } catch {
        // The process ended between the two reads.
      }
    }
  } catch {
    return [];
  }
  const inFamily = (pid: number): boolean => pid === root || (pid > 1 && inFamily(parents.get(pid) ?? 0));
  return [...parents.keys()].filter(inFamily);
}
