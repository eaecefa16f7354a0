/** Serves a built site from the loopback address, under a folder of its own, as a plain static host would. */

import { readFile, stat } from 'node:fs/promises';
import { createServer } from 'node:http';
import path from 'node:path';

const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.json': 'application/json',
  '.svg': 'image/svg+xml',
  '.woff2': 'font/woff2',
  '.pdf': 'application/pdf',
};

export interface Served {
  /** Address of the home page, ending in `/`. */
  readonly home: string;
  readonly stop: () => Promise<void>;
}

/** folder: the built site. under: path on the host, beginning and ending in `/`. Case counts, as on a Linux host. */
export async function serve(folder: string, under = '/deep/down/'): Promise<Served> {
  const server = createServer(async (request, response) => {
    const { pathname } = new URL(request.url ?? '/', 'http://localhost');
    const inside = pathname.startsWith(under) ? decodeURIComponent(pathname.slice(under.length)) : undefined;
    const file =
      inside === undefined
        ? undefined
        : path.join(folder, inside.endsWith('/') || inside === '' ? `${inside}index.html` : inside);
    try {
      if (file === undefined || !(await stat(file)).isFile()) throw new Error('no file');
      response.writeHead(200, { 'content-type': TYPES[path.extname(file)] ?? 'application/octet-stream' });
      response.end(await readFile(file));
    } catch {
      response.writeHead(404, { 'content-type': 'text/html; charset=utf-8' });
      response.end(await readFile(path.join(folder, '404.html')).catch(() => 'not found'));
    }
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const address = server.address();
  const port = typeof address === 'object' && address !== null ? address.port : 0;
  return {
    home: `http://127.0.0.1:${port}${under}`,
    stop: () =>
      new Promise((resolve) => {
        server.closeAllConnections();
        server.close(() => resolve());
      }),
  };
}
