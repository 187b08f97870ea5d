import type { SearchWatch } from './solve-boat.ts';

/** How often the line at the terminal changes: no faster than it can be read. */
const readableMs = 250;

/** As much of standard error as is written to. */
export interface Terminal {
  readonly isTTY?: boolean;
  readonly columns?: number;
  write(text: string): unknown;
}

/** As much of the process as hears Ctrl-C. */
export interface Interrupts {
  on(signal: 'SIGINT', hear: () => void): unknown;
  off(signal: 'SIGINT', hear: () => void): unknown;
}

/**
 * Runs a search somebody waits for: while it takes long, one line at the terminal says what it does and has, and is gone
 * when it ends; Ctrl-C ends the search with what is found, and a second one the program, by way of `quit`. Nothing is
 * written where standard error is no terminal, but that the search was stopped.
 */
export const watchedSearch = async <Answer>(
  search: (watch: SearchWatch) => Promise<Answer>,
  tools: {
    readonly terminal: Terminal;
    readonly interrupts: Interrupts;
    readonly nowMs: () => number;
    readonly quit: () => void;
  },
): Promise<Answer> => {
  const { terminal, interrupts, nowMs, quit } = tools;
  let isStopped = false;
  let [saidMs, isLineThere] = [nowMs(), false];
  const wipe = (): void => {
    if (isLineThere) terminal.write('\r\u001B[K');
    isLineThere = false;
  };
  const hear = (): void => {
    if (isStopped) quit();
    isStopped = true;
  };
  interrupts.on('SIGINT', hear);
  try {
    return await search({
      isStopped: () => isStopped,
      onProgress: ({ says, found }) => {
        if (terminal.isTTY !== true || nowMs() - saidMs < readableMs) return;
        wipe();
        saidMs = nowMs();
        isLineThere = true;
        // figures first, for a narrow terminal shows no more than the start
        const line = found === undefined ? says : `${found} ${says}`;
        terminal.write(line.slice(0, (terminal.columns ?? 80) - 1));
      },
    });
  } finally {
    interrupts.off('SIGINT', hear);
    wipe();
    if (isStopped) terminal.write('The search was stopped; layouts are the best found until then.\n');
  }
};
