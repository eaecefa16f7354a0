/** Holds the fixed top level, the locked versions and what no file may contain. */

import { execFileSync } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { expect, test } from 'vitest';

const ROOT = path.resolve(import.meta.dirname, '..', '..');

test('the top level holds the fixed files and folders and nothing beside them', () => {
  const fixed = [
    'DEVELOPERS.md',
    'README.md',
    'astro.config.mjs',
    'content',
    'package-lock.json',
    'package.json',
    'public',
    'scripts',
    'src',
    'tests',
    'tsconfig.json',
  ];
  const made = ['dist', 'node_modules'];
  expect(
    readdirSync(ROOT)
      .filter((n) => !n.startsWith('.') && !made.includes(n))
      .sort(),
  ).toEqual(fixed);
});

test('every package version is exact', () => {
  const json = JSON.parse(readFileSync(path.join(ROOT, 'package.json'), 'utf8')) as Record<
    string,
    Record<string, string>
  >;
  const versions = ['dependencies', 'devDependencies', 'optionalDependencies'].flatMap((k) =>
    Object.values(json[k] ?? {}),
  );
  expect(versions.length).toBeGreaterThan(20);
  expect(versions.filter((v) => !/^\d+\.\d+\.\d+$/.test(v))).toEqual([]);
});

test('each dependency is justified in DEVELOPERS.md', () => {
  const json = JSON.parse(readFileSync(path.join(ROOT, 'package.json'), 'utf8')) as Record<
    string,
    Record<string, string>
  >;
  const text = readFileSync(path.join(ROOT, 'DEVELOPERS.md'), 'utf8');
  const names = ['dependencies', 'devDependencies', 'optionalDependencies'].flatMap((k) => Object.keys(json[k] ?? {}));
  expect(names.filter((n) => !text.includes(`\`${n}\``))).toEqual([]);
});

test('the README opens with the whole job in one paragraph', () => {
  const [, paragraph = ''] = readFileSync(path.join(ROOT, 'README.md'), 'utf8').split('\n\n');
  for (const word of ['procedures', 'site', 'cards', 'torque', 'refuses']) expect(paragraph).toContain(word);
});

test('the tests run on the locked runtime, whatever stands on the path', () => {
  const json = JSON.parse(readFileSync(path.join(ROOT, 'package.json'), 'utf8')) as {
    optionalDependencies: Record<string, string>;
  };
  expect(new Set(Object.values(json.optionalDependencies)).size).toBe(1);
  expect(process.version).toBe(`v${Object.values(json.optionalDependencies)[0]}`);
});

test('no locked package runs an install script that is not refused', () => {
  const lock = JSON.parse(readFileSync(path.join(ROOT, 'package-lock.json'), 'utf8')) as {
    packages: Record<string, { hasInstallScript?: boolean }>;
  };
  const json = JSON.parse(readFileSync(path.join(ROOT, 'package.json'), 'utf8')) as {
    allowScripts?: Record<string, boolean>;
  };
  const running = Object.entries(lock.packages)
    .filter(([, p]) => p.hasInstallScript === true)
    .map(([name]) => name.replace(/^.*node_modules\//, ''));
  expect(running.filter((name) => json.allowScripts?.[name] !== false)).toEqual([]);
});

test('git tracks no build output', () => {
  const tracked = execFileSync('git', ['ls-files'], { cwd: ROOT, encoding: 'utf8' }).split('\n');
  expect(tracked.filter((f) => /^(dist|node_modules|\.astro)\//.test(f))).toEqual([]);
});
