/** Sets a formula in two dimensions: text runs and rules in pt about a baseline, for the page of a worksheet. */

import type { Mark } from '../../torque/formula/index.ts';
import { NO_BREAK_SPACE } from '../../units/index.ts';
import type { LineItem, TextItem } from '../card/items.ts';
import { lineItems, type Setting, span } from '../card/setting.ts';
import { oneLine, type Weight } from '../type/index.ts';

/** What is placed, from the left end of the baseline (y down); `ascent` and `descent` in pt above and below it. */
export interface FormulaBox {
  readonly width: number;
  readonly ascent: number;
  readonly descent: number;
  readonly texts: readonly TextItem[];
  readonly rules: readonly LineItem[];
}

/** Sizes in pt. Nothing is smaller than `script`. */
export interface FormulaType {
  readonly size: number;
  readonly script: number;
}

/** Shares of the type size. The middle of a fraction bar stands where the middle of a plus sign does. */
const AXIS = 0.29;
const ASCENT = 0.68;
const DESCENT = 0.19;
const BAR_GAP = 0.18;
const RULE = 0.55;
const DOWN = 0.18;
const UP = 0.36;

/** The box of a formula. Widths are those of the card faces. */
export function formulaBox(setting: Setting, mark: Mark, type: FormulaType, weight: Weight = 'regular'): FormulaBox {
  switch (mark.kind) {
    case 'word':
    case 'gap':
      return textBox(setting, wordText(mark), type.size, weight);
    case 'row':
      return rowBox(setting, mark.parts.flatMap(flatten), type, weight);
    case 'sub':
      return scripted(setting, formulaBox(setting, mark.base, type, weight), mark.text, type, DOWN * type.size);
    case 'super':
      return scripted(setting, formulaBox(setting, mark.base, type, weight), mark.text, type, -UP * type.size);
    case 'fraction':
      return fraction(
        formulaBox(setting, mark.over, type, weight),
        formulaBox(setting, mark.under, type, weight),
        type.size,
      );
    case 'root':
      return root(formulaBox(setting, mark.of, type, weight), type.size);
  }
}

/** Signs stand between spaces, factors are parted by one; neither is ever a place to break. */
function wordText(mark: Extract<Mark, { kind: 'word' | 'gap' }>): string {
  if (mark.kind === 'gap') return NO_BREAK_SPACE;
  return mark.role === 'sign' ? `${NO_BREAK_SPACE}${mark.text}${NO_BREAK_SPACE}` : mark.text;
}

function flatten(mark: Mark): readonly Mark[] {
  return mark.kind === 'row' ? mark.parts.flatMap(flatten) : [mark];
}

/** Words that follow each other become one run, so that the paper holds whole phrases. */
function rowBox(setting: Setting, parts: readonly Mark[], type: FormulaType, weight: Weight): FormulaBox {
  const boxes: FormulaBox[] = [];
  let text = '';
  const close = (): void => {
    if (text !== '') boxes.push(textBox(setting, text, type.size, weight));
    text = '';
  };
  for (const part of parts) {
    if (part.kind === 'word' || part.kind === 'gap') text += wordText(part);
    else {
      close();
      boxes.push(formulaBox(setting, part, type, weight));
    }
  }
  close();
  return beside(boxes);
}

function textBox(setting: Setting, text: string, size: number, weight: Weight): FormulaBox {
  const line = oneLine(setting.faces, [span(text, size, weight)], setting.problems);
  return { width: line.width, ascent: ASCENT * size, descent: DESCENT * size, texts: lineItems(line, 0, 0), rules: [] };
}

/** Boxes on one baseline. */
export function beside(boxes: readonly FormulaBox[]): FormulaBox {
  let x = 0;
  const placed = boxes.map((box) => {
    const moved = movedBox(box, x, 0);
    x += box.width;
    return moved;
  });
  return {
    width: x,
    ascent: Math.max(0, ...boxes.map((b) => b.ascent)),
    descent: Math.max(0, ...boxes.map((b) => b.descent)),
    texts: placed.flatMap((b) => b.texts),
    rules: placed.flatMap((b) => b.rules),
  };
}

function scripted(setting: Setting, base: FormulaBox, text: string, type: FormulaType, down: number): FormulaBox {
  const script = movedBox(textBox(setting, text, type.script, 'regular'), base.width + 0.04 * type.size, down);
  return {
    width: script.width,
    ascent: Math.max(base.ascent, script.ascent),
    descent: Math.max(base.descent, script.descent),
    texts: [...base.texts, ...script.texts],
    rules: [...base.rules, ...script.rules],
  };
}

function fraction(over: FormulaBox, under: FormulaBox, size: number): FormulaBox {
  const width = Math.max(over.width, under.width) + 0.2 * size;
  const axis = -AXIS * size;
  const gap = BAR_GAP * size;
  const upper = movedBox(over, (width - over.width) / 2, axis - gap - over.descent);
  const lower = movedBox(under, (width - under.width) / 2, axis + gap + under.ascent);
  const margin = 0.06 * size;
  return {
    width: width + 2 * margin,
    ascent: upper.ascent,
    descent: lower.descent,
    texts: [...upper.texts, ...lower.texts].map((t) => ({ ...t, x: t.x + margin })),
    rules: [
      ...[...upper.rules, ...lower.rules].map((r) => ({ ...r, x1: r.x1 + margin, x2: r.x2 + margin })),
      rule(margin, axis, margin + width, axis),
    ],
  };
}

/** A hook drawn as three strokes, and a bar over what stands under the root. */
function root(of: FormulaBox, size: number): FormulaBox {
  const top = -(of.ascent + 0.1 * size);
  const bottom = of.descent;
  const hook = 0.62 * size;
  const inner = movedBox(of, hook + 0.1 * size, 0);
  const end = inner.width + 0.08 * size;
  const foot = { x: 0.3 * size, y: bottom };
  return {
    width: end + 0.06 * size,
    ascent: -top + RULE,
    descent: bottom + RULE,
    texts: inner.texts,
    rules: [
      ...inner.rules,
      rule(0.02 * size, -0.26 * size, 0.12 * size, -0.34 * size),
      { ...rule(0.12 * size, -0.34 * size, foot.x, foot.y), width: 1.7 * RULE },
      rule(foot.x, foot.y, hook, top),
      rule(hook, top, end, top),
    ],
  };
}

function rule(x1: number, y1: number, x2: number, y2: number): LineItem {
  return { kind: 'line', x1, y1, x2, y2, width: RULE, ink: 'ink' };
}

/** The box with its own baseline moved; ascent, descent and right end are then measured from the new place. */
export function movedBox(box: FormulaBox, dx: number, dy: number): FormulaBox {
  if (dx === 0 && dy === 0) return box;
  return {
    width: box.width + dx,
    ascent: box.ascent - dy,
    descent: box.descent + dy,
    texts: box.texts.map((t) => ({ ...t, x: t.x + dx, y: t.y + dy })),
    rules: box.rules.map((r) => ({ ...r, x1: r.x1 + dx, y1: r.y1 + dy, x2: r.x2 + dx, y2: r.y2 + dy })),
  };
}
