/** A shop folder as checked content: every register, machine, stage and procedure with the places it was read from. */

import type { z } from 'zod';
import { didYouMean, type Range, type Report } from '../diagnostics/index.ts';
import { type Node, parseYaml, type SourceFile } from '../source/index.ts';
import { type At, type Entry, entries, field } from './at.ts';
import type { Salvaged } from './salvage.ts';
import { readShape } from './shape-faults.ts';
import { feedbackShape, outsideShape, temporaryShape } from './shapes/control.ts';
import { machineShape } from './shapes/machine.ts';
import { procedureShape, sharedStageShape } from './shapes/procedure.ts';
import { benchesShape, consumablesShape, peopleShape, shopShape, toolsShape } from './shapes/registers.ts';
import { statedTableShape } from './shapes/torque-table.ts';

export type ShopContent = z.output<typeof shopShape>;
export type PersonContent = z.output<typeof peopleShape>[string];
export type BenchContent = z.output<typeof benchesShape>[string];
export type ToolContent = z.output<typeof toolsShape>[string];
export type ConsumableContent = z.output<typeof consumablesShape>[string];
export type OutsideContent = z.output<typeof outsideShape>[string];
export type TemporaryContent = z.output<typeof temporaryShape>[string];
export type FeedbackContent = z.output<typeof feedbackShape>[string];
export type MachineContent = z.output<typeof machineShape>;
export type SharedStageContent = z.output<typeof sharedStageShape>;
export type ProcedureContent = z.output<typeof procedureShape>;
export type StatedTableContent = z.output<typeof statedTableShape>;

/** A register or folder of entries by id. */
export interface Register<T> {
  readonly entries: ReadonlyMap<string, Entry<T>>;
  /** Ids that are there but could not be read: their faults are reported, and references to them are not. */
  readonly faulty: ReadonlySet<string>;
  /** Something that may hold any id could not be read, so that none can be said to be missing. */
  readonly unread: boolean;
  /** File or folder as shown to the author. */
  readonly file: string;
}

export interface Content {
  readonly shop: At<ShopContent> | undefined;
  readonly people: Register<PersonContent>;
  readonly benches: Register<BenchContent>;
  readonly tools: Register<ToolContent>;
  readonly consumables: Register<ConsumableContent>;
  readonly machines: Register<MachineContent>;
  readonly stages: Register<SharedStageContent>;
  readonly procedures: Register<ProcedureContent>;
  /** Outside documents, temporary changes, feedback: may be left out. */
  readonly outside: Register<OutsideContent>;
  readonly temporary: Register<TemporaryContent>;
  readonly feedback: Register<FeedbackContent>;
  /** Torque tables typed from manuals. */
  readonly tables: Register<StatedTableContent>;
  readonly textOf: (file: string) => string | undefined;
  /** Nothing was reported and every file was read: what is not used anywhere is not used. */
  readonly sound: boolean;
}

const REGISTERS = [
  'shop.yaml',
  'people.yaml',
  'benches.yaml',
  'tools.yaml',
  'consumables.yaml',
  'outside.yaml',
  'temporary.yaml',
  'feedback.yaml',
] as const;
/** A shop may do without these. */
const OPTIONAL: ReadonlySet<string> = new Set(['outside.yaml', 'temporary.yaml', 'feedback.yaml']);
const FOLDERS = ['machines', 'procedures', 'stages', 'tables'] as const;

