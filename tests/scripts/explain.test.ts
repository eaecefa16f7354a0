/** `npm run explain`: every check answers from the command line, and a mistyped code gets its nearest. */

import { describe, expect, test } from 'vitest';
import { CHECKS } from '../../src/rules/index.ts';
import { run } from './run.ts';

describe('explain', () => {
  test('a check: title, bench, bad example with carets, what is said, good example, sources', async () => {
    const { code, stdout } = await run('explain.ts', ['TRQ005']);
    expect(code).toBe(0);
    const check = CHECKS.find((c) => c.code === 'TRQ005');
    for (const text of [check?.title, check?.why, 'Wrong:', '^^^', 'What is said:', 'hint:', 'Right:', 'Sources:'])
      expect(stdout).toContain(text);
    expect(stdout).not.toContain('undefined');
  });

  test('by name, and several at once', async () => {
    const { stdout } = await run('explain.ts', ['wrench-range', 'ref001']);
    expect(stdout).toContain('TRQ005 wrench-range');
    expect(stdout).toContain('REF001 undefined-tool');
  });

  test('without a code: every check, one line each', async () => {
    const { stdout } = await run('explain.ts', []);
    expect(stdout.match(/^ {2}[A-Z]{3}\d{3} /gm)).toHaveLength(CHECKS.length);
  });

  test('a mistyped code', async () => {
    const { code, stderr } = await run('explain.ts', ['TRQ05']);
    expect(code).toBe(2);
    expect(stderr).toContain('did you mean `TRQ005`?');
  });
});
