/** Sorting and filtering of registers. */

import { fold } from '../../render/search/tokens.ts';

const collator = new Intl.Collator('en', { numeric: true, sensitivity: 'base' });

function sortKey(row: HTMLTableRowElement, column: number): string {
  const cell = row.cells[column];
  return cell?.dataset['sort'] ?? cell?.textContent?.trim() ?? '';
}

function compare(a: string, b: string): number {
  // Empty cells stand last whichever way the column is sorted; the caller turns the rest.
  const [x, y] = [Number(a), Number(b)];
  if (a !== '' && b !== '' && !Number.isNaN(x) && !Number.isNaN(y)) return x - y;
  return collator.compare(a, b);
}

function sortBy(table: HTMLTableElement, column: number): void {
  const heads = [...(table.tHead?.rows[0]?.cells ?? [])];
  const head = heads[column];
  const body = table.tBodies[0];
  if (head === undefined || body === undefined) return;
  const direction = head.getAttribute('aria-sort') === 'ascending' ? 'descending' : 'ascending';
  for (const other of heads) other.removeAttribute('aria-sort');
  head.setAttribute('aria-sort', direction);
  const sign = direction === 'ascending' ? 1 : -1;
  const rows = [...body.rows].map((row) => ({ row, key: sortKey(row, column) }));
  rows.sort((a, b) =>
    a.key === '' || b.key === '' ? Number(a.key === '') - Number(b.key === '') : sign * compare(a.key, b.key),
  );
  body.append(...rows.map(({ row }) => row));
}

function addFilter(register: HTMLElement, table: HTMLTableElement, caption: string): void {
  const tools = document.createElement('div');
  tools.className = 'register-tools';
  const label = document.createElement('label');
  const words = document.createElement('span');
  words.className = 'hidden';
  words.textContent = `Filter: ${caption}`;
  const input = document.createElement('input');
  input.type = 'search';
  input.placeholder = 'Filter';
  input.autocomplete = 'off';
  const count = document.createElement('span');
  count.className = 'soft';
  count.setAttribute('role', 'status');
  label.append(words, input);
  tools.append(label, count);
  register.prepend(tools);
  const rows = [...(table.tBodies[0]?.rows ?? [])].map((row) => ({ row, text: fold(row.textContent ?? '') }));
  input.addEventListener('input', () => {
    const wanted = fold(input.value)
      .split(/\s+/u)
      .filter((w) => w !== '');
    let shown = 0;
    for (const { row, text } of rows) {
      row.hidden = !wanted.every((w) => text.includes(w));
      if (!row.hidden) shown++;
    }
    count.textContent = wanted.length === 0 ? '' : `${shown} of ${rows.length}`;
  });
}

/** Gives every register under `root` sortable heads and, where it is long, a filter. */
export function enhanceRegisters(root: ParentNode): void {
  for (const register of root.querySelectorAll<HTMLElement>('[data-register]')) {
    const table = register.querySelector('table');
    if (table === null) continue;
    if ((table.tBodies[0]?.rows.length ?? 0) > 1) {
      [...(table.tHead?.rows[0]?.cells ?? [])].forEach((head, column) => {
        const button = document.createElement('button');
        button.type = 'button';
        button.append(...head.childNodes);
        button.addEventListener('click', () => sortBy(table, column));
        head.append(button);
      });
    }
    const caption = register.dataset['filter'];
    if (caption !== undefined) addFilter(register, table, caption);
  }
}
