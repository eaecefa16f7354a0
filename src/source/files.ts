/** The only reader of content: walks a shop folder and returns the text of each YAML file, or says why it cannot. */

import { lstatSync, readdirSync, readFileSync, realpathSync, statSync } from 'node:fs';
import path from 'node:path';
import type { Range, Report } from '../diagnostics/index.ts';

/** A procedure of 400 steps is about 200 kB; anything above this is not written by hand. */
const LARGEST_FILE = 2 * 1024 * 1024;
const UTF_8 = 'save it as UTF-8: most editors offer the encoding where they ask for the name of the file';
/** Folders nest one deep; this many levels means a loop or a wrong folder. */
const DEEPEST_FOLDER = 6;

export interface SourceFile {
  /** As shown to the author: `content/procedures/gland.yaml`. */
  readonly file: string;
  /** Within the shop folder, with `/`: `procedures/gland.yaml`. */
  readonly relative: string;
  readonly text: string;
  /** It is there and could not be read, which has been reported: what it holds is not missing. `text` is then empty. */
  readonly unread?: true;
}

/**
 * Reads every `.yaml` file below `folder`, in a fixed order.
 * shown: how the folder is called in diagnostics, without a slash at the end.
 */
export function readFiles(folder: string, shown: string, report: Report): readonly SourceFile[] {
  const place = { file: shown, start: 0, end: 0 };
  let root: string;
  try {
    if (!statSync(folder).isDirectory()) {
      report('SRC001', place, `\`${shown}\` is not a folder`, { hint: 'give the shop folder with `--shop DIR`' });
      return [];
    }
    root = realpathSync(folder);
  } catch (cause) {
    report('SRC001', place, `the shop folder \`${shown}\` ${reason(cause)}`, {
      hint: 'give the shop folder with `--shop DIR`',
    });
    return [];
  }
  const files: SourceFile[] = [];
  walk(root, '', 0);
  if (files.length === 0) {
    report('SRC001', place, `the shop folder \`${shown}\` holds no content`, {
      hint: 'give the folder that holds `shop.yaml` with `--shop DIR`',
    });
  }
  return files;

  function walk(dir: string, relative: string, depth: number): void {
    let names: string[];
    try {
      names = readdirSync(dir).sort();
    } catch (cause) {
      report('SRC002', { file: join(shown, relative), start: 0, end: 0 }, `the folder ${reason(cause)}`, {
        hint: remedy(cause),
      });
      files.push(unread(shown, `${relative}/`));
      return;
    }
    for (const name of names) {
      if (name.startsWith('.')) continue;
      const full = path.join(dir, name);
      const inside = join(relative, name);
      const file = join(shown, inside);
      const here = { file, start: 0, end: 0 };
      try {
        const link = lstatSync(full).isSymbolicLink();
        const real = link ? realpathSync(full) : full;
        if (link && real !== root && !real.startsWith(root + path.sep)) {
          refuseOutsideLink(inside, here, report);
          files.push(unread(shown, inside));
          continue;
        }
        const stat = statSync(full);
        if (stat.isDirectory()) {
          if (link || depth >= DEEPEST_FOLDER) {
            report('SRC012', here, `\`${inside}\` is ${link ? 'a link to a folder' : 'nested too deeply'}`, {
              hint: 'keep content files in the folders that the README names',
            });
          } else walk(full, inside, depth + 1);
          continue;
        }
        if (!/\.ya?ml$/i.test(name)) continue;
        if (!stat.isFile()) {
          report('SRC002', here, `\`${inside}\` is not an ordinary file`, {
            hint: 'put an ordinary text file in its place',
          });
          files.push(unread(shown, inside));
          continue;
        }
        const text = isTooLarge(stat.size, here, report) ? undefined : decode(readFileSync(full), here, report);
        files.push(text === undefined ? unread(shown, inside) : { file, relative: inside, text });
      } catch (cause) {
        report('SRC002', here, `the file ${reason(cause)}`, { hint: remedy(cause) });
        files.push(unread(shown, inside));
      }
    }
  }
}

