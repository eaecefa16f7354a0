/** Binders: the sheets around a bench's cards. */
export { layoutBinder } from './binder-pages.ts';
export type { BinderControl, BinderEntry, BinderLayout, BinderPage, BinderState } from './types.ts';
