import type { DaysSpan, Work } from '../work.ts';

/** What an edit of the work may say of its terms. */
export type WorkTerms = Omit<Work, 'hands' | 'essentials' | 'jobs' | 'own' | 'leaving'>;

const spanWords = (what: string, spans: readonly DaysSpan[]): string => {
  if (spans.length === 0) return `${what} on no day`;
  const [first, ...more] = spans;
  const days = first === undefined ? '' : first.from === first.to ? first.from : `${first.from} to ${first.to}`;
  return more.length === 0 ? `${what} ${days}` : `${what} ${days} and ${more.length} more`;
};

const weekdayWords = {
  mon: 'Mondays',
  tue: 'Tuesdays',
  wed: 'Wednesdays',
  thu: 'Thursdays',
  fri: 'Fridays',
  sat: 'Saturdays',
  sun: 'Sundays',
} as const;

/** What each term is called where it is no longer said. */
export const termNames = {
  starts: 'first day',
  hoursADay: 'hours a day',
  fromH: 'hour of beginning',
  restDays: 'days of rest',
  ashore: 'days ashore',
  mastDown: 'days with the mast down',
  foul: 'foul days',
  moves: 'days on which she must move',
  left: 'days with nobody aboard',
  light: 'hours of light',
  doneBy: 'day to be done by',
  aisWanted: 'whether AIS is wanted',
} as const satisfies Readonly<Record<keyof WorkTerms, string>>;

/** Terms of the work in words, each a short phrase. */
export const workInWords = (terms: WorkTerms): string[] => [
  ...(terms.starts ?? []).map(({ phase, on }) => `phase ${phase} begins ${on}`),
  ...(terms.hoursADay === undefined ? [] : [`${terms.hoursADay} h a day`]),
  ...(terms.fromH === undefined ? [] : [`from ${terms.fromH} h on`]),
  ...(terms.restDays === undefined
    ? []
    : [
        terms.restDays.length === 0
          ? 'no day of rest'
          : `rest on ${terms.restDays.map((day) => weekdayWords[day]).join(', ')}`,
      ]),
  ...(terms.ashore === undefined ? [] : [spanWords('ashore', terms.ashore)]),
  ...(terms.mastDown === undefined ? [] : [spanWords('mast down', terms.mastDown)]),
  ...(terms.foul === undefined ? [] : [spanWords('foul weather', terms.foul)]),
  ...(terms.moves === undefined ? [] : [spanWords('must move', terms.moves)]),
  ...(terms.left === undefined ? [] : [spanWords('nobody aboard', terms.left)]),
  ...(terms.light === undefined ? [] : [`light from ${terms.light.fromH} to ${terms.light.toH} h`]),
  ...(terms.doneBy === undefined ? [] : [`done by ${terms.doneBy}`]),
  ...(terms.aisWanted === undefined ? [] : [terms.aisWanted ? 'AIS wanted throughout' : 'AIS not wanted meanwhile']),
];