/**
 * The same from memory, for examples: files by their path within the shop folder, in that order. `unreadable` and
 * `outside link` stand for what only a disk can hold.
 */
export function readMemory(
  files: readonly { readonly relative: string; readonly content: string | Uint8Array }[],
  disk: Readonly<Record<string, 'unreadable' | 'outside link'>>,
  shown: string,
  report: Report,
): readonly SourceFile[] {
  return files.map(({ relative, content }): SourceFile => {
    const file = join(shown, relative);
    const here = { file, start: 0, end: 0 };
    if (disk[relative] === 'outside link') refuseOutsideLink(relative, here, report);
    else if (disk[relative] === 'unreadable') {
      report('SRC002', here, `the file ${reason('EACCES')}`, { hint: remedy('EACCES') });
    } else {
      const bytes = typeof content === 'string' ? new TextEncoder().encode(content) : content;
      const text = isTooLarge(bytes.length, here, report) ? undefined : decode(bytes, here, report);
      if (text !== undefined) return { file, relative, text };
    }
    return unread(shown, relative);
  });
}

function unread(shown: string, relative: string): SourceFile {
  return { file: join(shown, relative), relative, text: '', unread: true };
}

function refuseOutsideLink(relative: string, here: Range, report: Report): void {
  report('SRC012', here, `\`${relative}\` is a link to a place outside the shop folder`, {
    hint: 'put the file itself here',
  });
}

function isTooLarge(bytes: number, here: Range, report: Report): boolean {
  if (bytes <= LARGEST_FILE) return false;
  report('SRC003', here, `the file has ${(bytes / 1048576).toFixed(1)} MB, and 2 MB is the most that is read`, {
    hint: 'split it: one file a procedure, one a machine',
  });
  return true;
}

function decode(
  bytes: Uint8Array,
  here: { file: string; start: number; end: number },
  report: Report,
): string | undefined {
  if ((bytes[0] === 0xff && bytes[1] === 0xfe) || (bytes[0] === 0xfe && bytes[1] === 0xff)) {
    report('SRC005', here, 'the file is UTF-16, and content files are UTF-8', { hint: UTF_8 });
    return undefined;
  }
  if (bytes.includes(0)) {
    report('SRC004', here, 'the file holds zero bytes, which no text has', {
      hint: 'put the text file back; pictures and PDFs do not belong here under a .yaml name',
    });
    return undefined;
  }
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    const before = new TextDecoder('utf-8').decode(bytes).indexOf('\ufffd');
    const line = new TextDecoder('utf-8').decode(bytes).slice(0, Math.max(0, before)).split('\n').length;
    report('SRC005', here, `the file is not UTF-8: the first byte that does not fit is in line ${line}`, {
      hint: UTF_8,
    });
    return undefined;
  }
}

function codeOf(cause: unknown): string {
  return typeof cause === 'string' ? cause : cause instanceof Error && 'code' in cause ? String(cause.code) : '';
}

function remedy(cause: unknown): string {
  const code = codeOf(cause);
  if (code === 'ENOENT' || code === 'ELOOP') return 'put the file itself here, or take the link away';
  if (code === 'EACCES' || code === 'EPERM')
    return 'let the user that builds read it (on Linux: `chmod u+r` for a file, `chmod u+rx` for a folder)';
  return 'copy it afresh; when that does not help, look after the disk';
}

function reason(cause: unknown): string {
  const code = codeOf(cause);
  if (code === 'ENOENT') return 'is not there';
  if (code === 'EACCES' || code === 'EPERM') return 'may not be read by this user';
  if (code === 'ELOOP') return 'is a link that leads to itself';
  return `cannot be read${code === '' ? '' : ` (${code})`}`;
}

function join(a: string, b: string): string {
  return a === '' ? b : b === '' ? a : `${a}/${b}`;
}
