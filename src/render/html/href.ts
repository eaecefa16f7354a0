/** Relative links between the pages of one site, so that it can be served from any folder of any host. */

/**
 * The address of `to` as written on page `from`.
 * Both are paths from the root of the site without a leading slash: `''` (home), `procedures/of-204/`, `cards/OF-204.pdf`.
 * `to` may end in `#anchor`. Nothing is escaped: paths of a site hold only letters, digits and `-_./`.
 */
export function href(from: string, to: string): string {
  const [path = '', anchor] = split(to);
  const hash = anchor === undefined ? '' : `#${anchor}`;
  if (path === from && hash !== '') return hash;
  const here = from.split('/').slice(0, -1);
  const there = path.split('/');
  const file = there.pop() ?? '';
  let shared = 0;
  while (shared < here.length && shared < there.length && here[shared] === there[shared]) shared++;
  const up = '../'.repeat(here.length - shared);
  const down = there
    .slice(shared)
    .map((part) => `${part}/`)
    .join('');
  const relative = `${up}${down}${file}`;
  return `${relative === '' ? './' : relative}${hash}`;
}

function split(to: string): readonly [string, string | undefined] {
  const at = to.indexOf('#');
  return at === -1 ? [to, undefined] : [to.slice(0, at), to.slice(at + 1)];
}
