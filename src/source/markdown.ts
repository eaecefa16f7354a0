/** Markdown in text fields: paragraphs and list items of styled runs, with our inline references taken apart. */

import MarkdownIt, { type Token } from 'markdown-it';

/** A stretch of text in one style; `scheme` and `target` when it is a link, ours or a web address. */
export interface MarkdownRun {
  readonly text: string;
  readonly strong?: true;
  readonly emphasis?: true;
  readonly code?: true;
  /** `tool`, `https` ...: what stands before the colon, as written. */
  readonly scheme?: string;
  /** What stands after the colon. */
  readonly target?: string;
  /** The reference was written as `<tool:id>`: the words are to be taken from the register. */
  readonly bare?: true;
}

export interface MarkdownParagraph {
  readonly kind: 'paragraph' | 'item';
  readonly runs: readonly MarkdownRun[];
}

export interface Markdown {
  readonly paragraphs: readonly MarkdownParagraph[];
  /** Constructs that cards cannot show, in the author's words. */
  readonly refused: readonly string[];
}

const md = new MarkdownIt('commonmark', { html: false });
/** Addresses are judged by the caller, who can name the place; nothing is dropped silently here. */
md.validateLink = () => true;
/** The author's own characters, not percent codes: ids are compared with the registers. */
md.normalizeLink = (url) => url;
md.normalizeLinkText = (url) => url;

/**
 * One paragraph without any mark of Markdown but references such as `<tool:id>`: nearly all texts, and twenty times faster than the
 * long way. Not at the beginning: what opens a list, a heading or a rule.
 */
const SIMPLE =
  // biome-ignore lint/suspicious/noControlCharactersInRegex: control characters are left to the long way
  /^(?!\s)(?![-+#=~]|\d{1,9}[.)])(?:[^<>[\]*_`\\&!\u0000-\u001f]|<[a-zA-Z][a-zA-Z0-9+.-]{1,31}:[a-zA-Z0-9./-]+>)+(?<!\s)$/;

const REFUSED: Readonly<Record<string, string>> = {
  heading_open: 'a heading',
  blockquote_open: 'a block quotation',
  fence: 'a code block',
  code_block: 'an indented code block',
  hr: 'a horizontal line',
  html_block: 'HTML',
  image: 'a picture',
};

export function parseMarkdown(text: string): Markdown {
  // Equal references side by side become one run on the long way.
  if (!SIMPLE.test(text) || text.includes('><')) return parseMarked(text);
  return { paragraphs: [{ kind: 'paragraph', runs: simpleRuns(text) }], refused: [] };
}

function simpleRuns(text: string): MarkdownRun[] {
  const runs: MarkdownRun[] = [];
  let from = 0;
  for (let open = text.indexOf('<'); open >= 0; open = text.indexOf('<', from)) {
    if (open > from) runs.push({ text: text.slice(from, open) });
    const close = text.indexOf('>', open);
    const reference = text.slice(open + 1, close);
    const colon = reference.indexOf(':');
    const scheme = reference.slice(0, colon).toLowerCase();
    runs.push({ text: reference, scheme, target: reference.slice(colon + 1), bare: true });
    from = close + 1;
  }
  if (from < text.length) runs.push({ text: text.slice(from) });
  return runs;
}

/** The long way, by the `markdown-it` package. */
export function parseMarked(text: string): Markdown {
  const paragraphs: MarkdownParagraph[] = [];
  const refused = new Set<string>();
  let depth = 0;
  for (const token of md.parse(text, {})) {
    if (token.type === 'list_item_open') depth += 1;
    else if (token.type === 'list_item_close') depth -= 1;
    const name = REFUSED[token.type];
    if (name !== undefined) refused.add(name);
    if (token.type !== 'inline') continue;
    const runs = inlineRuns(token.children ?? [], refused);
    if (runs.length > 0) paragraphs.push({ kind: depth > 0 ? 'item' : 'paragraph', runs });
  }
  return { paragraphs, refused: [...refused] };
}

function inlineRuns(tokens: readonly Token[], refused: Set<string>): MarkdownRun[] {
  const runs: MarkdownRun[] = [];
  let strong = 0;
  let emphasis = 0;
  let link: { scheme: string; target: string; bare: boolean } | undefined;
  const push = (text: string, code = false): void => {
    if (text === '') return;
    const previous = runs.at(-1);
    const run: MarkdownRun = {
      text,
      ...(strong > 0 ? { strong: true as const } : {}),
      ...(emphasis > 0 ? { emphasis: true as const } : {}),
      ...(code ? { code: true as const } : {}),
      ...(link === undefined
        ? {}
        : { scheme: link.scheme, target: link.target, ...(link.bare ? { bare: true as const } : {}) }),
    };
    if (previous !== undefined && sameStyle(previous, run))
      runs[runs.length - 1] = { ...previous, text: previous.text + text };
    else runs.push(run);
  };
  for (const token of tokens) {
    const name = REFUSED[token.type];
    if (name !== undefined) refused.add(name);
    switch (token.type) {
      case 'text':
        push(token.content);
        break;
      case 'code_inline':
        push(token.content, true);
        break;
      case 'softbreak':
      case 'hardbreak':
        push(' ');
        break;
      case 'strong_open':
        strong += 1;
        break;
      case 'strong_close':
        strong -= 1;
        break;
      case 'em_open':
        emphasis += 1;
        break;
      case 'em_close':
        emphasis -= 1;
        break;
      case 'link_open': {
        const href = String(token.attrGet('href') ?? '');
        const colon = href.indexOf(':');
        link = {
          scheme: colon < 0 ? '' : href.slice(0, colon).toLowerCase(),
          target: href.slice(colon + 1),
          bare: token.info === 'auto',
        };
        break;
      }
      case 'link_close':
        link = undefined;
        break;
      default:
        if (token.content !== '') push(token.content);
    }
  }
  return runs;
}

function sameStyle(a: MarkdownRun, b: MarkdownRun): boolean {
  return (
    a.strong === b.strong &&
    a.emphasis === b.emphasis &&
    a.code === b.code &&
    a.scheme === b.scheme &&
    a.target === b.target
  );
}
