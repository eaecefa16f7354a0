/** A reader of CSV by RFC 4180 of its own, so that what the writer does is not checked with its own rules. */

/** Rows of cells. Throws where a quote stands that the format does not allow. */
export function readCsv(text: string): string[][] {
  const rows: string[][] = [];
  let row: string[] = [];
  let cell = '';
  let at = 0;
  while (at < text.length) {
    if (text[at] === '"') {
      at++;
      for (;;) {
        if (at >= text.length) throw new Error('a quote is never closed');
        if (text[at] !== '"') cell += text[at++];
        else if (text[at + 1] === '"') {
          cell += '"';
          at += 2;
        } else break;
      }
      at++;
      if (text[at] !== ',' && text[at] !== '\r') throw new Error(`something stands after a closing quote at ${at}`);
    }
    const sign = text[at];
    if (sign === ',') {
      row.push(cell);
      cell = '';
      at++;
    } else if (sign === '\r' && text[at + 1] === '\n') {
      rows.push([...row, cell]);
      row = [];
      cell = '';
      at += 2;
    } else if (sign === '\r' || sign === '\n' || sign === '"')
      throw new Error(`a bare ${JSON.stringify(sign)} at ${at}`);
    else {
      cell += sign;
      at++;
    }
  }
  if (row.length > 0 || cell !== '') throw new Error('the last row does not end in CR LF');
  return rows;
}

/** Rows by the names of the head row. */
export function readRecords(text: string): Record<string, string>[] {
  const [head = [], ...rows] = readCsv(text);
  return rows.map((row) => {
    if (row.length !== head.length) throw new Error(`${row.length} cells under ${head.length} heads`);
    return Object.fromEntries(head.map((name, i) => [name, row[i] ?? '']));
  });
}
