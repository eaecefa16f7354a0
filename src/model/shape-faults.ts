/** Turns what zod finds wrong into diagnostics at the author's place, in the author's words. */

import { z } from 'zod';
import { type Code, didYouMean, nearest, type Report } from '../diagnostics/index.ts';
import { entryOf, type Node, nodeAt, plain } from '../source/index.ts';
import { flatIssues, type Issue, type PlacedIssue } from './issues.ts';
import { type Salvaged, salvage } from './salvage.ts';
import { DATE_PATTERN, DOC_PATTERN, ID_PATTERN, REVISION_PATTERN } from './shapes/common.ts';
import { unitHint } from './unit-hint.ts';

/** The tree as a value of the shape. Every fault is reported; what is sound of a faulty tree is read all the same. */
export function readShape<S extends z.ZodType>(
  shape: S,
  node: Node,
  report: Report,
): Salvaged<z.output<S>> | undefined {
  const result = shape.safeParse(plain(node));
  if (result.success) return { at: { value: result.data, node }, dropped: new Set() };
  const issues = flatIssues(result.error.issues, node);
  const mistyped = mistypedKeys(shape, issues);
  for (const { issue, path } of issues) {
    // The missing key stands there under a slip of the hand, which has its own report.
    if (mistyped.has(JSON.stringify(path))) continue;
    reportIssue(shape, node, issue, path, report);
  }
  return salvage(shape, node);
}

/** Paths of the keys that unknown ones were probably meant to be. */
function mistypedKeys(shape: z.ZodType, issues: readonly PlacedIssue[]): ReadonlySet<string> {
  const found = new Set<string>();
  for (const { issue, path } of issues) {
    if (issue.code !== 'unrecognized_keys') continue;
    const known = knownKeys(shapeAt(shape, path));
    for (const key of issue.keys) {
      const meant = nearest(key, known);
      if (meant !== undefined) found.add(JSON.stringify([...path, meant]));
    }
  }
  return found;
}

function reportIssue(shape: z.ZodType, root: Node, issue: Issue, path: readonly PropertyKey[], report: Report): void {
  const node = nodeAt(root, path);
  const owner = shapeAt(shape, path);
  const key = String(path.at(-1) ?? '');
  const place = describe(path);
  if ((issue.code === 'invalid_type' || issue.code === 'invalid_value') && valueMissing(root, path)) {
    reportMissing(root, path, owner, report);
    return;
  }
  switch (issue.code) {
    case 'unrecognized_keys': {
      const known = knownKeys(owner);
      for (const unknown of issue.keys) {
        const range = entryOf(node, unknown)?.keyRange ?? node.range;
        report('FLD001', range, `\`${unknown}\` is not a key of ${describe(path)}`, {
          hint: didYouMean(unknown, known) ?? `known keys: ${known.map((k) => `\`${k}\``).join(', ')}`,
        });
      }
      return;
    }
    case 'invalid_type': {
      const found = node.kind === 'scalar' ? node.value : node.kind;
      const isQuantity = /with its unit/.test(descriptionOf(owner) ?? '');
      if (isQuantity && typeof found === 'number') {
        report('FLD005', node.range, `${asWritten(path, found)} has no unit`, {
          hint: unitHint(found, descriptionOf(owner) ?? ''),
        });
        return;
      }
      if (/^Limit with unit/.test(descriptionOf(owner) ?? '') && typeof found === 'number') {
        report('FLD006', node.range, `${asWritten(path, found)} is neither a range nor has a unit`, {
          hint: `write it as its source has it, with its unit: \`at most ${found} …\`, \`at least ${found} …\` or \`… to ${found} …\``,
        });
        return;
      }
      report('FLD003', node.range, `${place} is ${kindOf(found)}, and ${wanted(issue.expected)} is wanted`, {
        hint:
          typeof found === 'number' && issue.expected === 'string'
            ? `put it in quotes: \`"${found}"\``
            : issue.expected === 'array' && node.kind === 'scalar'
              ? `write a list: \`[${String(found)}]\``
              : writtenAs(issue.expected, owner),
      });
      return;
    }
    case 'invalid_value': {
      const values = issue.values.map(String);
      const found = node.kind === 'scalar' ? String(node.value) : node.kind;
      report('FLD004', node.range, `\`${found}\` is not a value of ${place}`, {
        hint:
          (Number.isNaN(Number(found)) ? didYouMean(found, values) : undefined) ??
          `one of: ${values.map((v) => `\`${v}\``).join(', ')}`,
      });
      return;
    }
    case 'invalid_key': {
      const range = entryOf(nodeAt(root, path.slice(0, -1)), key)?.keyRange ?? node.range;
      report('FLD007', range, `\`${key}\` cannot serve as an id`, { hint: idHint(undefined, key) });
      return;
    }
    default: {
      const found = node.kind === 'scalar' ? String(node.value) : '';
      const [code, message, hint] = patternFault(issue, found, place, descriptionOf(owner));
      report(code, node.range, message, { hint });
    }
  }
}

