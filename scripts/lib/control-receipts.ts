/** A file of receipts: read with the project's own YAML reader, so that every fault has its line and column. */

import { readFileSync } from 'node:fs';
import { z } from 'zod';
import { type ActFacts, ControlFault, type GivenReceipt, receiptAct } from '../../src/control/index.ts';
import { collector, type Diagnostic, placer, printable, renderFull } from '../../src/diagnostics/index.ts';
import { readShape } from '../../src/model/shape-faults.ts';
import { benchId, date, docNumber, personId } from '../../src/model/shapes/common.ts';
import { CATALOGUE } from '../../src/rules/index.ts';
import { type Node, parseYaml } from '../../src/source/index.ts';
import { UsageFault } from './faults.ts';
import { typedPath } from './options.ts';

const shape = z.array(
  z.strictObject({
    notice: docNumber.meta({ description: 'Number of the change notice, such as CN-17' }),
    bench: benchId.optional(),
    by: personId,
    on: date,
  }),
);

/** A receipt with the place of its row, when it stands in a file. */
export interface ReceiptRow {
  readonly given: GivenReceipt;
  /** `receipts.yaml:3:3` */
  readonly place?: string;
}

export interface ReceiptFile {
  readonly rows: readonly ReceiptRow[];
  /** What cannot be read, ready to print; empty when all can. */
  readonly faults: string;
  readonly faultCount: number;
}

/** Rows that cannot be read are told and left out: the others are judged all the same. given: the path as typed. */
export function readReceipts(given: string): ReceiptFile {
  const text = readText(given);
  const { report, list } = collector(CATALOGUE);
  const node = parseYaml({ file: given, relative: given, text }, report);
  const read = node === undefined ? undefined : readShape(shape, node, report);
  const textOf = (): string => text;
  const place = placer(textOf);
  const faulty = list();
  const nodes = read?.at.node.kind === 'sequence' ? read.at.node.items : [];
  const rows = (read?.at.value ?? []).flatMap((row, i): readonly ReceiptRow[] => {
    const at = nodes[i];
    if (at === undefined || faulty.some((d) => isWithin(d, at))) return [];
    const { line, column } = place(at.range);
    const { bench, ...rest } = row;
    return [{ given: { ...rest, ...(bench === undefined ? {} : { bench }) }, place: `${given}:${line}:${column}` }];
  });
  return { rows, faults: faulty.length === 0 ? '' : `${renderFull(faulty, textOf)}\n`, faultCount: faulty.length };
}

function isWithin({ range }: Diagnostic, node: Node): boolean {
  return range.start >= node.range.start && range.start <= node.range.end;
}

function readText(given: string): string {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(readFileSync(typedPath(given)));
  } catch (cause) {
    throw new UsageFault(
      cause instanceof TypeError ? `\`${given}\` is not UTF-8 text` : `\`${given}\` is not there or cannot be read`,
      'name a YAML file with rows such as `- { notice: CN-17, bench: pumps, by: ada, on: 2026-03-02 }`',
    );
  }
}

type ReceiptAct = ReturnType<typeof receiptAct>;

/** Judges every row. Acts only when all hold; else the faults of all, in words, each with its place. */
export function judgeReceipts(
  facts: ActFacts,
  rows: readonly ReceiptRow[],
): { readonly acts: readonly ReceiptAct[]; readonly faults: readonly string[] } {
  const acts: ReceiptAct[] = [];
  const faults: string[] = [];
  const first = new Map<string, string>();
  for (const { given, place } of rows) {
    try {
      const act = receiptAct(facts, given);
      const key = `${act.notice} ${act.bench}`;
      const before = first.get(key);
      if (before !== undefined) {
        throw new ControlFault(
          `the receipt of ${act.notice} from ${act.bench} stands here a second time; the first is at ${before}`,
          'take one of the two rows out',
        );
      }
      first.set(key, place ?? '');
      acts.push(act);
    } catch (cause) {
      if (!(cause instanceof ControlFault)) throw cause;
      faults.push(
        printable(`fault: ${place === undefined ? '' : `${place}: `}${cause.message}`),
        printable(`  hint: ${cause.hint}`),
      );
    }
  }
  return { acts, faults };
}
