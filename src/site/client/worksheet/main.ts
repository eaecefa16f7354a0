/** Brings the worksheet to life: the form, the address and the results follow each other. */

import { decodeInputs, encodeInputs } from './address.ts';
import { computeWorksheet } from './compute.ts';
import { el, part } from './dom.ts';
import type { Fault } from './fault.ts';
import { INITIAL, type Inputs } from './fields.ts';
import { sentence, WorksheetForm } from './form.ts';
import { showWorksheet } from './show.ts';
import { holesAsText } from './show-pattern.ts';

/** Results follow the last key after this many milliseconds. */
const REST_MS = 100;

function attach(root: HTMLElement): void {
  const form = new WorksheetForm(part(root, 'form'));
  /** Faults of the address stay until the first key: then the fields hold what is meant. */
  let fromAddress: readonly Fault[] = [];
  let waiting: ReturnType<typeof setTimeout> | undefined;
  /** The holes as last shown, to be copied. */
  let places = '';
  const title = document.title;

  const show = (inputs: Inputs): void => {
    const name = inputs.name.trim();
    document.title = name === '' ? title : `${name} · ${title}`;
    const sheet = computeWorksheet(inputs);
    places = sheet.layout === undefined ? '' : holesAsText(sheet.layout);
    part(root, 'copy-holes').toggleAttribute('disabled', places === '');
    const faults = [...fromAddress, ...sheet.faults];
    form.show(inputs, faults);
    part(root, 'faults').replaceChildren(...faultList(faults));
    showWorksheet(root, inputs, { ...sheet, faults });
  };

  const arrive = (): void => {
    const { inputs, faults } = decodeInputs(location.search);
    fromAddress = faults;
    form.fill(inputs);
    show(inputs);
  };

  /** `keepBefore`: the way back leads to what stood here before. */
  const follow = (keepBefore = false): void => {
    fromAddress = [];
    const inputs = form.read();
    const query = encodeInputs(inputs);
    const address = query === '' ? location.pathname : `${location.pathname}?${query}`;
    if (keepBefore) history.pushState(null, '', address);
    else history.replaceState(null, '', address);
    show(inputs);
  };

  const formElement = part(root, 'form');
  formElement.addEventListener('input', () => {
    for (const told of ['copied', 'holes-copied']) part(root, told).textContent = '';
    clearTimeout(waiting);
    waiting = setTimeout(() => follow(), REST_MS);
  });
  formElement.addEventListener('submit', (event) => {
    event.preventDefault();
    clearTimeout(waiting);
    follow();
  });
  part(root, 'copy-holes').addEventListener('click', () => {
    void copy(places, part(root, 'holes-copied'), 'select the table and copy it.');
  });
  part(root, 'start-again').addEventListener('click', () => {
    clearTimeout(waiting);
    follow();
    form.fill(INITIAL);
    follow(true);
  });
  part(root, 'copy-address').addEventListener('click', () => {
    clearTimeout(waiting);
    follow();
    void copy(location.href, part(root, 'copied'), 'copy it from its address line.');
  });
  window.addEventListener('popstate', arrive);
  arrive();
}

/** A clipboard may be refused, and is on pages that are not served over https. */
async function copy(text: string, told: HTMLElement, instead: string): Promise<void> {
  try {
    await navigator.clipboard.writeText(text);
    told.textContent = 'Copied.';
  } catch {
    told.textContent = `The browser refuses: ${instead}`;
  }
}

/** Faults that no field shows, and for the others where they are. */
function faultList(faults: readonly Fault[]): readonly Node[] {
  const general = faults.filter((f) => f.field === undefined);
  return general.map((f) => el('p', { class: 'ws-fault' }, ...sentence(f)));
}

const root = document.querySelector<HTMLElement>('[data-worksheet]');
if (root !== null) attach(root);
