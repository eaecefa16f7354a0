/** For tools that look for Astro's configuration here; the build and the dev server hand a shop to the same function. */

import { siteConfig } from './src/site/config.ts';
import { emptyState } from './src/site/site-state.ts';

export default siteConfig({ state: emptyState(), base: '/' });
