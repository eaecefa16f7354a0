/** Lays out every card of the shop: one for each document and variant. Pure; faults of the content are reported, not thrown. */

import type { Range, Report } from '../../diagnostics/index.ts';
import type { Document, ResolvedShop, Stage, Standing, Variant } from '../../resolve/types.ts';
import type { Faces } from '../type/index.ts';
import { lineBlanks } from './blanks.ts';
import { barsOfSide } from './change-bars.ts';
import type { Chunk } from './chunks.ts';
import { personName } from './control-block.ts';
import { draftMark } from './draft-mark.ts';
import { type Format, formatOf, leftOf, textWidthOf } from './format.ts';
import { duration, frontChunks } from './front.ts';
import { type Block, mm, node, shift, stack } from './items.ts';
import { footOf } from './page-foot.ts';
import { type FrameFacts, headerBlock } from './page-frame.ts';
import { type PlacedBlock, paginate } from './paginate.ts';
import { setProse } from './prose.ts';
import { LEAST_MODULE_MM, moduleMm } from './qr-size.ts';
import { line, paragraph, type Setting, settingFor, span } from './setting.ts';
import { type StepScene, stepBlock } from './step-block.ts';
import { temporaryNumbers } from './temporary.ts';

export interface CardSide {
  /** Counted from 1. */
  readonly number: number;
  readonly header: PlacedBlock;
  readonly footer: PlacedBlock;
  /** The line of the foot that says which copy it is: `stampCopy` exchanges it. */
  readonly copy: PlacedBlock;
  readonly body: readonly PlacedBlock[];
  /** Change bars in the outer margin. */
  readonly bars?: PlacedBlock;
  /** Painted before everything else. */
  readonly ground?: PlacedBlock;
}

export interface CardLayout {
  /** Stem of the file: `OF-204-LARGE`. */
  readonly name: string;
  readonly doc: string;
  readonly title: string;
  readonly variantKey: string;
  readonly variantLabel: string;
  readonly machineName: string;
  readonly rev: string;
  /** `2026-03-02` */
  readonly effective: string;
  readonly fingerprint: string;
  /** Upper-case address of the card's page. */
  readonly address: string;
  /** Paper in pt. */
  readonly width: number;
  readonly height: number;
  readonly sides: readonly CardSide[];
  /** Absent when it is in force. */
  readonly standing?: Standing;
  /** Numbers of the temporary changes that it shows, sorted; absent without one. */
  readonly temporary?: readonly string[];
}

/** Space between the header's rule and the text, and above the foot's rule. */
const HEAD_GAP = mm(4);
const FOOT_GAP = mm(3);
const STEP_GAP = mm(5);
const STAGE_GAP = mm(7);

/** All cards, in the order of documents and variants. */
export function layoutCards(shop: ResolvedShop, faces: Faces, report: Report): readonly CardLayout[] {
  return shop.documents.flatMap((document) =>
    document.variants.map((variant) => layoutCard(shop, document, variant, faces, report)),
  );
}

export function layoutCard(
  shop: ResolvedShop,
  document: Document,
  variant: Variant,
  faces: Faces,
  report: Report,
): CardLayout {
  const format = formatOf(shop.info.cardFormat);
  const setting = settingFor(faces, format, document.range, report);
  checkAddress(variant.address, document.range, report);
  const facts: FrameFacts = { shop, document, variant };
  const header = headerBlock(setting, facts, 1, 1);
  const foot = footOf(setting, facts, 1, 1);
  const chunks = [
    ...frontChunks(setting, shop, document, variant),
    ...stageChunks(shop, faces, format, variant, report),
    endChunk(setting, document),
  ];
  const top = format.top + header.height + HEAD_GAP;
  const room = format.height - format.bottom - foot.block.height - FOOT_GAP - top;
  const bodies = paginate(chunks, room, report);
  const sides = bodies.map((body, i): CardSide => {
    const number = i + 1;
    const left = leftOf(format, number);
    const own = bodies.length === 1 ? foot : footOf(setting, facts, number, bodies.length);
    const footTop = format.height - format.bottom - own.block.height;
    const placed = body.map((b) => ({ ...b, x: left, y: top + b.y }));
    const bars = barsOfSide(format, number, placed);
    return {
      number,
      header: {
        x: left,
        y: format.top,
        block: number === 1 && bodies.length === 1 ? header : headerBlock(setting, facts, number, bodies.length),
      },
      footer: { x: left, y: footTop, block: own.block },
      copy: { x: left, y: footTop + own.copyTop, block: own.copy },
      body: placed,
      ...(bars === undefined ? {} : { bars }),
      ...(document.standing === 'draft' ? { ground: draftMark(format, number) } : {}),
    };
  });
  const temporary = temporaryNumbers(variant);
  return {
    name: variant.cardName,
    doc: document.doc,
    title: document.title,
    variantKey: variant.key,
    variantLabel: variant.label,
    machineName: document.machineName,
    rev: document.revision.rev,
    effective: document.revision.effective,
    fingerprint: variant.fingerprint,
    address: variant.address,
    width: format.width,
    height: format.height,
    sides,
    ...(document.standing === undefined ? {} : { standing: document.standing }),
    ...(temporary.length === 0 ? {} : { temporary }),
  };
}

