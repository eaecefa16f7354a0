/** Progress of a long command: one rewritten line on a terminal, plain lines in a log. */

export interface Progress {
  /** Begins a stage; `total` 0 when it cannot be counted. */
  readonly stage: (name: string, total: number) => void;
  readonly done: (count: number) => void;
  readonly end: () => void;
}

/** Writes to standard error, so that standard output stays for results. */
export function progress(stream: NodeJS.WriteStream = process.stderr): Progress {
  const started = performance.now();
  let name = '';
  let total = 0;
  let shown = 0;
  const elapsed = (): string => `${((performance.now() - started) / 1000).toFixed(1)} s`;
  const line = (count: number): string => `${name}${total > 0 ? ` ${count}/${total}` : ''} (${elapsed()})`;
  const close = (): void => {
    if (name === '') return;
    if (stream.isTTY) stream.write('\r\u001b[2K');
    stream.write(`${line(total)}\n`);
    name = '';
  };
  return {
    stage: (next, count) => {
      close();
      name = next;
      total = count;
      shown = 0;
      if (stream.isTTY) stream.write(`\r\u001b[2K${line(0)}`);
    },
    done: (count) => {
      // A terminal repaints at most twelve times a second; more is flicker.
      if (!stream.isTTY || performance.now() - shown < 80) return;
      shown = performance.now();
      stream.write(`\r\u001b[2K${line(count)}`);
    },
    end: close,
  };
}
