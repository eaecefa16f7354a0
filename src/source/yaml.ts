/** YAML text to a tree with places, by the `yaml` package; what content may not use is reported, never followed. */

import {
  Composer,
  type Document,
  isAlias,
  isMap,
  isScalar,
  isSeq,
  LineCounter,
  type ParsedNode,
  Parser,
  visit,
  type YAMLError,
} from 'yaml';
import type { Range, Report } from '../diagnostics/index.ts';
import type { SourceFile } from './files.ts';
import { readOrdinary } from './ordinary.ts';
import { CLOSE_LIST, CLOSE_MAP, LF, OPEN_LIST, OPEN_MAP } from './ordinary-lines.ts';
import type { MapEntry, Node, Scalar } from './tree.ts';

/** Deeper than any shape; keeps hostile nesting from exhausting the stack. */
const DEEPEST_NESTING = 24;

/** The file's one document as a tree; undefined when it holds none or is not well formed (then reported). */
export function parseYaml(source: SourceFile, report: Report): Node | undefined {
  const deep = nestingOf(source.text);
  if (deep === undefined) return readOrdinary(source) ?? parseFully(source, report);
  report(
    'SRC006',
    { file: source.file, start: deep, end: deep + 1 },
    'the brackets nest deeper than any content does',
    {
      hint: 'close them, or quote the text that holds them',
    },
  );
  return undefined;
}

/** The same by the `yaml` package alone: the long way, which words every fault. Brackets that nest too deeply are not for it. */
export function parseFully(source: SourceFile, report: Report): Node | undefined {
  const { file, text } = source;
  const at = (start: number, end: number): Range => ({ file, start, end: Math.max(start, end) });
  const tab = /^[ ]*\t[ \t]*(?=\S)/m.exec(text);
  const counter = new LineCounter();
  // `keepSourceTokens` is off: only offsets are wanted, and tokens double the memory.
  const composer = new Composer({
    uniqueKeys: false,
    merge: false,
    logLevel: 'silent',
    strict: true,
    version: '1.2',
    schema: 'core',
  });
  const documents = [...composer.compose(new Parser(counter.addNewLine).parse(text), true, text.length)];
  const [document, second] = documents;
  let broken = false;
  for (const d of documents) {
    // One report a cause: what follows the first fault of a document is mostly its echo.
    for (const e of d.errors.slice(0, 1)) {
      broken = true;
      const tabbed = tab !== null && (e.code === 'TAB_AS_INDENT' || e.code === 'BAD_INDENT' || /tab/i.test(e.message));
      if (tabbed)
        report('SRC007', at(tab.index, tab.index + tab[0].length), 'the line is indented with a tab', {
          hint: 'indent with spaces, two a level',
        });
      else report('SRC006', faultRange(d, e), explain(e), { hint: hintFor(e) });
    }
  }
  if (document === undefined || (document.contents === null && !broken)) {
    report('SRC010', at(0, 0), 'the file holds nothing', { hint: 'write the content or delete the file' });
    return undefined;
  }
  if (second !== undefined) {
    report('SRC011', at(second.range[0], second.range[0] + 3), 'a second YAML document begins here', {
      hint: 'one document a file: remove the `---` line or make two files',
    });
  }
  if (broken || document.contents === null) return undefined;
  return convert(document.contents as ParsedNode, 0);

  function convert(node: ParsedNode, depth: number): Node | undefined {
    const range = at(node.range[0], trimEnd(node.range[0], node.range[1]));
    if (depth > DEEPEST_NESTING) {
      report('SRC006', range, 'the lists and maps nest deeper than any content does', {
        hint: 'check the indentation: a step, a joint or a part lies a few levels deep at most',
      });
      return undefined;
    }
    if (isAlias(node)) {
      report('SRC008', range, `\`*${node.source}\` is a YAML alias, and content does not use them`, {
        hint: 'write the value out, or make a shared stage of what repeats',
      });
      return { kind: 'scalar', value: '', range };
    }
    if (node.anchor !== undefined) {
      report('SRC008', range, `\`&${node.anchor}\` is a YAML anchor, and content does not use them`, {
        hint: 'remove it; write repeated values out, or make a shared stage',
      });
    }
    if (node.tag !== undefined) {
      const name = node.tag.replace('tag:yaml.org,2002:', '!!');
      report('SRC008', range, `this value has the YAML tag \`${name}\`, and content does not use tags`, {
        hint: 'remove it',
      });
    }
    if (isScalar(node)) {
      // Dates and versions are text for us, and a number keeps the form in which it was written.
      const value = node.value as Scalar;
      return { kind: 'scalar', value: typeof value === 'bigint' ? String(value) : value, range };
    }
    if (isSeq(node)) {
      const items = node.items.map((i) => convert(i as ParsedNode, depth + 1)).filter((i) => i !== undefined);
      return { kind: 'sequence', items, range };
    }
    if (!isMap(node)) return undefined;
    const entries: MapEntry[] = [];
    const seen = new Map<string, Range>();
    for (const pair of node.items) {
      const keyNode = pair.key as ParsedNode;
      if (!isScalar(keyNode)) {
        report(
          'SRC006',
          keyNode === null ? range : at(keyNode.range[0], keyNode.range[1]),
          'a key must be plain text',
          { hint: 'did you forget quotes around a value that begins with `{` or `[`?' },
        );
        continue;
      }
      const key = String(keyNode.value);
      const keyRange = at(keyNode.range[0], keyNode.range[1]);
      const first = seen.get(key);
      if (first !== undefined) {
        report('SRC009', keyRange, `the key \`${key}\` stands twice in this entry`, {
          related: [{ range: first, message: `\`${key}\` first stands here` }],
          hint: 'keep one of them',
        });
        continue;
      }
      seen.set(key, keyRange);
      if (key === '<<') {
        report('SRC008', keyRange, '`<<` is a YAML merge key, and content does not use them', {
          hint: 'write the values out',
        });
        continue;
      }
      const value =
        pair.value === null
          ? ({ kind: 'scalar', value: null, range: at(keyRange.end, keyRange.end) } as const)
          : convert(pair.value as ParsedNode, depth + 1);
      if (value !== undefined) entries.push({ key, keyRange, value });
    }
    return { kind: 'map', entries, range };
  }

  /** An unclosed quote is reported at its opening, where the author must look, and not at the end of the file. */
  function faultRange(d: Document.Parsed, e: YAMLError): Range {
    let opening: Range | undefined;
    if (e.code === 'MISSING_CHAR' && /quote/.test(e.message)) {
      visit(d, {
        Scalar(_, node) {
          const quoted = node.type === 'QUOTE_DOUBLE' || node.type === 'QUOTE_SINGLE';
          if (quoted && node.range && node.range[0] < e.pos[0]) opening = at(node.range[0], node.range[0] + 1);
        },
      });
    }
    return opening ?? at(e.pos[0], e.pos[1]);
  }

  /** The end of a block value without the blank lines that follow it. */
  function trimEnd(start: number, end: number): number {
    let e = end;
    while (e > start && /\s/.test(text.charAt(e - 1))) e -= 1;
    return e;
  }
}

