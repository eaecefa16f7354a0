/** Rules: every check with its words and example; a resolved shop in, diagnostics out. */
export { type AcceptedWarning, applyAcceptances } from './acceptance.ts';
export { CATALOGUE } from './catalogue.ts';
export type { Check } from './check.ts';
export { CHECKS } from './checks.ts';
export { type Edit, type Example, edited, type Mark, OPENING, unmarked } from './example/example.ts';
export { EXAMPLE_SHOP } from './example/shop.ts';
export { type Segment, type Snippet, snippet } from './example/snippet.ts';
export { FAMILIES, familyOf } from './families.ts';
export { runChecks } from './run-checks.ts';
