/**
 * The lines of an ordinary file, and where its comments belong. `unusual` gives the file up to the full parser, so that only what
 * is certain is read here.
 */

import type { Range } from '../diagnostics/index.ts';
import type { ScalarNode } from './tree.ts';

export const LF = 10;
export const CR = 13;
export const SPACE = 32;
export const HASH = 35;
export const DOUBLE_QUOTE = 34;
export const SINGLE_QUOTE = 39;
export const COMMA = 44;
export const DASH = 45;
export const COLON = 58;
export const OPEN_LIST = 91;
export const BACKSLASH = 92;
export const CLOSE_LIST = 93;
export const OPEN_MAP = 123;
export const CLOSE_MAP = 125;

const UNUSUAL = new Error('not an ordinary file');

/** Never returns; caught in `readOrdinary` alone. */
export function unusual(): never {
  throw UNUSUAL;
}

export function isUnusual(cause: unknown): boolean {
  return cause === UNUSUAL;
}

/** Signs with which no unquoted text begins: `-`, `?` and `:` before text would be allowed, and only `-` is met. */
const NO_BEGINNING = new Set([...' ?:,[]{}#&*!|>\'"%@`'].map((c) => c.charCodeAt(0)));

export class Lines {
  readonly text: string;
  readonly file: string;
  /** Column of the line at hand, which is not blank; -1 at the end of the file. */
  column = 0;
  /** Offset of its first sign. */
  here = 0;
  /** End of the value read last, the comments that belong to it included. */
  after = 0;
  /** Greatest column of the comments between the value read last and the line at hand, and the end of the last of them. */
  private commentColumn = -1;
  private commentEnd = 0;

  constructor(file: string, text: string) {
    this.file = file;
    this.text = text;
  }

  code(offset: number): number {
    return this.text.charCodeAt(offset);
  }

  /** Line end or end of file. CR stands before LF only: the file was looked through for others. */
  isEnd(code: number): boolean {
    return code === LF || code === CR || Number.isNaN(code);
  }

  /** What ends a key or an indicator: blank, line end, end of file. */
  isEmpty(code: number): boolean {
    return code === SPACE || this.isEnd(code);
  }

  skipSpaces(offset: number): number {
    let at = offset;
    while (this.text.charCodeAt(at) === SPACE) at += 1;
    return at;
  }

  /** Offset of the line end at or after `offset`, without CR. */
  lineEnd(offset: number): number {
    const end = this.text.indexOf('\n', offset);
    if (end < 0) return this.text.length;
    return end > offset && this.text.charCodeAt(end - 1) === CR ? end - 1 : end;
  }

  /** Offset of the line after the line end at `end`. */
  lineAfter(end: number): number {
    return this.text.charCodeAt(end) === CR ? end + 2 : end + 1;
  }

  /**
   * Goes from within a line, of which only blanks or a comment may be left, to the next line with content.
   * column: of the map or list that holds the value before; comments further right belong to that value if `takes`.
   */
  finish(offset: number, column: number, takes: boolean): void {
    let end = this.skipSpaces(offset);
    this.after = offset;
    if (this.code(end) === HASH && end > offset) {
      end = this.lineEnd(end);
      this.after = end;
    } else if (!this.isEnd(this.code(end))) unusual();
    this.advance(end, column, takes);
  }

  /** end: a line end. */
  advance(end: number, column: number, takes: boolean): void {
    const { text } = this;
    let taking = takes;
    let line = this.lineAfter(end);
    this.commentColumn = -1;
    while (line < text.length) {
      const at = this.skipSpaces(line);
      const code = text.charCodeAt(at);
      if (code === HASH) {
        const commentEnd = this.lineEnd(at);
        if (taking && at - line > column) this.after = commentEnd;
        else {
          taking = false;
          this.commentColumn = Math.max(this.commentColumn, at - line);
          this.commentEnd = commentEnd;
        }
        line = this.lineAfter(commentEnd);
      } else if (this.isEnd(code)) line = this.lineAfter(at);
      else {
        this.column = at - line;
        this.here = at;
        return;
      }
    }
    this.column = -1;
    this.here = text.length;
  }

  /** A map or list that ends before the line at hand keeps the comments above that line unless all stand left of it. */
  close(column: number): void {
    if (column === 0 || this.commentColumn < column) return;
    this.after = this.commentEnd;
    this.commentColumn = -1;
  }

  checkBeginning(offset: number): void {
    const code = this.code(offset);
    if (code < SPACE || code === 0xfeff || NO_BEGINNING.has(code)) unusual();
  }

  isDash(offset: number): boolean {
    return this.code(offset) === DASH && this.isEmpty(this.code(offset + 1));
  }

  /** The place of a value, without white space at its end. */
  range(start: number, end: number): Range {
    let e = end;
    while (e > start && this.isWhite(this.text.charCodeAt(e - 1))) e -= 1;
    return { file: this.file, start, end: e };
  }

  private isWhite(code: number): boolean {
    if (code > SPACE && code < 0x7f) return false;
    return /\s/.test(String.fromCharCode(code));
  }

  scalar(value: ScalarNode['value'], start: number, end: number): ScalarNode {
    return { kind: 'scalar', value, range: this.range(start, end) };
  }
}

/** Far less deep than the full parser's own limit, and deeper than any content. */
const DEEPEST = 20;

export function checkDepth(depth: number): void {
  if (depth > DEEPEST) unusual();
}

/** Keys of one map, to find one that stands twice: short maps are looked through, long ones are indexed. */
export class Keys {
  private readonly list: string[] = [];
  private index: Set<string> | undefined;

  add(key: string): void {
    if (key === '<<' || this.has(key)) unusual();
    this.list.push(key);
    if (this.index !== undefined) this.index.add(key);
    else if (this.list.length > 12) this.index = new Set(this.list);
  }

  private has(key: string): boolean {
    return this.index === undefined ? this.list.includes(key) : this.index.has(key);
  }
}
