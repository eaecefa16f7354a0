/** Posters: torque tables for the wall. */
export { layoutPosters, type PosterLayout, type PosterPage } from './torque-posters.ts';
