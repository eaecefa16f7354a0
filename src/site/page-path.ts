/** From the address that Astro gives a page to its path from the root of the site. */

/** Path of the site on its host, beginning and ending in `/`. Not Vite's own: a variable of the environment can change that. */
export const BASE: string = __SITE_BASE__;

/** `/shop/tools/socket-24/` becomes `tools/socket-24/`, whatever the base. */
export function pagePath(pathname: string): string {
  const path = decodeURI(pathname);
  return path.startsWith(BASE) ? path.slice(BASE.length) : path.replace(/^\//u, '');
}
