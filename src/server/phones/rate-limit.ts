/** How often something may happen for one sender, and for all of them together, within a span of time. */
export interface RateLimit {
  /** whether one more may be taken */
  readonly hasRoom: (sender: string) => boolean;
  /** counts some, one where nothing is said; false where there was no room for any, and then none is counted */
  readonly take: (sender: string, count?: number) => boolean;
}

interface Spent {
  readonly count: number;
  readonly beganMs: number;
}

/** More senders than a boat has; whoever asked longest ago is forgotten first. */
const mostSenders = 1000;

/**
 * Starts with nothing spent. A span begins with the first one counted in it. The count of all senders is kept apart, so
 * that many senders together, or one that goes by many addresses, cannot do more than `inAll`.
 */
export const rateLimit = ({
  perSender,
  inAll,
  spanMs,
  nowMs,
}: {
  perSender: number;
  inAll: number;
  spanMs: number;
  nowMs: () => number;
}): RateLimit => {
  const bySender = new Map<string, Spent>();
  let all: Spent | undefined;

  const current = (spent: Spent | undefined): Spent | undefined =>
    spent === undefined || nowMs() - spent.beganMs >= spanMs ? undefined : spent;

  const counted = (spent: Spent | undefined, count: number): Spent => {
    const { count: before, beganMs } = current(spent) ?? { count: 0, beganMs: nowMs() };
    return { count: before + count, beganMs };
  };

  const hasRoom = (sender: string): boolean =>
    (current(bySender.get(sender))?.count ?? 0) < perSender && (current(all)?.count ?? 0) < inAll;

  return {
    hasRoom,
    take: (sender, count = 1) => {
      if (!hasRoom(sender)) return false;
      const own = counted(bySender.get(sender), count);
      all = counted(all, count);
      bySender.delete(sender);
      bySender.set(sender, own);
      const [oldest] = bySender.keys();
      if (bySender.size > mostSenders && oldest !== undefined) bySender.delete(oldest);
      return true;
    },
  };
};
