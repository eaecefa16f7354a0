/** Control: which revision is in force, who approved it, what changed, where each copy hangs, and that nothing was altered since. */

export * from './acts.ts';
export { canonical, sha256 } from './canonical.ts';
export { checkDrafts } from './check-drafts.ts';
export * from './compare/index.ts';
export { addDays, daysBetween, isDay } from './dates.ts';
export { sideOf } from './drafts.ts';
export { ENGINE } from './engine.ts';
export { type ControlFiles, diskFiles, HEAD, ISSUED, KEYS, LEDGER, LOCK, memoryFiles, NO_FILES } from './files.ts';
export { checkIssue, draftOf, freezeDraft, issueAct, latestIssue, temporaryAct } from './issue-act.ts';
export { readComparison, snapshotOf } from './issued-files.ts';
export { noticesOf } from './notices.ts';
export { isPrefix, type PublishedHead } from './prefix.ts';
export { type PublishedShop, publishShop } from './publish.ts';
export { type PublishedDocument, withMarks } from './published-document.ts';
export { editionStates } from './rests-on.ts';
export { type KeyRing, keyIdOf, newKeyPair, privateKey, readKeys } from './signature.ts';
export { freeze, SNAPSHOT_FORMAT, shopOf, thaw } from './snapshot.ts';
export { cardName, cardStanding, documentStates, issueBefore } from './state.ts';
export * from './types.ts';
export { actText, type ControlRead, verifyLedger } from './verify-ledger.ts';
export { type Act, ControlFault, linesOf, type Writing, writeLines } from './write-ledger.ts';
