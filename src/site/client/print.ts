/** What must be right on paper: the date of the copy, and nothing folded away. */

function isoToday(): string {
  const now = new Date();
  return `${now.getFullYear()}-${String(now.getMonth() + 1).padStart(2, '0')}-${String(now.getDate()).padStart(2, '0')}`;
}

/** Puts the date of the copy into the foot of every sheet, which only a style rule reaches. */
function stampFoot(sheet: CSSStyleSheet, date: string): void {
  try {
    sheet.replaceSync(`@media print{@page{@bottom-left{content:"UNCONTROLLED COPY printed ${date}"}}}`);
  } catch {
    // The mark at the head of the first sheet still has the date.
  }
}

/** Writes the date into the mark of uncontrolled copies and opens every fold while the browser prints. */
export function preparePrint(): void {
  const sheet = new CSSStyleSheet();
  document.adoptedStyleSheets = [...document.adoptedStyleSheets, sheet];
  const stamp = () => {
    const date = isoToday();
    for (const place of document.querySelectorAll('[data-print-date]'))
      place.textContent = `printed ${date}, good for this day only`;
    stampFoot(sheet, date);
  };
  stamp();
  window.addEventListener('beforeprint', () => {
    stamp();
    for (const fold of document.querySelectorAll<HTMLDetailsElement>('details.fold:not([open])')) {
      fold.dataset['wasShut'] = '';
      fold.open = true;
    }
  });
  window.addEventListener('afterprint', () => {
    for (const fold of document.querySelectorAll<HTMLDetailsElement>('details[data-was-shut]')) {
      delete fold.dataset['wasShut'];
      fold.open = false;
    }
  });
}
