/** The fullest of the seconds counted from the first frame. */
export interface BusiestSecond {
  /** seconds since the first frame, whole */
  readonly second: number;
  readonly frames: number;
  readonly exactBits: number;
  readonly worstBits: number;
}

/** Finds the busiest second of a recording as it goes by. */
export interface SecondsCounter {
  add(frame: { readonly elapsedUs: number; readonly exactBits: number; readonly worstBits: number }): void;
  /** Undefined before the first frame. */
  busiest(): BusiestSecond | undefined;
}

/** Seconds held open for frames that come late; older ones are closed, so that memory stays flat. */
const openSeconds = 128;

interface Slot {
  second: number;
  frames: number;
  exactBits: number;
  worstBits: number;
}

const isBusier = (a: Slot, b: Slot): boolean =>
  a.exactBits > b.exactBits || (a.exactBits === b.exactBits && a.second < b.second);

/** Starts counting seconds. The busiest has the most exact bits; of equals, the earliest. */
export const startSeconds = (): SecondsCounter => {
  const slots = Array.from(
    { length: openSeconds },
    (): Slot => ({ second: -1, frames: 0, exactBits: 0, worstBits: 0 }),
  );
  let best: Slot | undefined;

  const close = (slot: Slot): void => {
    if (slot.frames > 0 && (best === undefined || isBusier(slot, best))) best = { ...slot };
  };

  return {
    add({ elapsedUs, exactBits, worstBits }) {
      const second = Math.max(0, Math.floor(elapsedUs / 1_000_000));
      const slot = slots[second % openSeconds];
      if (slot === undefined) return;
      if (slot.second !== second) {
        close(slot);
        slot.second = second;
        slot.frames = 0;
        slot.exactBits = 0;
        slot.worstBits = 0;
      }
      slot.frames += 1;
      slot.exactBits += exactBits;
      slot.worstBits += worstBits;
    },
    busiest() {
      for (const slot of slots) close(slot);
      return best === undefined ? undefined : { ...best };
    },
  };
};
