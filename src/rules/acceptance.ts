/** Warnings that an author accepts beside their line: `# accept TRQ002: the maker asks for it, letter of 2026-01-12`. */

import {
  CODES,
  type Code,
  type Diagnostic,
  didYouMean,
  hasErrors,
  lineStarts,
  placeOf,
  type Range,
  type Report,
} from '../diagnostics/index.ts';
import { commentsOf, type SourceFile } from '../source/index.ts';
import { CATALOGUE } from './catalogue.ts';

export interface AcceptedWarning {
  readonly diagnostic: Diagnostic;
  /** Why the author lets it stand. */
  readonly reason: string;
  /** The comment. */
  readonly range: Range;
}

interface Acceptance {
  readonly code: Code;
  readonly reason: string;
  readonly range: Range;
  /** Line on which the warning must stand. */
  readonly line: number;
}

const PATTERN = /^#\s*accept\b\s*([^\s:]*)\s*:?\s*(.*)$/i;

/**
 * Matches the acceptances of all files with the warnings found. An acceptance stands at the end of the warning's line, or
 * alone on the line above it (several may stand above each other), and covers every warning of its code on that line.
 * Reports acceptances that name no known code, that name an error, that give no reason, and that match nothing.
 */
export function applyAcceptances(
  files: readonly SourceFile[],
  diagnostics: readonly Diagnostic[],
  report: Report,
): { readonly accepted: readonly AcceptedWarning[] } {
  const accepted: AcceptedWarning[] = [];
  const faulty = hasErrors(diagnostics);
  for (const file of files) {
    const comments = commentsOf(file);
    if (comments.length === 0) continue;
    const starts = lineStarts(file.text);
    const here = diagnostics.filter((d) => d.range.file === file.file);
    for (const acceptance of acceptancesOf(file, comments, starts, report)) {
      const found = here.filter(
        (d) => d.code === acceptance.code && placeOf(starts, d.range.start).line === acceptance.line,
      );
      for (const diagnostic of found) accepted.push({ diagnostic, reason: acceptance.reason, range: acceptance.range });
      // Beside an error a warning may only be out of sight: some checks wait until everything can be read.
      if (found.length > 0 || faulty) continue;
      report(
        'ACC001',
        acceptance.range,
        `\`${acceptance.code}\` is accepted for line ${acceptance.line}, and nothing of the kind stands there`,
        { hint: 'take the comment out, or move it to the line of the warning or right above it' },
      );
    }
  }
  return { accepted };
}

function acceptancesOf(
  { text }: SourceFile,
  comments: ReturnType<typeof commentsOf>,
  starts: readonly number[],
  report: Report,
): Acceptance[] {
  const alone = new Set(comments.filter((c) => c.own).map((c) => placeOf(starts, c.range.start).line));
  return comments.flatMap(({ text: comment, range, own }): Acceptance[] => {
    const match = PATTERN.exec(comment.trim());
    if (match === null) return [];
    const [, word = '', reason = ''] = match;
    const code = CODES.find((c) => c === word.toUpperCase());
    if (code === undefined) {
      report('ACC004', range, word === '' ? 'this acceptance names no check' : `\`${word}\` is the code of no check`, {
        hint: didYouMean(word.toUpperCase(), CODES) ?? 'write it like `# accept TRQ002: the reason`',
      });
      return [];
    }
    if (CATALOGUE[code].severity === 'error') {
      report('ACC002', range, `\`${code}\` ${CATALOGUE[code].name} is an error, and errors cannot be accepted`, {
        hint: 'mend what the error names, and take this comment out',
      });
      return [];
    }
    if (!/[\p{L}\p{N}].*[\p{L}\p{N}].*[\p{L}\p{N}]/u.test(reason)) {
      report('ACC003', range, `\`${code}\` is accepted without a reason`, {
        hint: `say why it may stand: \`# accept ${code}: the reason\``,
      });
      return [];
    }
    let line = placeOf(starts, range.start).line;
    if (own) {
      do line += 1;
      while (alone.has(line) || (line <= starts.length && isBlank(text, starts, line)));
    }
    return [{ code, reason: reason.trim(), range, line }];
  });
}

function isBlank(text: string, starts: readonly number[], line: number): boolean {
  return text.slice(starts[line - 1], starts[line]).trim() === '';
}
