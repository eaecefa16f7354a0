/** Place keeping on a procedure: ticks and blanks kept on this device, numbers that fill the screen, steps found by a search. */

import { markFound } from './mark-found.ts';

/** Storage may be refused (private windows, policies): the page then works without memory. */
function read(key: string): Record<string, string> {
  try {
    const value: unknown = JSON.parse(localStorage.getItem(key) ?? '{}');
    return typeof value === 'object' && value !== null ? (value as Record<string, string>) : {};
  } catch {
    return {};
  }
}

function write(key: string, values: Record<string, string>): void {
  try {
    if (Object.keys(values).length === 0) localStorage.removeItem(key);
    else localStorage.setItem(key, JSON.stringify(values));
  } catch {
    // Nothing is lost but the memory of the ticks.
  }
}

function keepPlace(procedure: HTMLElement): void {
  // The fingerprint changes with the content: ticks of another revision never show up here.
  const key = `ticks-${procedure.dataset['fingerprint'] ?? ''}`;
  const inputs = [...procedure.querySelectorAll<HTMLInputElement>('input[data-keep]')];
  const counter = procedure.querySelector<HTMLElement>('[data-tick-count]');
  const box = procedure.querySelector<HTMLElement>('[data-ticks]');
  const steps = inputs.filter((i) => i.dataset['stepDone'] !== undefined);
  let values = read(key);

  const show = () => {
    for (const input of steps) input.closest('.step')?.classList.toggle('done', input.checked);
    const done = steps.filter((i) => i.checked).length;
    if (counter !== null) counter.textContent = `${done} of ${steps.length} steps ticked.`;
    if (box !== null) box.hidden = Object.keys(values).length === 0;
  };
  for (const input of inputs) {
    const name = input.dataset['keep'] ?? '';
    const kept = values[name];
    if (kept !== undefined) {
      if (input.type === 'checkbox') input.checked = true;
      else input.value = kept;
    }
    input.addEventListener('input', () => {
      const { [name]: _old, ...others } = values;
      const value = input.type === 'checkbox' ? (input.checked ? '1' : '') : input.value;
      values = value === '' ? others : { ...others, [name]: value };
      write(key, values);
      show();
    });
  }
  procedure.querySelector('[data-clear]')?.addEventListener('click', () => {
    values = {};
    write(key, values);
    for (const input of inputs) {
      if (input.type === 'checkbox') input.checked = false;
      else input.value = '';
    }
    show();
  });
  show();
}

/** Shows a torque over the whole screen, to be read from two steps away; any tap or key closes it. */
function fillScreen(main: string, second: string, of: string): void {
  const dialog = document.createElement('dialog');
  dialog.className = 'big-number';
  dialog.setAttribute('aria-label', `${main} ${second}`);
  const close = document.createElement('button');
  close.type = 'button';
  for (const [className, text] of [
    ['of', of],
    ['main', main],
    ['second', second],
  ] as const) {
    const line = document.createElement('span');
    line.className = className;
    line.textContent = text;
    close.append(line);
  }
  close.addEventListener('click', () => dialog.close());
  dialog.addEventListener('close', () => dialog.remove());
  dialog.append(close);
  document.body.append(dialog);
  dialog.showModal();
}

function enlargeNumbers(procedure: HTMLElement): void {
  for (const hero of procedure.querySelectorAll<HTMLElement>('[data-hero]')) {
    const main = hero.querySelector('.hero-main')?.textContent ?? '';
    const second = hero.querySelector('.hero-second')?.textContent ?? '';
    const of = `${hero.closest('.step')?.querySelector('.step-no')?.textContent ?? ''}`;
    const button = document.createElement('button');
    button.type = 'button';
    button.title = 'Fill the screen';
    button.append(...hero.childNodes);
    button.addEventListener('click', () => fillScreen(main, second, of === '' ? '' : `Step ${of}`));
    hero.append(button);
  }
}

function followStages(procedure: HTMLElement): void {
  const list = procedure.querySelector<HTMLDetailsElement>('[data-stages]');
  if (list !== null && matchMedia('(min-width: 1000px)').matches) list.open = true;
  const links = new Map(
    [...procedure.querySelectorAll<HTMLAnchorElement>('.stage-list a')].map((a) => [a.hash.slice(1), a] as const),
  );
  const watcher = new IntersectionObserver(
    (entries) => {
      for (const entry of entries) {
        if (!entry.isIntersecting) continue;
        for (const link of links.values()) link.removeAttribute('aria-current');
        links.get(entry.target.id)?.setAttribute('aria-current', 'step');
      }
    },
    { rootMargin: '-10% 0px -80% 0px' },
  );
  for (const stage of procedure.querySelectorAll('.stage')) watcher.observe(stage);
}

/** Makes a procedure page keep its reader's place. */
export function prepareProcedure(procedure: HTMLElement): void {
  keepPlace(procedure);
  enlargeNumbers(procedure);
  followStages(procedure);
  markFound(procedure);
  window.addEventListener('hashchange', () => markFound(procedure));
}