/** Parses and checks the shapes of all files. shown: the shop folder's name in diagnostics. */
export function readContent(files: readonly SourceFile[], shown: string, tell: Report): Content {
  let sound = files.every((f) => f.unread !== true);
  const report: Report = (...fault) => {
    sound = false;
    tell(...fault);
  };
  const texts = new Map(files.filter((f) => f.unread !== true).map((f) => [f.file, f.text]));
  const byPath = new Map(files.map((f) => [f.relative.replace(/\.yml$/i, '.yaml'), f]));
  for (const f of files) {
    const [folder, name, ...rest] = f.relative.split('/');
    const known =
      name === undefined
        ? isRegister(folder)
        : rest.length === 0 && (FOLDERS as readonly string[]).includes(folder ?? '');
    if (known || f.unread === true) continue;
    const names = name === undefined ? REGISTERS : FOLDERS;
    report('SRC012', { file: f.file, start: 0, end: 0 }, `\`${f.relative}\` is not a place where content is read`, {
      hint:
        didYouMean(folder ?? '', names) ??
        `content lies in ${REGISTERS.join(', ')} and in ${FOLDERS.map((d) => `${d}/`).join(', ')}`,
    });
  }

  const parsed = new Map<string, Node | undefined>();
  const tree = (f: SourceFile): Node | undefined => {
    if (!parsed.has(f.file)) parsed.set(f.file, f.unread === true ? undefined : parseYaml(f, report));
    return parsed.get(f.file);
  };

  function one<S extends z.ZodType>(name: (typeof REGISTERS)[number], shape: S): Salvaged<z.output<S>> | undefined {
    const f = byPath.get(name);
    if (f === undefined) {
      // A folder without any content is one fault, reported where it was read.
      if (files.length === 0 || OPTIONAL.has(name)) return undefined;
      report('SRC001', { file: `${shown}/${name}`, start: 0, end: 0 }, `the shop has no \`${name}\``, {
        hint: `add \`${name}\` to the shop folder`,
      });
      return undefined;
    }
    const node = tree(f);
    return node === undefined ? undefined : readShape(shape, node, report);
  }

  function register<T>(name: (typeof REGISTERS)[number], shape: z.ZodType<Record<string, T>>): Register<T> {
    const read = one(name, shape);
    const list = read === undefined ? [] : entries(read.at as At<Readonly<Record<string, T>>>);
    return {
      entries: new Map(list.map((e) => [e.key, e])),
      faulty: read?.dropped ?? new Set(),
      unread: read === undefined && (byPath.has(name) || !OPTIONAL.has(name)),
      file: `${shown}/${name}`,
    };
  }

  function folder<T>(
    name: (typeof FOLDERS)[number],
    shape: z.ZodType<T>,
    idOf: (value: T) => string,
    idKey: keyof T & string,
  ): Register<T> {
    const found = new Map<string, Entry<T>>();
    const faulty = new Set<string>();
    let unread = false;
    for (const f of files.filter((x) => x.relative.startsWith(`${name}/`) && x.relative.split('/').length === 2)) {
      const node = tree(f);
      const read = node === undefined ? undefined : readShape(shape, node, report);
      if (read === undefined) {
        // The file cannot be read, but what it calls itself may be known: references to it are not at fault.
        const id = new RegExp(`^${idKey}:\\s*["']?([\\w-]+)`, 'm').exec(f.text)?.[1];
        if (id === undefined) unread = true;
        else faulty.add(id);
        continue;
      }
      const { at, dropped } = read;
      const key = idOf(at.value);
      const keyRange = field(at as At<T & object>, idKey).node.range;
      const first = found.get(key);
      if (first !== undefined) {
        report('REF011', keyRange, `\`${key}\` is already taken`, {
          related: [{ range: first.keyRange, message: `\`${key}\` first stands here` }],
          hint: 'give one of the two another number',
        });
        continue;
      }
      found.set(key, { key, keyRange, value: at.value, node: at.node, dropped });
    }
    return { entries: found, faulty, unread, file: `${shown}/${name}/` };
  }

  const content: Omit<Content, 'sound'> = {
    shop: one('shop.yaml', shopShape)?.at,
    people: register('people.yaml', peopleShape),
    benches: register('benches.yaml', benchesShape),
    tools: register('tools.yaml', toolsShape),
    consumables: register('consumables.yaml', consumablesShape),
    outside: register('outside.yaml', outsideShape),
    temporary: register('temporary.yaml', temporaryShape),
    feedback: register('feedback.yaml', feedbackShape),
    machines: folder<MachineContent>('machines', machineShape, (m) => m.id, 'id'),
    stages: folder<SharedStageContent>('stages', sharedStageShape, (s) => s.id, 'id'),
    procedures: folder<ProcedureContent>('procedures', procedureShape, (p) => p.doc, 'doc'),
    tables: folder<StatedTableContent>('tables', statedTableShape, (t) => t.id, 'id'),
    textOf: (file) => texts.get(file),
  };
  const { procedures } = content;
  if (files.length > 0 && procedures.entries.size + procedures.faulty.size === 0 && !procedures.unread) {
    const range: Range = { file: procedures.file, start: 0, end: 0 };
    report('SRC001', range, 'the shop has no procedure', {
      hint: `put one file a procedure into \`${procedures.file}\``,
    });
  }
  return { ...content, sound };
}

function isRegister(name: string | undefined): boolean {
  return (REGISTERS as readonly string[]).includes((name ?? '').replace(/\.yml$/i, '.yaml'));
}