function reportMissing(root: Node, path: readonly PropertyKey[], owner: readonly z.ZodType[], report: Report): void {
  const key = String(path.at(-1) ?? '');
  const holder = nodeAt(root, path.slice(0, -1));
  const known = entryOf(holder, key);
  if (known !== undefined) {
    report('FLD003', known.keyRange, `\`${key}\` has no value`, {
      hint: `write it after the colon${formOf(owner)}`,
    });
    return;
  }
  const at = holder.kind === 'map' && holder.entries[0] !== undefined ? holder.entries[0].keyRange : holder.range;
  report('FLD002', at, `${describe(path.slice(0, -1))} has no \`${key}\``, {
    hint: `add \`${key}:\` here${formOf(owner)}`,
  });
}

/** description: `Person, from people.yaml: lower-case letters, digits and hyphens`. */
function idHint(description: string | undefined, found: string): string {
  const of = description === undefined || /^Identifier/.test(description) ? '' : description.split(':')[0];
  const rule = 'lower-case letters, digits and single hyphens, at most 48 characters';
  const example = found
    .toLowerCase()
    .replaceAll(/[^a-z0-9]+/g, '-')
    .replaceAll(/^-|-$/g, '');
  const such = example === '' || example.length > 48 ? '' : `, such as \`${example}\``;
  return of === '' || of === undefined ? `use ${rule}${such}` : `write the id of a ${lowered(of)}: ${rule}${such}`;
}

function patternFault(
  issue: Issue,
  found: string,
  place: string,
  description: string | undefined,
): [Code, string, string] {
  const wantedForm = `write it as the field is meant${description === undefined ? '' : `: ${lowered(description)}`}`;
  const shown = found.length > 60 ? `${found.slice(0, 57)}...` : found;
  if (issue.code === 'invalid_format' && issue.format === 'regex') {
    const pattern = issue.pattern ?? '';
    if (pattern === String(ID_PATTERN))
      return ['FLD007', `\`${shown}\` cannot serve as an id`, idHint(description, found)];
    if (pattern === String(DOC_PATTERN))
      return [
        'FLD007',
        `\`${shown}\` is not a document number`,
        'use capitals, digits and single hyphens, such as `OF-204`',
      ];
    if (pattern === String(DATE_PATTERN))
      return ['FLD008', `\`${shown}\` is not a date`, 'write it as YYYY-MM-DD: year, month, day'];
    if (pattern === String(REVISION_PATTERN))
      return ['FLD007', `\`${shown}\` is not a revision`, 'use one to three capitals or digits, such as `B`'];
    return ['FLD004', `\`${shown}\` does not fit ${place}`, wantedForm];
  }
  if (issue.code === 'too_big')
    return [
      'FLD004',
      `${place} is too ${issue.origin === 'string' ? 'long' : 'large'}: at most ${issue.maximum}${issue.origin === 'string' ? ' characters' : ''}`,
      issue.origin === 'string' ? `say it in ${issue.maximum} characters or fewer` : `write ${issue.maximum} or less`,
    ];
  if (issue.code === 'too_small') {
    const empty = issue.origin === 'string' || issue.origin === 'array';
    return [
      'FLD004',
      empty ? `${place} is empty` : `${place} is too small: at least ${issue.minimum}`,
      empty
        ? `write it after the colon${description === undefined ? '' : ` (${lowered(description)})`}`
        : `write ${issue.minimum} or more`,
    ];
  }
  return ['FLD004', `${place} does not fit: ${issue.message.toLowerCase()}`, wantedForm];
}

function valueMissing(root: Node, path: readonly PropertyKey[]): boolean {
  if (path.length === 0) return false;
  const holder = nodeAt(root, path.slice(0, -1));
  const last = path.at(-1);
  if (holder.kind !== 'map') return false;
  const entry = entryOf(holder, String(last));
  return entry === undefined || (entry.value.kind === 'scalar' && entry.value.value === null);
}

