/** How many connections phones may hold at once, so that those who crowd the door do not keep the crew out. */
export interface SocketGate {
  /** lets a connection in and gives what to call when it ends; undefined where it is one too many */
  readonly admit: (sender: string) => (() => void) | undefined;
  /** a paired phone spoke from there */
  readonly know: (sender: string) => void;
  /** whether one did of late */
  readonly isKnown: (sender: string) => boolean;
  /** somebody there sends what no browser does: none of theirs is let in for a while, unless a paired phone is there */
  readonly shun: (sender: string) => void;
  /** how many are in, and how many were turned away */
  readonly told: () => { readonly open: number; readonly turnedAway: number };
}

/** A page with its files takes six at once. */
const strangerEach = 8;
const knownEach = 16;
/** Strangers leave half of the room to phones that are paired. */
const strangersInAll = 48;
const inAll = 96;
const knownForMs = 43_200_000;
const shunnedForMs = 60_000;
const mostRemembered = 1000;

/** Senders until a moment; of too many the one noted longest ago is forgotten. */
const noted = (nowMs: () => number, forMs: number) => {
  const untilMs = new Map<string, number>();
  return {
    note: (sender: string): void => {
      untilMs.delete(sender);
      untilMs.set(sender, nowMs() + forMs);
      const [oldest] = untilMs.keys();
      if (untilMs.size > mostRemembered && oldest !== undefined) untilMs.delete(oldest);
    },
    has: (sender: string): boolean => (untilMs.get(sender) ?? 0) > nowMs(),
  };
};

/** Starts with nobody in. */
export const socketGate = (nowMs: () => number): SocketGate => {
  const openBySender = new Map<string, number>();
  const known = noted(nowMs, knownForMs);
  const shunned = noted(nowMs, shunnedForMs);
  let open = 0;
  let strangers = 0;
  let turnedAway = 0;

  const mayEnter = (sender: string, isKnown: boolean): boolean => {
    const own = openBySender.get(sender) ?? 0;
    if (open >= inAll) return false;
    if (isKnown) return own < knownEach;
    return !shunned.has(sender) && own < strangerEach && strangers < strangersInAll;
  };

  const leave = (sender: string, isKnown: boolean): void => {
    open -= 1;
    if (!isKnown) strangers -= 1;
    const left = (openBySender.get(sender) ?? 1) - 1;
    if (left === 0) openBySender.delete(sender);
    else openBySender.set(sender, left);
  };

  return {
    admit: (sender) => {
      const isKnown = known.has(sender);
      if (!mayEnter(sender, isKnown)) {
        turnedAway += 1;
        return undefined;
      }
      open += 1;
      if (!isKnown) strangers += 1;
      openBySender.set(sender, (openBySender.get(sender) ?? 0) + 1);
      return () => leave(sender, isKnown);
    },
    know: known.note,
    isKnown: known.has,
    shun: shunned.note,
    told: () => ({ open, turnedAway }),
  };
};
