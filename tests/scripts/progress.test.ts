/** Progress of a long command: a rewritten line on a terminal, plain lines in a log. */

import { expect, test } from 'vitest';
import { progress } from '../../scripts/lib/progress.ts';

function stream(isTTY: boolean) {
  const written: string[] = [];
  return { written, stream: { isTTY, write: (t: string) => written.push(t) > 0 } as unknown as NodeJS.WriteStream };
}

test('a log gets one plain line a stage, with count and time', () => {
  const { written, stream: log } = stream(false);
  const shown = progress(log);
  shown.stage('cards', 3);
  for (const n of [1, 2, 3]) shown.done(n);
  shown.stage('site', 0);
  shown.end();
  expect(written).toHaveLength(2);
  expect(written[0]).toMatch(/^cards 3\/3 \(\d+\.\d s\)\n$/);
  expect(written[1]).toMatch(/^site \(\d+\.\d s\)\n$/);
});

test('a terminal gets one line that is rewritten, and the finished stage stays', () => {
  const { written, stream: terminal } = stream(true);
  const shown = progress(terminal);
  shown.stage('cards', 3);
  shown.done(1);
  shown.end();
  const text = written.join('');
  expect(text.split('\r\u001b[2K').length).toBeGreaterThanOrEqual(3);
  expect(text).toMatch(/cards 1\/3/);
  expect(text.endsWith('\n')).toBe(true);
});
