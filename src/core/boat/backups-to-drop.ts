/** A backup of a boat file: its name, when it was kept and how large it is. */
export interface Backup {
  readonly name: string;
  readonly keptMs: number;
  readonly bytes: number;
}

const minuteMs = 60_000;
const hourMs = 60 * minuteMs;
const dayMs = 24 * hourMs;

/** Of backups up to some age one stays for each stretch of time. */
const thinning = [
  { ageMs: hourMs, everyMs: 2 * minuteMs },
  { ageMs: dayMs, everyMs: 15 * minuteMs },
  { ageMs: 60 * dayMs, everyMs: dayMs },
  { ageMs: Number.POSITIVE_INFINITY, everyMs: 30 * dayMs },
] as const;

/** The newest stay whatever their times. */
const newestKept = 10;
const keptAtMost = 240;
const bytesAtMost = 100_000_000;

const slotOf = ({ name, keptMs }: Backup, nowMs: number): string => {
  const ageMs = nowMs - keptMs;
  // kept while the clock was ahead: how long they lie apart is not known
  if (ageMs < 0) return name;
  const { everyMs } = thinning.find((one) => ageMs < one.ageMs) ?? thinning[3];
  return `${everyMs} ${Math.floor(keptMs / everyMs)}`;
};

/**
 * The names of the backups that go, so that a day’s work stays: the newest ten, one for every two minutes of the last
 * hour, every quarter of an hour of the last day, every day of two months, and every 30 days before. Of a stretch of time
 * the oldest stays, for it holds the boat as she was before what was done then. No more than 240, nor 100 MB, are left.
 * Those dated later than now, by a clock that was wrong, are not thinned by stretches. How many stay is common practice.
 */
export const backupsToDrop = (backups: readonly Backup[], nowMs: number): readonly string[] => {
  const oldestFirst = [...backups].sort((a, b) => a.keptMs - b.keptMs);
  const taken = new Set<string>();
  const kept = oldestFirst.filter((backup, at) => {
    const slot = slotOf(backup, nowMs);
    const isFirst = !taken.has(slot);
    taken.add(slot);
    return isFirst || at >= oldestFirst.length - newestKept;
  });
  let bytes = 0;
  const within = kept.toReversed().filter((backup, at) => {
    bytes += backup.bytes;
    return at < newestKept || (at < keptAtMost && bytes <= bytesAtMost);
  });
  const stays = new Set(within.map(({ name }) => name));
  return backups.flatMap(({ name }) => (stays.has(name) ? [] : [name]));
};
