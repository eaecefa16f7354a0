/** Elements made by hand: text always as text, so that nothing that was typed can become markup. */

export type Child = Node | string;

/** An element with attributes and children; an attribute that is undefined is left out. */
export function el<K extends keyof HTMLElementTagNameMap>(
  tag: K,
  attributes: Readonly<Record<string, string | undefined>> = {},
  ...children: readonly Child[]
): HTMLElementTagNameMap[K] {
  const element = document.createElement(tag);
  for (const [name, value] of Object.entries(attributes)) {
    if (value !== undefined) element.setAttribute(name, value);
  }
  element.append(...children);
  return element;
}

/** Words in which `backticks` mark what was typed: they become `<code>`. */
export function words(text: string): readonly Child[] {
  return text.split('`').map((part, i) => (i % 2 === 1 ? el('code', {}, part) : part));
}

/** A drawing or formula that one of our painters wrote; a parsed document runs no script and loads nothing. */
export function markup(html: string): Node {
  const { body } = new DOMParser().parseFromString(html, 'text/html');
  const fragment = document.createDocumentFragment();
  fragment.append(...body.childNodes);
  return document.importNode(fragment, true);
}

/** The first element with this `data-part`; throws when the page lacks it. */
export function part(root: ParentNode, name: string): HTMLElement {
  const found = root.querySelector<HTMLElement>(`[data-part="${name}"]`);
  if (found === null) throw new RangeError(`the page has no part \`${name}\``);
  return found;
}

export interface Column {
  readonly head: string;
  readonly isNumber?: boolean;
}

/** A table whose first cell in each row is its head. */
export function table(
  className: string,
  caption: string,
  columns: readonly Column[],
  rows: readonly (readonly Child[])[],
): HTMLTableElement {
  const cell = (i: number): string | undefined => (columns[i]?.isNumber === true ? 'num' : undefined);
  return el(
    'table',
    { class: className },
    el('caption', { class: 'hidden' }, caption),
    el('thead', {}, el('tr', {}, ...columns.map((c, i) => el('th', { scope: 'col', class: cell(i) }, c.head)))),
    el(
      'tbody',
      {},
      ...rows.map((row) =>
        el(
          'tr',
          {},
          ...row.map((child, i) =>
            i === 0 ? el('th', { scope: 'row', class: cell(i) }, child) : el('td', { class: cell(i) }, child),
          ),
        ),
      ),
    ),
  );
}
