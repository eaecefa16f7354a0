/** `npm run explain -- TRQ005`: what a check reports, what happens at the bench without it, a bad and a good example. */

import { CODES, didYouMean, printable } from '../src/diagnostics/index.ts';
import { type CheckWords, checkWords } from '../src/pipeline/index.ts';
import { CHECKS, FAMILIES, familyOf, type Snippet } from '../src/rules/index.ts';
import { runCommand, UsageFault } from './lib/faults.ts';
import { readCommand } from './lib/options.ts';

await runCommand(() => {
  const { words } = readCommand(
    'explain',
    'Explains a check: what it reports, why, its sources, a bad and a good example. Without a code: lists all checks.',
    {},
    { name: 'CODE', help: 'code or name of a check, or a family: TRQ005, wrench-range, TRQ' },
  );
  if (words.length === 0) process.stdout.write(listed(() => true));
  for (const word of words) process.stdout.write(explained(word));
  return 0;
});

function explained(word: string): string {
  const upper = word.toUpperCase();
  if (FAMILIES[upper] !== undefined) return listed((code) => code.startsWith(upper));
  const check = CHECKS.find((c) => c.code === upper || c.name === word.toLowerCase());
  if (check !== undefined) return inFull(checkWords(check));
  const names = [...CODES, ...CHECKS.map((c) => c.name)];
  throw new UsageFault(
    `\`${word}\` is no check`,
    didYouMean(/\d/.test(word) ? upper : word.toLowerCase(), names) ?? 'see `npm run explain` for all of them',
  );
}

function listed(wanted: (code: string) => boolean): string {
  const width = Math.max(...CHECKS.map((c) => c.name.length));
  let family = '';
  return CHECKS.filter((c) => wanted(c.code))
    .map((c) => {
      const heading = familyOf(c.code) === family ? '' : `${family === '' ? '' : '\n'}${familyOf(c.code)}\n`;
      family = familyOf(c.code);
      return `${heading}  ${c.code}  ${c.severity.padEnd(7)}  ${c.name.padEnd(width)}  ${c.title}\n`;
    })
    .join('');
}

function inFull(words: CheckWords): string {
  const said = words.diagnostics.flatMap((d) => [
    `  ${d.place}`,
    `  ${printable(d.message)}`,
    ...d.related.map((r) => `    = ${printable(r.message)} (${r.place})`),
    ...(d.hint === undefined ? [] : [`    hint: ${printable(d.hint)}`]),
  ]);
  return [
    `${words.severity} ${words.code} ${words.name}`,
    words.title,
    '',
    `At the bench: ${words.why}`,
    '',
    'Wrong:',
    ...words.bad.flatMap(shown),
    '',
    'What is said:',
    ...said,
    '',
    'Right:',
    ...(words.good.length === 0 ? ['  the same shop without this file'] : words.good.flatMap(shown)),
    '',
    ...words.sources.map((s, i) => `${i === 0 ? 'Sources: ' : '         '}${s}`),
    '',
  ].join('\n');
}

/** The stretch with carets under the marked places. */
function shown({ file, lines, note }: Snippet): string[] {
  const out = [`  ${file}${note === undefined ? '' : ` (${note})`}`];
  for (const line of lines) {
    out.push(`    ${printable(line.map((s) => s.text).join(''))}`);
    if (line.some((s) => s.marked))
      out.push(
        `    ${line.map((s) => (s.marked ? '^'.repeat(Math.max(1, s.text.length)) : ' '.repeat(s.text.length))).join('')}`.trimEnd(),
      );
  }
  return out;
}
