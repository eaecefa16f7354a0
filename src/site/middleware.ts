/** Last touch on every page: style sheets and scripts by relative address, so that the site works from any folder. */

import { defineMiddleware } from 'astro:middleware';
import { href } from '../render/html/index.ts';
import { BASE, pagePath } from './page-path.ts';

export const onRequest = defineMiddleware(async ({ url }, next) => {
  const response = await next();
  const path = pagePath(url.pathname);
  // The page for lost addresses is served from anywhere, so it alone keeps absolute addresses.
  if (response.headers.get('content-type')?.startsWith('text/html') !== true || path.startsWith('404')) return response;
  const html = await response.text();
  const assets = href(path, '_astro/x').slice(0, -1);
  return new Response(html.replaceAll(`="${BASE}_astro/`, `="${assets}`), {
    status: response.status,
    headers: response.headers,
  });
});
