/** HTML: escaping, prose, relative links and the folders of the site. Pure functions; pages put them together. */
export { escapeHtml } from './escape.ts';
export { href } from './href.ts';
export { paths } from './paths.ts';
export { proseHtml, proseText, type RefTarget, runsHtml } from './prose.ts';
export { capital, count, duration, joinUnits, list, ranges } from './words.ts';
