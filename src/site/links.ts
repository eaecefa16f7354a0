/** Links of one page: every page makes them through here. */

import { href } from '../render/html/index.ts';
import { BASE, pagePath } from './page-path.ts';

/** Makes addresses relative to the page with this URL. */
export function linksFrom(url: URL): (to: string) => string {
  const from = pagePath(url.pathname);
  // The page for lost addresses may be shown at any depth: only whole addresses hold there.
  if (from.startsWith('404')) return (to) => `${BASE}${to}`;
  return (to) => href(from, to);
}
