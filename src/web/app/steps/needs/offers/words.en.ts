export const en = {
  heading: 'Needs that are waiting',
  usual: (count: number) => (count === 1 ? 'take in one usual need' : `take in ${count} usual needs`),
  usualFoundBy: ['default', 'needs', 'readings'],
  usualAt: (name: string, count: number) => `usual needs of ${name} (${count})`,
  today: (count: number) => (count === 1 ? 'take in what is seen today' : `take in the ${count} that are seen today`),
  todayFoundBy: ['old', 'before', 'screens'],
  noUsual: 'Every unit is asked for what it usually shows or needs.',
  noToday: 'Nothing more is seen today that a screen to come understands.',
  which: 'which',
} as const;