function checkAddress(address: string, range: Range, report: Report): void {
  const size = moduleMm(address);
  if (size >= LEAST_MODULE_MM - 1e-9) return;
  report('CRD004', range, `\`${address}\` has ${address.length} characters, and a card's symbol holds 67`, {
    hint: 'serve the site at a shorter address, or shorten the names of the variants',
  });
}

function stageChunks(shop: ResolvedShop, faces: Faces, format: Format, variant: Variant, report: Report): Chunk[] {
  const toolNames = new Map(shop.tools.map((t) => [t.id, t.name]));
  const joints = new Map(variant.joints.map((j) => [j.id, j]));
  const scene: StepScene = {
    joint: (id) => joints.get(id),
    tool: (id) => toolNames.get(id) ?? id,
    person: (id) => personName(shop, id),
  };
  return variant.stages.flatMap((stage) => {
    const head: Chunk = {
      block: stageHeading(settingFor(faces, format, stage.range, report), stage),
      gap: STAGE_GAP,
      keepWithNext: true,
      bookmark: `Stage ${stage.number}: ${stage.title}`,
      what: `the heading of stage ${stage.number}`,
      range: stage.range,
    };
    const steps = stage.steps.map(
      (step, i): Chunk => ({
        block: stepBlock(settingFor(faces, format, step.range, report), step, scene),
        gap: i === 0 ? mm(3) : STEP_GAP,
        keepWithNext: false,
        what: `step ${step.number}`,
        range: step.range,
      }),
    );
    return [head, ...steps];
  });
}

/** The stage's number in a filled field, its title, its working time at the right, a rule below; the introduction under it. */
function stageHeading(setting: Setting, stage: Stage): Block {
  const { format } = setting;
  const width = textWidthOf(format);
  const size = format.type.stage;
  const lead = mm(6.5);
  const field = mm(18);
  const indent = field + mm(3);
  const timeWidth = stage.time === undefined ? 0 : mm(26);
  const number = line(setting, [span(`Stage\u00a0${stage.number}`, format.type.table, 'bold', 'paper')], field, {
    align: 'center',
    lead: mm(6),
    tag: 'H2',
  });
  const title = paragraph(setting, [span(stage.title, size, 'bold')], width - indent - timeWidth, { lead, tag: 'H2' });
  const time =
    stage.time === undefined
      ? undefined
      : line(setting, [span(duration(stage.time.si), format.type.small)], timeWidth, { align: 'right', lead });
  const headHeight = Math.max(title.height, lead);
  const head: Block = {
    height: headHeight + mm(0.8),
    decoration: [
      { kind: 'rect', x: 0, y: 0, width: field, height: headHeight + mm(0.4), fill: 'ink' },
      { kind: 'line', x1: 0, y1: headHeight + mm(0.4), x2: width, y2: headHeight + mm(0.4), width: 1, ink: 'ink' },
    ],
    nodes: [
      node(
        'H2',
        [...number.nodes, ...shift(title, indent, 0).nodes].flatMap((n) => n.items),
      ),
      ...(time === undefined ? [] : shift(time, width - timeWidth, 0).nodes),
    ],
  };
  const intro = stage.intro === undefined ? [] : [introBlock(setting, stage.intro, width)];
  return stack([head, ...intro], mm(1.6));
}

function introBlock(setting: Setting, intro: NonNullable<Stage['intro']>, width: number): Block {
  const { format } = setting;
  return shift(setProse(setting, intro, format.type.table, width - format.gutter), format.gutter, 0);
}

/** The last words of a card: who did the work and who took it over. */
function endChunk(setting: Setting, document: Document): Chunk {
  const width = textWidthOf(setting.format);
  const block = stack([
    paragraph(
      setting,
      [span('All steps ticked, all blanks filled, tools and parts counted.', setting.format.type.table, 'semibold')],
      width,
    ),
    lineBlanks(
      setting,
      [
        { label: 'Work done by', share: 3 },
        { label: 'Date', share: 2 },
      ],
      width,
    ),
    lineBlanks(
      setting,
      [
        { label: 'Taken over by', share: 3 },
        { label: 'Date', share: 2 },
      ],
      width,
    ),
  ]);
  const lined: Block = {
    ...block,
    decoration: [
      ...block.decoration,
      { kind: 'line', x1: 0, y1: -mm(2), x2: width, y2: -mm(2), width: 0.75, ink: 'rule' },
    ],
  };
  return { block: lined, gap: STAGE_GAP, keepWithNext: false, what: 'the sign-off', range: document.range };
}