/** Offset of the first bracket that nests too deeply outside quotes, before the parser recurses into it. */
function nestingOf(text: string): number | undefined {
  let depth = 0;
  for (let i = 0; i < text.length; i++) {
    const c = text.charCodeAt(i);
    if (c === OPEN_LIST || c === OPEN_MAP) {
      depth += 1;
      if (depth > 200) return i;
    } else if (c === CLOSE_LIST || c === CLOSE_MAP) depth = Math.max(0, depth - 1);
    else if (c === LF && depth > 0 && /^\S/.test(text.charAt(i + 1))) depth = 0;
  }
  return undefined;
}

const UNCLOSED = /^flow (sequence|map)/i;

/** Faults that the parser names in its own language, in that of an author. */
const PLAIN_WORDS: Readonly<Record<string, string>> = {
  BLOCK_AS_IMPLICIT_KEY: 'a second `: ` stands in one line',
  MULTILINE_IMPLICIT_KEY: 'text stands where a key with its colon is due',
};

function explain(e: YAMLError): string {
  const opened = openedBy(e);
  const words =
    opened === undefined ? PLAIN_WORDS[e.code] : `what \`${opened.by}\` opens is not closed before this place`;
  if (words !== undefined) return `this is not well-formed YAML: ${words}`;
  const first = (e.message.split('\n')[0] ?? e.message)
    .replace('"quote', 'quote')
    .replace(/ at line \d+, column \d+:?$/, '')
    .replace(/:$/, '');
  return `this is not well-formed YAML: ${first.charAt(0).toLowerCase()}${first.slice(1)}`;
}

/** The bracket that is open where the parser gives up, and the one that closes it. */
function openedBy(e: YAMLError): { readonly by: string; readonly close: string } | undefined {
  const kind = UNCLOSED.exec(e.message)?.[1];
  return kind === undefined ? undefined : kind === 'map' ? { by: '{', close: '}' } : { by: '[', close: ']' };
}

function hintFor(e: YAMLError): string {
  const opened = openedBy(e);
  if (opened !== undefined) return `write \`${opened.close}\` where it ends, mostly on the line before`;
  switch (e.code) {
    case 'MISSING_CHAR':
      return 'a quote, bracket or comma is missing, often on the line before';
    case 'BLOCK_AS_IMPLICIT_KEY':
      return 'text that holds `: ` must stand in quotes';
    case 'MULTILINE_IMPLICIT_KEY':
      return 'the key lacks its colon, or text that holds `: ` lacks its quotes';
    case 'UNEXPECTED_TOKEN':
    case 'BAD_SCALAR_START':
      return 'put quotes around text that begins with a special character';
    default:
      return 'check the indentation and quotes of this line and the one before';
  }
}
