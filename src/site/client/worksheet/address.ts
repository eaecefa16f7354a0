/** The worksheet in the address of its page: `?thread=M20&n=12&circle=240+mm`. */

import type { Fault } from './fault.ts';
import {
  FIELD_LIST,
  FIELDS,
  type Field,
  type FieldKey,
  INITIAL,
  type Inputs,
  inputsFrom,
  isAsked,
  isFieldKey,
} from './fields.ts';

/** Longest text that a field takes from an address; listed points need more room. Beyond it an address is a slip. */
const LONGEST = 80;
const LONGEST_LINES = 8000;
/** Unknown names shown; an address may hold any number of them. */
const MOST_UNKNOWN = 3;

/** The query of the address, without `?`: values as typed, those of a fresh worksheet and of other patterns left out. */
export function encodeInputs(inputs: Inputs): string {
  const query = new URLSearchParams();
  for (const { key } of FIELD_LIST) {
    if (isAsked(key, inputs.pattern) && inputs[key] !== INITIAL[key]) query.append(key, spelt(key, inputs[key]));
  }
  // Commas and slashes may stand in a query as they are, and an address is read by people.
  return query.toString().replaceAll('%2C', ',').replaceAll('%2F', '/');
}

/** `N·m` is spelt with a point in the address, where the raised one would turn into figures. */
function spelt(key: FieldKey, text: string): string {
  return key === 'name' ? text : text.replaceAll('·', '.');
}

function unspelt(key: FieldKey, text: string): string {
  return key === 'name' ? text : text.replace(/(?<=\p{L})\.(?=\p{L})/gu, '·');
}

/** What an address says, and what of it cannot be taken: an unknown name or choice, a value twice or without end. */
export interface Decoded {
  readonly inputs: Inputs;
  readonly faults: readonly Fault[];
}

/** Reads a query with or without `?`. Never throws; what cannot be taken keeps the value of a fresh worksheet. */
export function decodeInputs(query: string): Decoded {
  const params = new URLSearchParams(query);
  const faults: Fault[] = [];
  const inputs = inputsFrom((key) => {
    const [text, ...more] = params.getAll(key);
    if (more.length > 0) {
      faults.push({
        field: key,
        problem: `the address gives \`${FIELDS[key].label}\` more than once`,
        hint: 'the first is used',
      });
    }
    return text === undefined ? INITIAL[key] : take(key, unspelt(key, text), faults);
  });
  const unknown = [...new Set(params.keys())].filter((key) => !isFieldKey(key));
  for (const key of unknown.slice(0, MOST_UNKNOWN)) {
    faults.push({
      problem: `the address holds \`${short(key)}\`, which is no field of the worksheet`,
      hint: 'it is left out',
    });
  }
  return { inputs, faults };
}

function take(key: FieldKey, text: string, faults: Fault[]): string {
  const field: Field = FIELDS[key];
  const longest = field.kind === 'lines' ? LONGEST_LINES : LONGEST;
  if (text.length > longest) {
    faults.push({
      field: key,
      problem: `the address holds ${text.length} characters for \`${field.label}\``,
      hint: `at most ${longest} are taken; \`${INITIAL[key]}\` stands instead`,
    });
    return INITIAL[key];
  }
  if (field.options !== undefined && !field.options.some((o) => o.id === text)) {
    faults.push({
      field: key,
      problem: `\`${short(text)}\` is no choice for \`${field.label}\``,
      hint: `\`${INITIAL[key]}\` stands instead`,
    });
    return INITIAL[key];
  }
  return text;
}

function short(text: string): string {
  return text.length <= 40 ? text : `${text.slice(0, 40)}…`;
}
