/** The form: reads it, fills it, hides what the pattern does not ask for, puts faults under their fields. */

import { el, words } from './dom.ts';
import type { Fault } from './fault.ts';
import { FIELD_LIST, type FieldKey, INITIAL, type Inputs, inputsFrom, isAsked } from './fields.ts';

type Control = HTMLInputElement | HTMLSelectElement | HTMLTextAreaElement;

export class WorksheetForm {
  private readonly controls = new Map<FieldKey, Control>();
  private readonly root: HTMLElement;

  constructor(root: HTMLElement) {
    this.root = root;
    for (const { key } of FIELD_LIST) {
      const control = root.querySelector<Control>(`[name="${key}"]`);
      if (control === null) throw new RangeError(`the form has no field \`${key}\``);
      this.controls.set(key, control);
    }
  }

  /** Every field as typed. */
  read(): Inputs {
    return inputsFrom((key) => this.controls.get(key)?.value ?? INITIAL[key]);
  }

  /** Fills every field and opens each fold that holds something else than a fresh worksheet. */
  fill(inputs: Inputs): void {
    for (const [key, control] of this.controls) control.value = inputs[key];
    for (const fold of this.root.querySelectorAll('details')) {
      const changed = [...this.controls].some(([key, c]) => fold.contains(c) && inputs[key] !== INITIAL[key]);
      if (changed) fold.open = true;
    }
  }

  /** Shows the fields of the pattern and, under each, its first fault. */
  show(inputs: Inputs, faults: readonly Fault[]): void {
    for (const [key, control] of this.controls) {
      const field = control.closest<HTMLElement>('[data-field]');
      const place = field?.querySelector<HTMLElement>('.ws-fault') ?? null;
      if (field === null || place === null) continue;
      field.hidden = !isAsked(key, inputs.pattern);
      const found = faults.find((f) => f.field === key);
      place.hidden = found === undefined;
      place.replaceChildren(...(found === undefined ? [] : sentence(found)));
      if (found === undefined) control.removeAttribute('aria-invalid');
      else control.setAttribute('aria-invalid', 'true');
      const fold = control.closest('details');
      if (found !== undefined && fold !== null) fold.open = true;
    }
  }
}

/** The fault as a sentence and what to do. */
export function sentence({ problem, hint }: Fault): readonly (Node | string)[] {
  return [el('strong', {}, ...words(problem)), ': ', ...words(hint), '.'];
}
