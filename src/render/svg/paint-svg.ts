/** Paints a drawing as one SVG element. Presentation attributes only: a strict content policy drops style attributes. */

import { INK_COLOURS } from '../../layout/drawing/inks.ts';
import { arcPoints } from '../../layout/drawing/paths.ts';
import {
  type BoltTag,
  DASHES_MM,
  type Drawing,
  type Ink,
  type Point,
  type Primitive,
  STROKE_WIDTH_MM,
  type Stroke,
} from '../../layout/drawing/primitives.ts';
import { escapeXml } from './escape.ts';

export interface SvgOptions {
  /** Put before the ids of title and description; needed when several drawings stand on one page. */
  readonly idPrefix?: string;
  readonly className?: string;
  /** Colour of the ground under numbers and inside symbols; by default the page's own (`var(--paper)` cannot be an attribute). */
  readonly paper?: string;
}

/**
 * Colours as attribute values. Ink is `currentColor`, so that dark themes work; marks whose ground shows through have no fill.
 * Classes let a page's style sheet replace the accent and the ground.
 */
const INKS: Readonly<Record<Ink, string>> = { ...INK_COLOURS, ink: 'currentColor' };

const WEIGHTS = { regular: 400, semibold: 600, bold: 700 } as const;

/**
 * The drawing as markup: `role="img"`, title and description inside, text as text, size from the view box (mm).
 * Output depends on the arguments alone.
 */
export function paintSvg(drawing: Drawing, options: SvgOptions = {}): string {
  const prefix = options.idPrefix ?? 'drawing';
  const title = escapeXml(`${prefix}-title`);
  const description = escapeXml(`${prefix}-desc`);
  const box = `0 0 ${mm(drawing.width)} ${mm(drawing.height)}`;
  const className = options.className === undefined ? '' : ` class="${escapeXml(options.className)}"`;
  const paper = options.paper ?? INKS.paper;
  const marks = drawing.marks.map((mark) => paintMark(mark, paper)).join('');
  return (
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="${box}" role="img" aria-labelledby="${title}" aria-describedby="${description}"${className}` +
    ` fill="none" stroke-linecap="butt" stroke-linejoin="miter"><title id="${title}">${escapeXml(drawing.title)}</title>` +
    `<desc id="${description}">${escapeXml(drawing.description)}</desc>${marks}</svg>`
  );
}

function paintMark(mark: Primitive, paper: string): string {
  const bolt = boltAttributes(mark.bolt);
  switch (mark.kind) {
    case 'line':
      return `<path d="M${point(mark.from)}L${point(mark.to)}"${strokeAttributes(mark.stroke, mark.ink, paper)}${bolt}/>`;
    case 'path':
      return `<path d="${pathData(mark.points, mark.curved, mark.closed)}"${fillAttributes(mark.fill, paper)}${strokeAttributes(mark.stroke, mark.ink, paper)}${bolt}/>`;
    case 'arc':
      return `<path d="${pathData(arcPoints(mark), true, false)}"${strokeAttributes(mark.stroke, mark.ink, paper)}${bolt}/>`;
    case 'circle':
      return (
        `<circle cx="${mm(mark.centre.x)}" cy="${mm(mark.centre.y)}" r="${mm(mark.radius)}"` +
        `${fillAttributes(mark.fill, paper)}${strokeAttributes(mark.stroke, mark.ink, paper)}${bolt}/>`
      );
    case 'text':
      return (
        `<text x="${mm(mark.at.x)}" y="${mm(mark.at.y)}" font-size="${mm(mark.size)}" font-weight="${WEIGHTS[mark.weight]}"` +
        ` text-anchor="${mark.anchor}" fill="${colour(mark.ink, paper)}" class="t-${mark.role} ink-${mark.ink}"${bolt}>${escapeXml(mark.text)}</text>`
      );
  }
}

function boltAttributes(bolt: BoltTag | undefined): string {
  return bolt === undefined ? '' : ` data-hole="${bolt.hole}" data-order="${bolt.order}"`;
}

function colour(ink: Ink, paper: string): string {
  return ink === 'paper' ? paper : INKS[ink];
}

function fillAttributes(fill: Ink | undefined, paper: string): string {
  return fill === undefined ? '' : ` fill="${colour(fill, paper)}" class="fill-${fill}"`;
}

function strokeAttributes(stroke: Stroke, ink: Ink, paper: string): string {
  if (stroke === 'none') return '';
  const dashes = DASHES_MM[stroke];
  const dash = dashes.length === 0 ? '' : ` stroke-dasharray="${dashes.map(mm).join(' ')}"`;
  return ` stroke="${colour(ink, paper)}" stroke-width="${STROKE_WIDTH_MM[stroke]}"${dash}`;
}

function pathData(points: readonly Point[], curved: boolean, closed: boolean): string {
  const [first, ...rest] = points;
  if (first === undefined) return '';
  const body = curved ? `C${rest.map(point).join(' ')}` : rest.map((p) => `L${point(p)}`).join('');
  return `M${point(first)}${body}${closed ? 'Z' : ''}`;
}

function point(p: Point): string {
  return `${mm(p.x)} ${mm(p.y)}`;
}

/** Hundredths of a millimetre are finer than any printer or screen. */
function mm(value: number): string {
  const text = value.toFixed(2).replace(/\.?0+$/u, '');
  return text === '-0' ? '0' : text;
}
