/** How many connections phones may hold at once, so that those who crowd the door do not keep the crew out. */
export interface SocketGate {
  /** lets a connection in and gives what to call when it ends; undefined where it is one too many */
  readonly admit: (sender: string) => (() => void) | undefined;
  /** a paired phone spoke from there */
  readonly know: (sender: string) => void;
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
const mostKnown = 64;

/** Starts with nobody in. */
export const socketGate = (nowMs: () => number): SocketGate => {
  const openBySender = new Map<string, number>();
  const knownUntilMs = new Map<string, number>();
  let open = 0;
  let strangers = 0;
  let turnedAway = 0;

  const mayEnter = (sender: string, isKnown: boolean): boolean => {
    const own = openBySender.get(sender) ?? 0;
    return isKnown ? own < knownEach && open < inAll : own < strangerEach && strangers < strangersInAll && open < inAll;
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
      const isKnown = (knownUntilMs.get(sender) ?? 0) > nowMs();
      if (!mayEnter(sender, isKnown)) {
        turnedAway += 1;
        return undefined;
      }
      open += 1;
      if (!isKnown) strangers += 1;
      openBySender.set(sender, (openBySender.get(sender) ?? 0) + 1);
      return () => leave(sender, isKnown);
    },
    know: (sender) => {
      knownUntilMs.delete(sender);
      knownUntilMs.set(sender, nowMs() + knownForMs);
      const [oldest] = knownUntilMs.keys();
      if (knownUntilMs.size > mostKnown && oldest !== undefined) knownUntilMs.delete(oldest);
    },
    told: () => ({ open, turnedAway }),
  };
};
