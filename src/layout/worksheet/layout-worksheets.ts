/** Worksheets of a machine's joints: one sheet or two a joint, to be bound as an appendix and followed by hand. */

import type { JointPlan, Machine, ResolvedShop } from '../../resolve/types.ts';
import { capitalised } from '../../resolve/words.ts';
import { WORKING_SECTIONS } from '../../torque/working.ts';
import { type Chunk, tableChunks } from '../card/chunks.ts';
import { formatOf, textWidthOf } from '../card/format.ts';
import { type Block, EMPTY, mm, node, overlay, PT_PER_MM, shift, stack } from '../card/items.ts';
import { type PlacedBlock, paginate } from '../card/paginate.ts';
import { line, paragraph, type Setting, span } from '../card/setting.ts';
import type { Faces } from '../type/index.ts';
import { bandFigure } from './band-figure.ts';
import { inputsTable } from './inputs-table.ts';
import { sectionNote } from './section-note.ts';
import { titleBlock } from './sheet-title.ts';
import { workingRow } from './working-rows.ts';

export interface WorksheetPage {
  /** Entry in the list of bookmarks; empty on the further pages of a joint. */
  readonly bookmark: string;
  readonly blocks: readonly PlacedBlock[];
  readonly footer: PlacedBlock;
}

export interface WorksheetLayout {
  /** Paper in pt: A4, or Letter where the shop's cards are. */
  readonly width: number;
  readonly height: number;
  readonly pages: readonly WorksheetPage[];
}

const NO_RANGE = { file: '', start: 0, end: 0 };
/** Kept free at the foot, pt. */
const FOOT = mm(11);
const FURTHER_HEAD = mm(7);
/** A section of so many lines is not parted over two pages. */
const MOST_WHOLE = 4;

/** Every joint begins a page. Nothing is reported: the words of a worksheet stood on cards and in registers before. */
export function layoutWorksheets(shop: ResolvedShop, machine: Machine, faces: Faces): WorksheetLayout {
  const format = formatOf(shop.info.cardFormat === 'Letter' ? 'Letter' : 'A4');
  const setting: Setting = { faces, format, problems: { missing: () => undefined, tooWide: () => undefined } };
  const bodies = machine.joints.flatMap((form) => jointPages(setting, machine, form));
  const pages = bodies.map((body, i): WorksheetPage => {
    const footer = footerBlock(setting, shop, machine, i + 1, bodies.length);
    const y = format.height - format.bottom - footer.height;
    return { ...body, footer: { x: format.binding, y, block: footer } };
  });
  return { width: format.width, height: format.height, pages };
}

type Form = Machine['joints'][number];

function jointPages(setting: Setting, machine: Machine, form: Form): Omit<WorksheetPage, 'footer'>[] {
  const { format } = setting;
  const width = textWidthOf(format);
  const room = format.height - format.top - format.bottom - FOOT - FURTHER_HEAD;
  const sides = paginate(jointChunks(setting, machine, form, width), room, () => undefined);
  return sides.map((side, i) => {
    const top = format.top + FURTHER_HEAD;
    const blocks = side.map((b) => ({ ...b, x: format.binding + b.x, y: top + b.y }));
    const head = sheetHead(setting, machine, form, i, width);
    return {
      bookmark: i === 0 ? titleOf(form) : '',
      blocks: [{ x: format.binding, y: format.top, block: head }, ...blocks],
    };
  });
}

function titleOf({ plan, variants }: Form): string {
  return variants === '' ? capitalised(plan.name) : `${capitalised(plan.name)}, ${variants}`;
}

/** The line at the top edge: what the sheet is, and of which machine; on further pages of which joint too. */
function sheetHead(setting: Setting, machine: Machine, form: Form, page: number, width: number): Block {
  const { small } = setting.format.type;
  const name = page === 0 ? '' : `: ${titleOf(form)}, continued`;
  return overlay(
    line(setting, [span(`Worksheet${name}`, small, 'semibold', 'accent')], width, { lead: mm(5) }),
    line(setting, [span(capitalised(machine.name), small, 'semibold')], width, { align: 'right', lead: mm(5) }),
  );
}

