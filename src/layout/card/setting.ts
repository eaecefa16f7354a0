/** The type case of one card: faces, format, and where problems of a text are reported. */

import type { Range, Report } from '../../diagnostics/index.ts';
import {
  breakLines,
  type Faces,
  oneLine,
  type Span,
  type TextInk,
  type TextLine,
  type TextProblems,
  type Weight,
} from '../type/index.ts';
import type { Format } from './format.ts';
import { leading } from './format.ts';
import { type Block, node, type Tag, type TextItem } from './items.ts';

export interface Setting {
  readonly faces: Faces;
  readonly format: Format;
  readonly problems: TextProblems;
}

/** Problems of texts become diagnostics at `range`. */
export function settingFor(faces: Faces, format: Format, range: Range, report: Report): Setting {
  const problems: TextProblems = {
    missing: (codePoint) => {
      const hex = codePoint.toString(16).toUpperCase().padStart(4, '0');
      report('CRD002', range, `no card face has the character \`${String.fromCodePoint(codePoint)}\`, U+${hex}`, {
        hint: 'take it out, or say it in words',
      });
    },
    tooWide: (word, width, place) => {
      const shown = word.length > 40 ? `${word.slice(0, 40)}...` : word;
      report('CRD003', range, `\`${shown}\` is ${inMm(width)} wide and its place on the card ${inMm(place)}`, {
        hint: 'part it with a space or a hyphen, or write it shorter',
      });
    },
  };
  return { faces, format, problems };
}

function inMm(pt: number): string {
  return `${((pt * 25.4) / 72).toFixed(0)} mm`;
}

export function span(text: string, size: number, weight: Weight = 'regular', ink: TextInk = 'ink'): Span {
  return { text, size, weight, ink };
}

/** Distance from the top of a line of `lead` pt to the baseline that centres its capitals. */
export function baseline(lead: number, size: number): number {
  return lead / 2 + 0.33 * size;
}

export interface ParagraphOptions {
  readonly tag?: Tag;
  readonly align?: 'left' | 'right' | 'center';
  readonly lead?: number;
}

/** A paragraph as one element; an empty text has no height. */
export function paragraph(
  setting: Setting,
  spans: readonly Span[],
  width: number,
  options: ParagraphOptions = {},
): Block {
  const lines = breakLines(setting.faces, spans, width, setting.problems);
  return setLines(lines, Math.max(0, ...spans.map((s) => s.size)), width, options);
}

/** One line that is never broken; a line wider than `width` is reported by its longest reading, and broken after all. */
export function line(setting: Setting, spans: readonly Span[], width: number, options: ParagraphOptions = {}): Block {
  const single = oneLine(setting.faces, spans, setting.problems);
  if (single.width > width + 0.01) return paragraph(setting, spans, width, options);
  return setLines([single], Math.max(0, ...spans.map((s) => s.size)), width, options);
}

function setLines(lines: readonly TextLine[], size: number, width: number, options: ParagraphOptions): Block {
  const lead = options.lead ?? leading(size);
  const items = lines.flatMap((l, i) => {
    const x = options.align === 'right' ? width - l.width : options.align === 'center' ? (width - l.width) / 2 : 0;
    return lineItems(l, x, i * lead + baseline(lead, size));
  });
  return {
    height: lines.length * lead,
    decoration: [],
    nodes: items.length === 0 ? [] : [node(options.tag ?? 'P', items)],
  };
}

export function lineItems(l: TextLine, x: number, y: number): TextItem[] {
  return l.pieces.map((p) => ({
    kind: 'text',
    x: x + p.x,
    y,
    width: p.width,
    text: p.text,
    face: p.face.name,
    size: p.size,
    ink: p.ink,
  }));
}

/** Width of a text on one line. */
export function widthOfSpans(setting: Setting, spans: readonly Span[]): number {
  return oneLine(setting.faces, spans, setting.problems).width;
}