/** The shapes that may stand at `path`; several where a union stands on the way. */
function shapeAt(shape: z.ZodType, path: readonly PropertyKey[]): readonly z.ZodType[] {
  let here: readonly z.ZodType[] = unwrap(shape);
  for (const step of path) {
    here = here.flatMap((s) => {
      if (s instanceof z.ZodObject) {
        const next = s.shape[String(step)] as z.ZodType | undefined;
        return next === undefined ? [] : unwrap(next);
      }
      if (s instanceof z.ZodRecord) return unwrap(s.valueType as z.ZodType);
      if (s instanceof z.ZodArray) return unwrap(s.element as z.ZodType);
      if (s instanceof z.ZodTuple) return unwrap((s.def.items[Number(step)] ?? s.def.items[0]) as z.ZodType);
      return [];
    });
  }
  return here;
}

function unwrap(shape: z.ZodType): readonly z.ZodType[] {
  if (shape instanceof z.ZodOptional || shape instanceof z.ZodDefault) {
    const inner = unwrap(shape.unwrap() as z.ZodType);
    const description = z.globalRegistry.get(shape)?.description;
    // A description is often set on the optional wrapper; it must not be lost with it.
    if (description !== undefined) for (const s of inner) if (!described.has(s)) described.set(s, description);
    return inner;
  }
  if (shape instanceof z.ZodUnion) return (shape.options as z.ZodType[]).flatMap(unwrap);
  return [shape];
}

const described = new WeakMap<z.ZodType, string>();

function descriptionOf(shapes: readonly z.ZodType[]): string | undefined {
  for (const s of shapes) {
    const text = described.get(s) ?? z.globalRegistry.get(s)?.description;
    if (text !== undefined) return text;
  }
  return undefined;
}

function knownKeys(shapes: readonly z.ZodType[]): readonly string[] {
  return [...new Set(shapes.flatMap((s) => (s instanceof z.ZodObject ? Object.keys(s.shape) : [])))];
}

function asWritten(path: readonly PropertyKey[], found: number): string {
  const last = path.at(-1);
  return typeof last === 'number' ? `\`${found}\` in \`${String(path.at(-2))}\`` : `\`${String(last)}: ${found}\``;
}

/** `write it as a group of keys (card format) such as `format``. */
function writtenAs(expected: string, shapes: readonly z.ZodType[]): string {
  const keys = expected === 'object' ? knownKeys(shapes).slice(0, 4) : [];
  const description = descriptionOf(shapes);
  return [
    `write it as ${wanted(expected)}`,
    description === undefined ? '' : ` (${lowered(description)})`,
    keys.length === 0 ? '' : ` such as ${keys.map((k) => `\`${k}\``).join(', ')}`,
  ].join('');
}

/** What may stand at a place: its description, its values, the keys of a map, or its kind. */
function formOf(shapes: readonly z.ZodType[]): string {
  const description = descriptionOf(shapes);
  if (description !== undefined) return ` (${lowered(description)})`;
  const values = shapes.flatMap((s) => (s instanceof z.ZodEnum ? s.options : [])).map((v) => `\`${v}\``);
  if (values.length > 0) return `, one of: ${values.join(', ')}`;
  const keys = knownKeys(shapes).map((k) => `\`${k}\``);
  if (keys.length > 0) return `, a group of keys such as ${keys.slice(0, 4).join(', ')}`;
  const kinds = new Set(shapes.map((s) => wanted(s.def.type)));
  return kinds.size === 0 ? '' : ` (${[...kinds].join(' or ')})`;
}

/** A description within a sentence; `YAML` and `TOP` stay as they are. */
function lowered(description: string): string {
  return /^[A-Z][a-z']/.test(description) ? description.charAt(0).toLowerCase() + description.slice(1) : description;
}

/** `entry 4 of `steps``, `joint`, `this file`: the nearest thing around a fault that the author would name. */
function describe(path: readonly PropertyKey[]): string {
  const last = path.at(-1);
  if (last === undefined) return 'this file';
  return typeof last === 'number'
    ? `entry ${last + 1} of \`${String(path.at(-2) ?? 'this file')}\``
    : `\`${String(last)}\``;
}

function kindOf(value: unknown): string {
  if (value === 'map') return 'a group of keys';
  if (value === 'sequence') return 'a list';
  if (value === null) return 'empty';
  return typeof value === 'string'
    ? 'text'
    : typeof value === 'number'
      ? `the number ${value}`
      : typeof value === 'boolean'
        ? `\`${value}\``
        : String(value);
}

function wanted(expected: string): string {
  const names: Readonly<Record<string, string>> = {
    string: 'text',
    number: 'a number',
    int: 'a whole number',
    object: 'a group of keys',
    record: 'a group of keys',
    array: 'a list',
    tuple: 'a list',
    boolean: '`true` or `false`',
  };
  return names[expected] ?? expected;
}
