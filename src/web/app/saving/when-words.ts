const isSameDay = (one: Date, other: Date): boolean => one.toDateString() === other.toDateString();

/** A moment as a person says it: the time to the second or to the minute, and the day where it is not today. */
export const whenWords = (atMs: number, nowMs: number, to: 'second' | 'minute' = 'second'): string => {
  const [at, now] = [new Date(atMs), new Date(nowMs)];
  const language = document.documentElement.lang;
  const clock = { hour: 'numeric', minute: '2-digit' } as const;
  const time = new Intl.DateTimeFormat(language, to === 'minute' ? clock : { ...clock, second: '2-digit' }).format(at);
  if (isSameDay(at, now)) return time;
  const day = new Intl.DateTimeFormat(language, { weekday: 'long', day: 'numeric', month: 'long', year: 'numeric' });
  return `${day.format(at)}, ${time}`;
};
