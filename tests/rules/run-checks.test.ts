/** The checks go over the shop together, procedure after procedure: they find what each of them finds alone. */

import { expect, test } from 'vitest';
import { compileMemory, demoFiles } from '../../scripts/bench/sub-shop.ts';
import { collector, type Diagnostic } from '../../src/diagnostics/index.ts';
import type { ResolvedShop } from '../../src/resolve/index.ts';
import { CATALOGUE, CHECKS, runChecks } from '../../src/rules/index.ts';

const FILES = demoFiles();

/** Slips over many procedures, none of which keeps anything from being read. */
const SLIPS: readonly (readonly [RegExp, string])[] = [
  [/^( +)fit: .*\n/m, ''],
  [/^( +)tighten: .*\n/m, ''],
  [/^( +)lubricate: .*\n/m, ''],
  [/\.\n/, ', if necessary.\n'],
  [/^( +)(note: )(?=[A-Z])/m, '$1$2Caution! '],
  [/^( +)release: .*\n/m, ''],
  [/( to | at )(\d+)( mm)/, '$1$2'],
];

function slipped(): Readonly<Record<string, string>> {
  const names = Object.keys(FILES).sort();
  return Object.fromEntries(
    names.map((name, i) => {
      const slip = name.startsWith('procedures/') ? SLIPS[i % SLIPS.length] : undefined;
      const text = FILES[name] ?? '';
      return [name, slip === undefined ? text : text.replace(...slip)];
    }),
  );
}

function found(run: (report: ReturnType<typeof collector>['report']) => void): readonly Diagnostic[] {
  const { report, list } = collector(CATALOGUE);
  run(report);
  return list();
}

function alone(shop: ResolvedShop): readonly Diagnostic[] {
  return found((report) => {
    for (const check of [...CHECKS].reverse()) {
      if (typeof check.found === 'function')
        check.found(shop, (range, message, details) => report(check.code, range, message, details));
    }
  });
}

test('together and one by one they say the same', () => {
  const { resolved } = compileMemory(slipped());
  const together = found((report) => runChecks(resolved, report));
  expect(new Set(together.map((d) => d.code)).size).toBeGreaterThan(6);
  expect(alone(resolved)).toEqual(together);
  expect(
    found((report) => runChecks(resolved, report)),
    'a second time',
  ).toEqual(together);
});

test('two shops one after the other do not meet', () => {
  const first = compileMemory(slipped()).resolved;
  const second = compileMemory(FILES).resolved;
  const before = found((report) => runChecks(first, report));
  const sound = found((report) => runChecks(second, report));
  expect(found((report) => runChecks(first, report))).toEqual(before);
  expect(found((report) => runChecks(second, report))).toEqual(sound);
  expect(sound.length).toBeLessThan(before.length);
});
