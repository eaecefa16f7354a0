/** The comments of a YAML file, for what authors write to the checks beside a line. */

import { CST, Lexer } from 'yaml';
import type { Range } from '../diagnostics/index.ts';
import type { SourceFile } from './files.ts';

export interface Comment {
  /** With its `#`, to the end of the line. */
  readonly text: string;
  readonly range: Range;
  /** Nothing but blanks stands before it on its line. */
  readonly own: boolean;
}

/** What the checks look for in a comment; a file without it is not taken apart. */
const ADDRESSED = /#[ \t]*accept\b/i;

/** The comments of a file in which one of them may be addressed to the checks, in order; of any other file, none. */
export function commentsOf({ file, text }: SourceFile): readonly Comment[] {
  if (!ADDRESSED.test(text)) return [];
  const found: Comment[] = [];
  let start = 0;
  let scalar = false;
  // The lexer alone knows quotes, block text and brackets; nothing is built from what it hands over.
  for (const lexeme of new Lexer().lex(text)) {
    if (!scalar) {
      // These three stand for no text of the file; the last says that an unquoted or block text follows, whatever it begins with.
      if (lexeme === CST.DOCUMENT || lexeme === CST.FLOW_END) continue;
      if (lexeme === CST.SCALAR) {
        scalar = true;
        continue;
      }
      if (lexeme.startsWith('#')) {
        const line = text.slice(text.lastIndexOf('\n', start) + 1, start);
        found.push({ text: lexeme, range: { file, start, end: start + lexeme.length }, own: line.trim() === '' });
      }
    }
    scalar = false;
    start += lexeme.length;
  }
  return found;
}