function jointChunks(setting: Setting, machine: Machine, form: Form, width: number): Chunk[] {
  const { plan } = form;
  const chunk = (block: Block, gap: number, keepWithNext = false): Chunk => ({
    block,
    gap,
    keepWithNext,
    what: `the worksheet of ${machine.id}`,
    range: NO_RANGE,
  });
  const figure = figureBlock(plan, width);
  const chunks: Chunk[] = [
    chunk(titleBlock(setting, form, width), 0, true),
    chunk(figure, mm(3)),
    chunk(heading(setting, 'Inputs', width), mm(4), true),
    ...tableChunks(inputsTable(setting, plan, width), 0, 0, 'inputs', NO_RANGE),
  ];
  let first = true;
  for (const [i, section] of WORKING_SECTIONS.entries()) {
    const lines = plan.result.working.filter((l) => l.section === section);
    if (lines.length === 0) continue;
    const words = sectionNote(plan, section);
    if (first) chunks.push(chunk(workingIntro(setting, width), mm(4.5), true));
    chunks.push(chunk(sectionHead(setting, section, words, width), first ? mm(0.6) : mm(2), true));
    const rows = lines.map((l) => workingRow(setting, l, width));
    const further = sectionHead(setting, `${section}, continued`, '', width);
    const table = tableChunks({ head: EMPTY, rows }, i + 1, 0, section, NO_RANGE, further);
    const whole = rows.length <= MOST_WHOLE;
    chunks.push(...table.map((c, k) => (whole && k < rows.length - 1 ? { ...c, keepWithNext: true } : c)));
    first = false;
  }
  return chunks;
}

function heading(setting: Setting, text: string, width: number): Block {
  return paragraph(setting, [span(text, 12, 'semibold')], width, { tag: 'H2', lead: mm(6) });
}

function figureBlock(plan: JointPlan, width: number): Block {
  const drawing = bandFigure(plan, width / PT_PER_MM);
  return {
    height: mm(drawing.height),
    decoration: [],
    nodes: [node('Figure', [{ kind: 'drawing', x: 0, y: 0, drawing }], [], { alt: drawing.description })],
  };
}

function workingIntro(setting: Setting, width: number): Block {
  const { small } = setting.format.type;
  return stack([
    heading(setting, 'Working', width),
    paragraph(
      setting,
      [
        span(
          'Numbers are printed to four figures, five where the first is 1: a pocket calculator comes within a thousandth of each result.',
          small,
          'regular',
          'soft',
        ),
      ],
      width,
    ),
  ]);
}

function sectionHead(setting: Setting, section: string, note: string, width: number): Block {
  const { small, least } = setting.format.type;
  const words = [span(capitalised(section), small + 0.5, 'bold')];
  if (note !== '') words.push(span(`\u2002${note}`, least, 'regular', 'soft'));
  const text = paragraph(setting, words, width, { tag: 'H2', lead: mm(4.4) });
  return {
    ...text,
    height: text.height + mm(0.8),
    decoration: [{ kind: 'line', x1: 0, y1: text.height, x2: width, y2: text.height, width: 0.4, ink: 'hairline' }],
  };
}

function footerBlock(setting: Setting, shop: ResolvedShop, machine: Machine, number: number, of: number): Block {
  const { format } = setting;
  const width = textWidthOf(format);
  const { small, least } = format.type;
  const page = [span(`Page\u00a0${number}\u00a0of\u00a0${of}`, small, 'semibold')];
  const left = stack([
    paragraph(setting, [span("Computed by the shop as a check; the maker's manual governs.", least)], width),
    line(setting, [span(`${shop.info.name} · worksheets: ${machine.name}`, small)], width, { lead: mm(4.2) }),
  ]);
  const right = shift(line(setting, page, width, { align: 'right', lead: mm(4.2) }), 0, left.height - mm(4.2));
  const body = shift(overlay(left, right), 0, mm(1.2));
  return {
    height: left.height + mm(1.2),
    decoration: [{ kind: 'line', x1: 0, y1: 0, x2: width, y2: 0, width: 0.75, ink: 'ink' }, ...body.decoration],
    nodes: body.nodes,
  };
}
