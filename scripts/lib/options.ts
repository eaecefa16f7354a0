/** Reads the command line that all commands share, and says plainly what is wrong with it. */

import path from 'node:path';
import { parseArgs } from 'node:util';
import { nearest } from '../../src/diagnostics/index.ts';
import { UsageFault } from './faults.ts';

export interface OptionSpec {
  readonly type: 'string' | 'boolean';
  readonly help: string;
}

export type OptionValues = Readonly<Record<string, string | boolean | undefined>>;

/** Folder of the program: the default shop and the default output folder lie in it. */
export const PROGRAM_FOLDER = path.resolve(import.meta.dirname, '..', '..');

/** Folder in which the person typed the command; npm changes the working folder to the program's. */
const typedIn = process.env['INIT_CWD'] ?? process.cwd();

export interface PositionalSpec {
  readonly name: string;
  readonly help: string;
}

/** Parses the options of a command; `--help` prints them and ends. Throws UsageFault on anything unknown. */
export function readOptions(command: string, about: string, specs: Readonly<Record<string, OptionSpec>>): OptionValues {
  return readCommand(command, about, specs).options;
}

/** The same for a command that also takes words without a dash, such as the code of a check. */
export function readCommand(
  command: string,
  about: string,
  specs: Readonly<Record<string, OptionSpec>>,
  positional?: PositionalSpec,
): { readonly options: OptionValues; readonly words: readonly string[] } {
  const argv = process.argv.slice(2);
  if (argv.includes('--help')) {
    const names = Object.keys(specs).map((k) => k.length);
    const width = Math.max((positional?.name.length ?? 0) - 4, ...names) + 8;
    const lines = Object.entries(specs).map(
      ([k, s]) => `  ${`--${k}${s.type === 'string' ? ' …' : ''}`.padEnd(width)}${s.help}`,
    );
    const word = positional === undefined ? '' : ` [${positional.name}]`;
    if (positional !== undefined) lines.unshift(`  ${positional.name.padEnd(width)}${positional.help}`);
    process.stdout.write(`npm run ${command} -- [options]${word}\n${about}\n\n${lines.join('\n')}\n`);
    process.exit(0);
  }
  try {
    const options = Object.fromEntries(Object.entries(specs).map(([k, s]) => [k, { type: s.type }]));
    const read = parseArgs({ args: argv, options, allowPositionals: positional !== undefined });
    return { options: read.values as OptionValues, words: read.positionals };
  } catch {
    for (const a of argv.filter((x) => x.startsWith('-'))) {
      const name = (a.replace(/^-+/, '').split('=')[0] ?? '').trim();
      if (specs[name] !== undefined) continue;
      const near = nearest(name, Object.keys(specs));
      throw new UsageFault(
        `\`${a}\` is not an option of ${command}`,
        near === undefined ? `see \`npm run ${command} -- --help\`` : `did you mean \`--${near}\`?`,
      );
    }
    throw new UsageFault(
      `the options ${argv.map((a) => `\`${a}\``).join(' ')} cannot be read`,
      `see \`npm run ${command} -- --help\``,
    );
  }
}

/** The shop folder for the file system, and its name in diagnostics. */
export function shopFolder(values: OptionValues): { readonly folder: string; readonly shown: string } {
  const given = values['shop'] ?? process.env['FETTLEBOOK_SHOP'];
  if (typeof given !== 'string' || given === '')
    return { folder: path.join(PROGRAM_FOLDER, 'content'), shown: 'content' };
  const folder = path.resolve(typedIn, given);
  return { folder, shown: given.replace(/\\/g, '/').replace(/\/+$/, '') || '/' };
}

export function outFolder(values: OptionValues): string {
  const given = values['out'];
  return typeof given === 'string' && given !== '' ? typedPath(given) : path.join(PROGRAM_FOLDER, 'dist');
}

/** A path as the person means it: from the folder in which the command was typed. */
export function typedPath(given: string): string {
  return path.resolve(typedIn, given);
}

/** Values of options that a command cannot do without. Throws UsageFault that names all that are missing. usage: how it is called. */
export function needed<K extends string>(
  values: OptionValues,
  usage: string,
  ...names: readonly K[]
): Record<K, string> {
  const given = names.map((n) => [n, said(values[n])] as const);
  const missing = given.filter(([, v]) => v === '').map(([n]) => `\`--${n}\``);
  if (missing.length > 0) {
    throw new UsageFault(
      `${missing.join(' and ')} ${missing.length === 1 ? 'is' : 'are'} missing`,
      `write \`npm run ${usage}\``,
    );
  }
  return Object.fromEntries(given) as Record<K, string>;
}

/** A text in one line; empty when the option was not given. */
export function said(value: string | boolean | undefined): string {
  return typeof value === 'string' ? value.replace(/\s+/gu, ' ').trim() : '';
}

/** The one word that a command takes. Throws UsageFault when there is none, or more. */
export function oneWord(words: readonly string[], what: string, usage: string): string {
  const [word, second] = words;
  if (word === undefined || word === '') throw new UsageFault(`${what} is missing`, `write \`npm run ${usage}\``);
  if (second !== undefined) {
    throw new UsageFault(
      `\`${second}\` is one word too many`,
      `put words that belong together in quotes: \`npm run ${usage}\``,
    );
  }
  return word;
}
