/** Plain pages of document control: answers for addresses not in force, and comparisons. Whole HTML texts, no Astro. */
export { answerPage } from './answer.ts';
export { comparisonPage } from './comparison.ts';
export { type ComparisonFacts, comparisonFacts, type Neighbour } from './comparison-facts.ts';
export { documentAnswerPage } from './document-answer.ts';
export { type Sign, signSvg, WORDS } from './signs.ts';
export type { SiteFacts } from './site-facts.ts';
