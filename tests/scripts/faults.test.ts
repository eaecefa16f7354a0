/** What a person reads when the disk or the program is at fault. */

import { expect, test } from 'vitest';
import { explainFault, UsageFault } from '../../scripts/lib/faults.ts';

const system = (code: string, path?: string) =>
  Object.assign(new Error(`${code}: low-level words`), { code, ...(path === undefined ? {} : { path }) });

test('a full disk, also when a library wrapped it', () => {
  expect(explainFault(system('ENOSPC', '/out/a.pdf'))).toBe(
    'fault: the disk is full (`/out/a.pdf`)\n  hint: nothing was changed; mend this and run the command again\n',
  );
  expect(explainFault(new Error('writing failed', { cause: system('ENOSPC') }))).toContain('the disk is full');
});

test('a folder that may not be written', () => {
  for (const code of ['EACCES', 'EPERM', 'EROFS', 'EDQUOT', 'EBUSY', 'EXDEV']) {
    expect(explainFault(system(code))).toMatch(/^fault: the (folder|disk)|^fault: this user/);
  }
});

test('a fault of the program says so, in one paragraph without a stack trace', () => {
  const text = explainFault(new RangeError('bolt count must be an integer'));
  expect(text).toContain('fault in the program: bolt count must be an integer');
  expect(text).toContain('please report it');
  expect(text).not.toContain('    at ');
});

test('a fault of the command line carries its hint', () => {
  expect(explainFault(new UsageFault('`--x` is not an option', 'see --help'))).toBe(
    'fault: `--x` is not an option\n  hint: see --help\n',
  );
});
