/** The binder audit: started here, marked on each card's page or by hand, its result carried away as a file. */

import { findCards, loadCards } from '../control/cards.ts';
import { el } from '../worksheet/dom.ts';
import { attachCamera } from './camera.ts';
import { compareBinder, type Expected, type Outcome } from './compare.ts';
import { type AuditHead, auditCsv, auditFile, auditJson } from './result.ts';
import { showOthers, showRows, summary } from './show.ts';
import { clearAudit, readAudit, readName, setMark, writeAudit, writeName } from './store.ts';

/** What the page says of the binder. */
interface Binder {
  readonly bench: string;
  readonly benchName: string;
  readonly copy: number;
  readonly asOf: string;
  readonly ledger: string;
  readonly cards: readonly Expected[];
}

function part(root: HTMLElement, name: string): HTMLElement {
  const found = root.querySelector<HTMLElement>(`[data-part="${name}"]`);
  if (found === null) throw new RangeError(`no part ${name}`);
  return found;
}

function input(root: HTMLElement, name: string): HTMLInputElement {
  const found = part(root, name);
  if (!(found instanceof HTMLInputElement)) throw new RangeError(`${name} is no field`);
  return found;
}

/** Hands a file to the browser; nothing is sent anywhere. */
function download(text: string, type: string, name: string): void {
  const address = URL.createObjectURL(new Blob([text], { type }));
  el('a', { href: address, download: name }).click();
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
}

function attach(root: HTMLElement, binder: Binder): void {
  const list = new URL(root.dataset['fingerprints'] ?? '', location.href).href;
  const tell = (words: string) => {
    part(root, 'said').textContent = words;
  };
  const outcome = (): Outcome => compareBinder(binder.cards, readAudit()?.marks ?? {});

  const show = () => {
    const audit = readAudit();
    const runs = audit !== undefined && audit.bench === binder.bench;
    part(root, 'idle').hidden = runs;
    part(root, 'running').hidden = !runs;
    part(root, 'sure').hidden = true;
    part(root, 'elsewhere').hidden = audit === undefined || runs;
    // It would drop the marks of the other bench without a word.
    part(root, 'start').hidden = audit !== undefined && !runs;
    root.classList.toggle('runs', runs);
    if (audit !== undefined && !runs) {
      const link = part(root, 'elsewhere-link');
      link.textContent = `The audit of ${audit.benchName}`;
      // Only an address of this site: what stands in the storage is not trusted further.
      if (URL.canParse(audit.page) && new URL(audit.page).origin === location.origin)
        link.setAttribute('href', audit.page);
    }
    const now = runs ? outcome() : undefined;
    showRows(root, now?.rows);
    part(root, 'summary').textContent = now === undefined ? '' : summary(now);
    showOthers(part(root, 'others'), now?.others ?? [], (path) => {
      setMark(path, undefined);
      show();
    });
  };

  const record = async (text: string): Promise<void> => {
    const typed = text.trim();
    if (typed === '') return;
    const at = new Date().toISOString();
    try {
      const found = findCards(typed, await loadCards(list));
      for (const { path, ...card } of found) setMark(path, { ...card, at });
      if (found.length === 0) {
        const path = typed.slice(0, 80);
        setMark(path, { standing: 'unknown', doc: '', rev: '', label: '', fingerprint: '', at });
      }
      const [first] = found;
      tell(
        first === undefined
          ? `No card of this shop bears “${typed.slice(0, 80)}”.`
          : `${first.doc} ${first.label}: ${first.standing}.`,
      );
      show();
    } catch {
      tell('The list of fingerprints could not be loaded. Try again.');
    }
  };

  const head = (): AuditHead => ({
    bench: binder.bench,
    benchName: binder.benchName,
    copy: binder.copy,
    asOf: binder.asOf,
    ledger: binder.ledger,
    started: readAudit()?.started ?? '',
    made: new Date().toISOString(),
    by: input(root, 'by').value.trim(),
  });
  const carryAway = (ending: 'csv' | 'json') => {
    const made = head();
    if (made.by === '') {
      tell('Give the name of the person who audits first.');
      input(root, 'by').focus();
      return;
    }
    const isCsv = ending === 'csv';
    const text = (isCsv ? auditCsv : auditJson)(made, outcome());
    download(text, isCsv ? 'text/csv;charset=utf-8' : 'application/json', auditFile(made, ending));
    tell('The result is in the downloads of this device.');
  };

  for (const name of ['start', 'start-here'])
    part(root, name).addEventListener('click', () => {
      const page = location.href.replace(/#.*$/u, '');
      const { bench, benchName } = binder;
      const kept = writeAudit({ bench, benchName, started: new Date().toISOString(), marks: {}, page });
      tell(kept ? '' : 'This browser keeps nothing (a private window?): use the list on paper.');
      show();
    });
  part(root, 'entry-form').addEventListener('submit', (event) => {
    event.preventDefault();
    const field = input(root, 'entry');
    void record(field.value).then(() => {
      field.value = '';
      field.focus();
    });
  });
  part(root, 'csv').addEventListener('click', () => carryAway('csv'));
  part(root, 'json').addEventListener('click', () => carryAway('json'));
  part(root, 'finish').addEventListener('click', () => {
    part(root, 'sure').hidden = false;
    part(root, 'clear').focus();
  });
  part(root, 'keep').addEventListener('click', show);
  part(root, 'clear').addEventListener('click', () => {
    clearAudit();
    tell('The audit is finished, its marks are cleared.');
    show();
    part(root, 'start').focus();
  });
  input(root, 'by').value = readName();
  input(root, 'by').addEventListener('input', () => writeName(input(root, 'by').value));
  const [button, video] = [part(root, 'camera'), part(root, 'video')];
  if (button instanceof HTMLButtonElement && video instanceof HTMLVideoElement)
    attachCamera(button, video, (text) => void record(text), tell);
  // Each scan opens a page of its own, often in another tab: coming back shows what was marked there.
  window.addEventListener('storage', show);
  window.addEventListener('pageshow', show);
  document.addEventListener('visibilitychange', show);
  part(root, 'desk').hidden = false;
  show();
}

const root = document.querySelector<HTMLElement>('[data-audit]');
if (root !== null) attach(root, JSON.parse(root.dataset['audit'] ?? '{}') as Binder);
