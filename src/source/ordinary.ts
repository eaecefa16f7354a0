/**
 * The short way to a tree, for files as authors write them: maps, lists, text and brackets, without tags, anchors or faults. It
 * reads in one pass what the full parser takes apart into tokens first, and gives up on everything else, so that the full parser
 * alone decides what is a fault and how it is worded. Tests hold the two to the same trees.
 */

import { coreScalar } from './core-scalar.ts';
import type { SourceFile } from './files.ts';
import { bracketed } from './ordinary-flow.ts';
import {
  COLON,
  checkDepth,
  DASH,
  DOUBLE_QUOTE,
  HASH,
  isUnusual,
  Keys,
  Lines,
  OPEN_LIST,
  OPEN_MAP,
  SINGLE_QUOTE,
  SPACE,
  unusual,
} from './ordinary-lines.ts';
import { blockText, plainText, quotedText } from './ordinary-text.ts';
import type { MapEntry, MapNode, Node, SequenceNode } from './tree.ts';

const LITERAL = 124;
const FOLDED = 62;
/** A key with more signs before its colon is a fault. */
const LONGEST_KEY = 1000;

/** undefined: the file needs the full parser. */
export function readOrdinary({ file, text }: SourceFile): Node | undefined {
  if (text.includes('\t') || (text.includes('\r') && /\r(?!\n)/.test(text))) return undefined;
  try {
    const lines = new Lines(file, text);
    begin(lines);
    const root = blockMap(lines, lines.here, 0, 0);
    return lines.column === -1 ? root : undefined;
  } catch (cause) {
    if (isUnusual(cause)) return undefined;
    throw cause;
  }
}

/** The first line with content; it must not be indented. */
function begin(lines: Lines): void {
  let line = 0;
  for (;;) {
    const at = lines.skipSpaces(line);
    const code = lines.code(at);
    if (code === HASH) line = lines.lineAfter(lines.lineEnd(at));
    else if (at < lines.text.length && lines.isEnd(code)) line = lines.lineAfter(at);
    else {
      lines.column = at - line;
      lines.here = at;
      if (lines.column > 0) unusual();
      return;
    }
  }
}

/** start: of the first key, which stands at `column` of its line. */
function blockMap(lines: Lines, start: number, column: number, depth: number): MapNode {
  checkDepth(depth);
  const entries: MapEntry[] = [];
  const keys = new Keys();
  let at = start;
  do {
    if (column === 0) checkMarker(lines, at);
    const colon = colonOf(lines, at);
    if (colon < 0 || colon - at > LONGEST_KEY) unusual();
    let end = colon;
    while (lines.code(end - 1) === SPACE) end -= 1;
    const key = keyText(lines, at, end);
    keys.add(key);
    const value = valueAfter(lines, colon + 1, column, depth + 1);
    entries.push({ key, keyRange: { file: lines.file, start: at, end }, value });
    at = lines.here;
  } while (lines.column === column);
  if (lines.column > column) unusual();
  const range = lines.range(start, lines.after);
  lines.close(column);
  return { kind: 'map', entries, range };
}

/** `---` and `...` at the beginning of a line part documents. */
function checkMarker(lines: Lines, at: number): void {
  const three = lines.text.slice(at, at + 3);
  if (three === '---' || three === '...') unusual();
}

function keyText(lines: Lines, start: number, end: number): string {
  const code = lines.code(start);
  if (code !== DOUBLE_QUOTE && code !== SINGLE_QUOTE) return String(coreScalar(lines.text.slice(start, end)));
  return String(quotedText(lines, start, -1).value);
}

/** Offset of the colon that makes a key of what stands at `start`; -1 when there is none on the line. */
function colonOf(lines: Lines, start: number): number {
  const first = lines.code(start);
  if (first === DOUBLE_QUOTE || first === SINGLE_QUOTE) {
    const quoted = quotedText(lines, start, -1);
    if (lines.text.slice(start, quoted.range.end).includes('\n')) return -1;
    const at = lines.skipSpaces(quoted.range.end);
    return lines.code(at) === COLON && lines.isEmpty(lines.code(at + 1)) ? at : -1;
  }
  lines.checkBeginning(start);
  if (lines.isDash(start)) unusual();
  for (let at = start; ; at++) {
    const code = lines.code(at);
    if (lines.isEnd(code)) return -1;
    if (code === SPACE) {
      if (lines.code(at + 1) === HASH) return -1;
    } else if (code === COLON && lines.isEmpty(lines.code(at + 1))) return at;
  }
}

/** What stands behind the colon of a key at `column`. */
function valueAfter(lines: Lines, offset: number, column: number, depth: number): Node {
  const at = lines.skipSpaces(offset);
  const code = lines.code(at);
  if (lines.isEnd(code) || (code === HASH && at > offset)) {
    lines.advance(lines.lineEnd(at), column, false);
    if (lines.column === column && lines.isDash(lines.here)) return blockList(lines, lines.here, column, depth);
    return belowOf(lines, column, depth);
  }
  if (code === DASH && lines.isEmpty(lines.code(at + 1))) unusual();
  return scalarOrBrackets(lines, at, column, depth) ?? plainText(lines, at, column);
}

/** A value on lines of its own, deeper than what holds it at `column`. */
function belowOf(lines: Lines, column: number, depth: number): Node {
  if (lines.column <= column) unusual();
  return blockNode(lines, lines.here, lines.column, column, depth);
}

/** start: offset of a value at column `own` of its line, within a map or list at `column`. */
function blockNode(lines: Lines, start: number, own: number, column: number, depth: number): Node {
  if (lines.isDash(start)) return blockList(lines, start, own, depth);
  const code = lines.code(start);
  if (code === OPEN_LIST || code === OPEN_MAP || code === LITERAL || code === FOLDED) {
    return scalarOrBrackets(lines, start, column, depth) ?? unusual();
  }
  if (colonOf(lines, start) >= 0) return blockMap(lines, start, own, depth);
  return scalarOrBrackets(lines, start, column, depth) ?? plainText(lines, start, column);
}

/** undefined: unquoted text. Moves to the next line with content otherwise. */
function scalarOrBrackets(lines: Lines, at: number, column: number, depth: number): Node | undefined {
  checkDepth(depth);
  switch (lines.code(at)) {
    case LITERAL:
    case FOLDED:
      return blockText(lines, at, column);
    case DOUBLE_QUOTE:
    case SINGLE_QUOTE: {
      const node = quotedText(lines, at, column);
      lines.finish(node.range.end, column, true);
      return node;
    }
    case OPEN_LIST:
    case OPEN_MAP: {
      const node = bracketed(lines, at, column, depth);
      lines.finish(node.range.end, column, true);
      return node;
    }
    default:
      return undefined;
  }
}

/** start: of the first dash, which stands at `column` of its line. */
function blockList(lines: Lines, start: number, column: number, depth: number): SequenceNode {
  checkDepth(depth);
  const items: Node[] = [];
  let at = start;
  do {
    const behind = at + 1;
    const inner = lines.skipSpaces(behind);
    const code = lines.code(inner);
    if (lines.isEnd(code) || (code === HASH && inner > behind)) {
      lines.advance(lines.lineEnd(inner), column, false);
      items.push(belowOf(lines, column, depth + 1));
    } else items.push(blockNode(lines, inner, column + inner - at, column, depth + 1));
    at = lines.here;
  } while (lines.column === column && lines.isDash(at));
  if (lines.column > column) unusual();
  const range = lines.range(start, lines.after);
  lines.close(column);
  return { kind: 'sequence', items, range };
}
