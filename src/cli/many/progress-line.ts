import type { Terminal } from '../watched-search.ts';

/** One line at a terminal that is written over and over, and gone in the end; where standard error is no terminal nothing is shown. */
export const progressLine = (terminal: Terminal) => {
  let isThere = false;
  const wipe = (): void => {
    if (isThere) terminal.write('\r\u001B[K');
    isThere = false;
  };
  return {
    show: (says: string): void => {
      if (terminal.isTTY !== true) return;
      wipe();
      isThere = true;
      terminal.write(says.slice(0, (terminal.columns ?? 80) - 1));
    },
    /** a line that stays */
    tell: (says: string): void => {
      wipe();
      terminal.write(`${says}\n`);
    },
    wipe,
  };
};
