import type { SourceKey } from './sources.ts';

interface SeaMethod {
  /** in symbols, each explained */
  readonly formula: string;
  readonly source: SourceKey;
}

/** How each calculator used at sea reckons, as it is shown beside its result. */
export const seaMethods = {
  log: {
    formula:
      'v = 3600 D ÷ t; the mean of the speeds, never of the times: three runs weigh 1 2 1, four 1 3 3 1; new factor = old × true ÷ indicated',
    source: 'computed-log-runs',
  },
  wind: {
    formula: 'offset = (angle on port tack − angle on starboard tack) ÷ 2; positive is turned to port',
    source: 'practice-log-wind',
  },
  lead: {
    formula: 't = lead line − (shown − offset); to the surface +t, to the keel −(T − t), with T the draft',
    source: 'practice-depth-settings',
  },
  swing: {
    formula:
      'deviation = magnetic − compass, east positive; curve A + B sin h + C cos h + D sin 2h + E cos 2h by least squares',
    source: 'practice-deviation-curve',
  },
  bridge: {
    formula:
      'free = charted + level of the chart − height of tide; highest tide = charted + level − air draft − margin',
    source: 'practice-air-draft',
  },
} as const satisfies Readonly<Record<string, SeaMethod>>;

export type SeaMethodId = keyof typeof seaMethods;
