/** Text fields: Markdown with its inline references resolved to names, or reported where they stand. */

import { didYouMean, type Range } from '../diagnostics/index.ts';
import type { At } from '../model/index.ts';
import { type MarkdownRun, parseMarkdown } from '../source/index.ts';
import { joinUnits } from '../units/index.ts';
import type { Context } from './context.ts';
import { lookUp } from './context.ts';
import type { Prose, RefKind, Run } from './types.ts';

/** What references mean in the procedure at hand. */
export interface Names {
  part(id: string, range: Range): { readonly name: string } | undefined;
  joint(id: string, range: Range): { readonly name: string } | undefined;
  step(id: string, range: Range): { readonly number: number; readonly anchor: string } | undefined;
}

const SCHEMES: readonly RefKind[] = ['tool', 'consumable', 'part', 'joint', 'step', 'procedure'];

/** Resolves one text field. used: called once for each reference that was found. */
export function resolveProse(
  context: Context,
  at: At<string>,
  names: Names,
  used?: (kind: RefKind, id: string) => void,
): Prose {
  const { paragraphs, refused } = parseMarkdown(at.value);
  for (const what of refused) {
    context.report('FLD011', at.node.range, `text holds ${what}, which a card cannot show`, {
      hint: 'use plain sentences, `**strong**` words, lists and references',
    });
  }
  const locate = locator(context, at);
  return paragraphs.map((p) => {
    const runs: Run[] = [];
    for (const r of p.runs) runs.push(resolveRun(context, r, locate, names, used));
    return { kind: p.kind, runs };
  });
}

function resolveRun(
  context: Context,
  run: MarkdownRun,
  locate: (needle: string) => Range,
  names: Names,
  used: ((kind: RefKind, id: string) => void) | undefined,
): Run {
  // Nine runs in ten are words without a style.
  if (run.scheme === undefined && !run.strong && !run.emphasis && !run.code) return { text: joinUnits(run.text) };
  const style = {
    ...(run.strong ? { strong: true as const } : {}),
    ...(run.emphasis ? { emphasis: true as const } : {}),
    ...(run.code ? { code: true as const } : {}),
  };
  const { scheme, target } = run;
  if (scheme === undefined || target === undefined) return { text: joinUnits(run.text), ...style };
  if (scheme === 'http' || scheme === 'https') return { text: run.text, ...style, href: `${scheme}:${target}` };
  const range = locate(`${scheme}:${target}`);
  const kind = SCHEMES.find((s) => s === scheme);
  if (kind === undefined) {
    context.report(
      'REF014',
      range,
      scheme === '' ? `\`${target}\` is a link without a kind` : `\`${scheme}:\` is not a kind of reference`,
      {
        hint:
          didYouMean(scheme, SCHEMES) ??
          `kinds: ${SCHEMES.map((s) => `\`${s}:\``).join(', ')}, or a web address beginning with \`https://\``,
      },
    );
    return { text: run.text, ...style, code: true };
  }
  const found = find(context, kind, target, range, names);
  // What leads nowhere stays a name and not a word of the sentence.
  if (found === undefined) return { text: run.text, ...style, code: true };
  used?.(kind, target);
  return { text: joinUnits(run.bare ? found.name : run.text), ...style, ref: { kind, id: found.id } };
}

function find(
  context: Context,
  kind: RefKind,
  id: string,
  range: Range,
  names: Names,
): { name: string; id: string } | undefined {
  const { content } = context;
  switch (kind) {
    case 'tool': {
      const t = lookUp(context, 'tool', content.tools, id, range);
      return t && { name: t.value.name, id };
    }
    case 'consumable': {
      const c = lookUp(context, 'consumable', content.consumables, id, range);
      return c && { name: c.value.name, id };
    }
    case 'part': {
      const p = names.part(id, range);
      return p && { name: p.name, id };
    }
    case 'joint': {
      const j = names.joint(id, range);
      return j && { name: j.name, id };
    }
    case 'procedure': {
      const p = lookUp(context, 'procedure', content.procedures, id, range);
      return p && { name: `${id} ${p.value.title}`, id };
    }
    case 'step': {
      const s = names.step(id, range);
      return s && { name: `step\u00a0${s.number}`, id: s.anchor };
    }
  }
}

/**
 * Finds references in the file: the nth time a needle is asked for is its nth place in the field.
 * References hold no spaces, so folding and quoting leave them whole; the field itself is the fallback.
 */
function locator(context: Context, at: At<string>): (needle: string) => Range {
  const { range } = at.node;
  let next: Map<string, number> | undefined;
  return (needle) => {
    // Most texts hold no reference.
    next ??= new Map();
    const text = context.content.textOf(range.file) ?? '';
    const from = next.get(needle) ?? range.start;
    let index = text.indexOf(needle, from);
    // `tool:socket-2` must not be found within `tool:socket-24`.
    while (index >= 0 && /[\w-]/.test(text.charAt(index + needle.length))) index = text.indexOf(needle, index + 1);
    if (index < 0 || index + needle.length > range.end) return range;
    next.set(needle, index + needle.length);
    return { file: range.file, start: index, end: index + needle.length };
  };
}
