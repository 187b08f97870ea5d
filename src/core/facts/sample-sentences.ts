import type { SourceKey } from './sources.ts';

/** A sentence with its fields filled, and its length from the start character to CR LF. */
interface SampleSentence {
  readonly text?: string;
  readonly chars: number;
  readonly source: SourceKey;
}

/**
 * Lengths to plan a line with, by letters: every field filled, which seen traffic often does not do. Positions and
 * readings are invented. The ones without a text are planned by habit.
 */
export const sampleSentences = {
  DBT: { text: '$SDDBT,40.7,f,12.4,M,6.8,F*0C', chars: 31, source: 'sample-sentences' },
  DPT: { text: '$SDDPT,12.4,0.5,*49', chars: 21, source: 'sample-sentences' },
  GGA: {
    text: '$GPGGA,123519.00,5404.10700,N,00845.20300,W,1,08,0.9,12.4,M,46.9,M,,*45',
    chars: 73,
    source: 'sample-sentences',
  },
  GLL: { text: '$GPGLL,5404.10700,N,00845.20300,W,123519.00,A,A*7D', chars: 52, source: 'sample-sentences' },
  HDG: { text: '$HCHDG,101.1,0.0,E,3.1,W*53', chars: 29, source: 'sample-sentences' },
  HDT: { text: '$HEHDT,098.0,T*2E', chars: 19, source: 'sample-sentences' },
  MTW: { text: '$YXMTW,17.8,C*1C', chars: 18, source: 'sample-sentences' },
  MWV: { text: '$WIMWV,214.8,R,12.1,N,A*1E', chars: 28, source: 'sample-sentences' },
  RMC: {
    text: '$GPRMC,123519.00,A,5404.10700,N,00845.20300,W,6.4,084.4,230325,3.1,W,A*3E',
    chars: 75,
    source: 'sample-sentences',
  },
  /** one slot */
  VDM: { chars: 49, source: 'sample-sentences' },
  VHW: { text: '$VWVHW,,T,101.1,M,6.1,N,11.3,K*4F', chars: 35, source: 'sample-sentences' },
  VTG: { text: '$GPVTG,084.4,T,087.5,M,6.4,N,11.9,K,A*1A', chars: 42, source: 'sample-sentences' },
  APB: { chars: 53, source: 'usual-sentence-lengths' },
  RMB: { chars: 75, source: 'usual-sentence-lengths' },
  XTE: { chars: 26, source: 'usual-sentence-lengths' },
} as const satisfies Record<string, SampleSentence>;
