/** How much of what comes in makes lines, over the last seconds. */
export interface LineQuality {
  /** bytes that came in; `whole` of them ended lines that could be read */
  add(bytes: { readonly came: number; readonly whole: number; readonly nowMs: number }): void;
  /** share of the bytes that made no line, 0 to 1; undefined while too little has come to tell */
  lostShare(nowMs: number): number | undefined;
  reset(): void;
}

/** Bytes of about four sentences: fewer tell nothing (project choice). */
const leastBytes = 160;
const slots = 5;
const slotMs = 1000;

/** Starts with nothing heard. Looks back over five seconds. */
export const startLineQuality = (): LineQuality => {
  const came = new Array<number>(slots).fill(0);
  const whole = new Array<number>(slots).fill(0);
  let newest = Number.NEGATIVE_INFINITY;

  /** Empties the slots of seconds in which nothing came. */
  const turnTo = (nowMs: number): number => {
    const second = Math.floor(nowMs / slotMs);
    const past = second - newest;
    // a clock that was set back goes on in the slot it was in
    if (past > 0) {
      for (let step = 1; step <= Math.min(past, slots); step += 1) {
        const at = (((newest + step) % slots) + slots) % slots;
        came[Number.isFinite(at) ? at : step - 1] = 0;
        whole[Number.isFinite(at) ? at : step - 1] = 0;
      }
      newest = second;
    }
    return ((newest % slots) + slots) % slots;
  };

  const sum = (counts: readonly number[]): number => counts.reduce((total, count) => total + count, 0);

  return {
    add({ came: bytes, whole: good, nowMs }) {
      const at = turnTo(nowMs);
      came[at] = (came[at] ?? 0) + bytes;
      whole[at] = (whole[at] ?? 0) + good;
    },
    lostShare(nowMs) {
      turnTo(nowMs);
      const all = sum(came);
      return all < leastBytes ? undefined : Math.max(0, 1 - sum(whole) / all);
    },
    reset() {
      came.fill(0);
      whole.fill(0);
    },
  };
};
