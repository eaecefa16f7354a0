/** A built site as a set of files, and what can be read from its HTML without a browser. */

import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';

export interface Built {
  readonly folder: string;
  /** Paths from the root with `/`, sorted. */
  readonly files: readonly string[];
  readonly read: (file: string) => string;
}

/** Reads the list of files; contents are read when asked for. */
export function builtSite(folder: string): Built {
  const files = readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((e) => e.isFile())
    .map((e) => path.relative(folder, path.join(e.parentPath, e.name)).split(path.sep).join('/'))
    .sort();
  return { folder, files, read: (file) => readFileSync(path.join(folder, file), 'utf8') };
}

/** Visible text of a page, roughly: tags become nothing, so that what touches on the page touches here. */
export function textOf(html: string): string {
  return (
    html
      // A content file is shown as it was typed.
      .replace(/<(style|script|title|desc|pre)[\s>][\s\S]*?<\/\1>/gu, '')
      .replace(
        /<\/?(?:p|div|li|td|th|tr|dd|dt|h[1-6]|section|text|br|label|small|ul|ol|summary|span class="unit")\b[^>]*>/gu,
        '\n',
      )
      .replace(/<[^>]+>/gu, '')
      .replaceAll('&lt;', '<')
      .replaceAll('&gt;', '>')
      .replaceAll('&quot;', '"')
      .replaceAll('&#39;', "'")
      .replaceAll('&nbsp;', '\u00a0')
      .replaceAll('&amp;', '&')
  );
}

/** Values of an attribute over the whole page. */
export function attributes(html: string, name: string): string[] {
  const markup = html.replace(/<(style|script)[\s>][\s\S]*?<\/\1>/gu, '');
  return [...markup.matchAll(new RegExp(String.raw`<[a-z][^>]*?\s${name}="([^"]*)"`, 'gu'))].map((m) =>
    (m[1] ?? '').replaceAll('&amp;', '&').replaceAll('&#38;', '&'),
  );
}
