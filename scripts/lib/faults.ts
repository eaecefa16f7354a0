/** How a command ends: 0 clean, 1 faults in the content, 2 anything else; always in words, never with a stack trace. */

import { ControlFault } from '../../src/control/index.ts';

/** The command line, the disk or the folder is at fault, not the content. */
export class UsageFault extends Error {
  readonly hint: string | undefined;
  constructor(message: string, hint?: string) {
    super(message);
    this.hint = hint;
  }
}

const SYSTEM: Readonly<Record<string, string>> = {
  ENOSPC: 'the disk is full',
  EDQUOT: 'the disk quota is used up',
  EACCES: 'this user may not write there',
  EPERM: 'this user may not write there',
  EROFS: 'the disk is read-only',
  ENOENT: 'the folder is not there and cannot be made',
  EFBIG: 'a file would grow past the limit set for this user',
  EEXIST: 'a file stands where a folder is needed',
  ENOTDIR: 'a file stands where a folder is needed',
  EBUSY: 'the folder is in use',
  EXDEV: 'the folder is a mount point and cannot be exchanged',
  EMFILE: 'too many files are open',
};

/** Runs a command to its exit code: 1 when an act of control is refused, 2 for any other fault that is thrown. Program faults are shown in one paragraph that asks for a report. */
export async function runCommand(main: () => Promise<number> | number): Promise<void> {
  try {
    process.exitCode = await main();
  } catch (cause) {
    process.stderr.write(explainFault(cause));
    process.exitCode = cause instanceof ControlFault ? 1 : 2;
  }
}

export function explainFault(cause: unknown): string {
  if (cause instanceof UsageFault || cause instanceof ControlFault) {
    return `fault: ${cause.message}\n${cause.hint === undefined ? '' : `  hint: ${cause.hint}\n`}`;
  }
  const code = systemCode(cause);
  const meaning = code === undefined ? undefined : SYSTEM[code];
  if (meaning !== undefined) {
    const where = cause instanceof Error && 'path' in cause ? ` (\`${String(cause.path)}\`)` : '';
    return `fault: ${meaning}${where}\n  hint: nothing was changed; mend this and run the command again\n`;
  }
  const words = cause instanceof Error ? cause.message.split('\n')[0] : String(cause);
  const trace = process.env['FETTLEBOOK_TRACE'] === '1' && cause instanceof Error ? `${cause.stack ?? ''}\n` : '';
  return `fault in the program: ${words}\n  hint: this is not a fault of your content; please report it, with the output of FETTLEBOOK_TRACE=1\n${trace}`;
}

/** The system's error code, through the causes that libraries wrap around it. */
function systemCode(cause: unknown): string | undefined {
  for (let c = cause, i = 0; c instanceof Error && i < 5; c = c.cause, i++) {
    if ('code' in c && typeof c.code === 'string' && c.code in SYSTEM) return c.code;
  }
  return undefined;
}
