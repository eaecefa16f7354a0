/** Posters: torque tables for the wall. */
export type { PosterPage } from './poster-page.ts';
export { layoutPosters, type PosterLayout } from './torque-posters.ts';
