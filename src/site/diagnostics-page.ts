/** The page of a dev server that has not met a shop without faults yet: the faults and nothing else. */

import { escapeHtml } from '../render/html/index.ts';

/** A whole page; it asks again every two seconds, since nothing on it listens to the server. */
export function diagnosticsPage(text: string): string {
  return (
    '<!doctype html><html lang="en"><head><meta charset="utf-8"><meta http-equiv="refresh" content="2">' +
    '<meta name="viewport" content="width=device-width, initial-scale=1"><title>Content faults</title>' +
    '<style>body{font:16px/1.5 system-ui,sans-serif;margin:24px}pre{font:14px/1.5 ui-monospace,monospace;white-space:pre-wrap;overflow-wrap:anywhere}</style>' +
    `</head><body><h1>The content does not hold</h1><pre>${escapeHtml(text)}</pre></body></html>`
  );
}
