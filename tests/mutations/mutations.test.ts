/**
 * Mistakes made on purpose in the demo shop, a share of what `npm run bench -- --mutations` makes: each kind is caught by the
 * check that is meant to catch it, nearly all mistakes are, and the sound demo gives nothing. What a mistake is comes from
 * what hands do (common practice), not from what the checks look for.
 */

import { readFileSync } from 'node:fs';
import path from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { parseDocument } from 'yaml';
import { KINDS } from '../../scripts/bench/mutations/kinds.ts';
import { type Runner, runnerOf, seedOf, type Tally } from '../../scripts/bench/mutations/run.ts';
import { mistakesTable, sumsOf } from '../../scripts/bench/mutations/table.ts';
import { compileMemory, demoFiles } from '../../scripts/bench/sub-shop.ts';
import { renderShort } from '../../src/diagnostics/index.ts';

const SHARE = 2;
/** Some kinds are caught at one place in ten only, because nothing else in the shop says the same. */
const FURTHER = 60;

const seed = seedOf(process.env['FETTLEBOOK_SEED']);
let runner: Runner;
let tallies: readonly Tally[];

beforeAll(() => {
  runner = runnerOf(demoFiles(), seed);
  tallies = KINDS.map((kind) => runner.run(kind, SHARE));
});

test('the sound demo gives no diagnostic', () => {
  const { diagnostics, textOf } = compileMemory(demoFiles());
  expect(renderShort(diagnostics, textOf)).toBe('');
});

describe(`mistakes of seed ${seed}`, () => {
  test('every kind finds a place in the demo', () => {
    expect(KINDS.length).toBeGreaterThanOrEqual(70);
    expect(tallies.filter((t) => t.mistakes.length === 0).map((t) => t.kind.name)).toEqual([]);
    expect(sumsOf(tallies).made).toBeGreaterThan(300);
  });

  test('every kind is caught by its intended check', () => {
    const missed = tallies.filter((t) => sumsOf([t]).intended === 0);
    expect(missed.filter((t) => sumsOf([runner.run(t.kind, FURTHER)]).intended === 0).map((t) => t.kind.name)).toEqual(
      [],
    );
  });

  test('nineteen in twenty are caught by the intended check, at the right line', () => {
    const { made, intended, placed } = sumsOf(tallies);
    expect(intended / made).toBeGreaterThanOrEqual(0.95);
    expect(placed / made).toBeGreaterThanOrEqual(0.95);
  });

  test('a mistake is well-formed YAML, unless its kind is about YAML', () => {
    const broken = tallies
      .filter((t) => !t.kind.checks.some((c) => c.startsWith('SRC')))
      .flatMap((t) =>
        t.mistakes.filter((m) => m.slip.file.endsWith('.yaml') && parseDocument(m.slip.text).errors.length > 0),
      )
      .map((m) => `${m.kind.name}: ${m.slip.file}:${m.slip.lines.join(' ')}`);
    expect(broken).toEqual([]);
  });

  test('the same seed makes the same mistakes', () => {
    const places = (t: Tally): string[] =>
      t.mistakes.map((m) => `${m.slip.file}:${m.slip.lines.join(' ')} ${m.verdict}`);
    const some = KINDS.filter((_, i) => i % 20 === 0);
    const again = runnerOf(demoFiles(), seed);
    for (const kind of some) {
      const first = tallies.find((t) => t.kind === kind);
      expect(places(again.run(kind, SHARE))).toEqual(first === undefined ? [] : places(first));
    }
  });
});

test('DEVELOPERS.md has the row of every kind', () => {
  const text = readFileSync(path.resolve(import.meta.dirname, '..', '..', 'DEVELOPERS.md'), 'utf8');
  const names = KINDS.map(
    (kind) => /^\| (.*?) \| /.exec(mistakesTable([{ kind, mistakes: [] }]).split('\n')[2] ?? '')?.[1],
  );
  expect(new Set(names).size).toBe(KINDS.length);
  expect(names.filter((name) => name === undefined || !text.includes(`| ${name} |`))).toEqual([]);
});
