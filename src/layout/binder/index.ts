/** Binders: the sheets around a bench's cards. */
export { type BinderEntry, type BinderLayout, type BinderPage, layoutBinder } from './binder-pages.ts';
