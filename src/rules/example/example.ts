/** The examples of the checks: a small change that makes the example shop faulty, and one that is sound. */

/**
 * One change of the example shop. `from` is text that stands exactly once in `file`; without it `to` is the whole file.
 * In `to` of a bad example, `«…»` marks the place of each diagnostic: it begins and ends there exactly.
 */
export interface Edit {
  /** `procedures/mw-1.yaml` */
  readonly file: string;
  readonly from?: string;
  /** Text, raw bytes for what no text can show, or null for a file that is not there. */
  readonly to: string | Uint8Array | null;
  /** Needed, and not what the example is about: it is not shown. */
  readonly aside?: true;
}

export interface Example {
  readonly bad: readonly Edit[];
  /** Files with a diagnostic at their very beginning, where no mark can stand: faults of the file itself. */
  readonly badFiles?: readonly string[];
  /** Left out where the example shop itself is the good one. */
  readonly good?: readonly Edit[];
  /** What a file system adds to the bad example, where text alone cannot show it. */
  readonly disk?: Readonly<Record<string, 'unreadable' | 'outside link'>>;
}

export const OPENING = '«';
export const CLOSING = '»';

/** The text without its marks. */
export function unmarked(text: string): string {
  return text.replace(/[«»]/g, '');
}

export interface ExampleFile {
  readonly relative: string;
  readonly content: string | Uint8Array;
}

export interface Mark {
  /** Within the shop: `procedures/mw-1.yaml`. */
  readonly relative: string;
  readonly start: number;
  readonly end: number;
}

/** Files of `shop` after the edits, and the marked places in them. Throws RangeError when a `from` does not stand there exactly once. */
export function edited(
  shop: Readonly<Record<string, string>>,
  edits: readonly Edit[],
): { readonly files: readonly ExampleFile[]; readonly marks: readonly Mark[] } {
  const files = new Map<string, string | Uint8Array>(Object.entries(shop));
  for (const { file, from, to } of edits) {
    if (to === null) files.delete(file);
    else if (from === undefined || typeof to !== 'string') files.set(file, to);
    else {
      const text = files.get(file);
      const parts = typeof text === 'string' ? text.split(from) : [];
      if (parts.length !== 2) throw new RangeError(`\`${from}\` stands ${parts.length - 1} times in ${file}, not once`);
      files.set(file, parts.join(to));
    }
  }
  const marks: Mark[] = [];
  const plain = [...files].map(([relative, content]): ExampleFile => {
    if (typeof content !== 'string') return { relative, content };
    marks.push(...marksOf(relative, content));
    return { relative, content: unmarked(content) };
  });
  return { files: plain.sort((a, b) => (a.relative < b.relative ? -1 : 1)), marks };
}

function marksOf(relative: string, text: string): Mark[] {
  const found: Mark[] = [];
  const open: number[] = [];
  let at = 0;
  for (const c of text) {
    if (c === OPENING) open.push(at);
    else if (c === CLOSING) found.push({ relative, start: open.pop() ?? at, end: at });
    else at += c.length;
  }
  return found;
}
