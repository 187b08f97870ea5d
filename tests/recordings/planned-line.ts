import { type Planned, plannedSends } from '../../src/core/proof/compare/planned-sends.ts';
import { sentenceChecksum } from '../../src/core/proof/decode/sentence.ts';

/** One line of NMEA 0183 text with the time a recorder noted. */
export interface RecordedLine {
  readonly timeUs: number;
  readonly text: string;
}

/** Fields of an invented boat’s sentences; positions are invented. */
const bodies: Readonly<Record<string, string>> = {
  APB: 'A,A,0.01,R,N,,,12.0,M,ONE,12.0,M,12.0,M',
  DBT: '26.9,f,8.2,M,4.5,F',
  DPT: '8.2,-0.6',
  HDG: '68.8,,,3.1,W',
  MTW: '15.0,C',
  MWV: '45.8,R,11.7,N,A',
  RMB: 'A,0.01,R,ONE,TWO,5407.104,N,01012.003,W,0.5,12.0,5.0,V',
  RMC: '120000,A,5406.000,N,01012.000,W,5.1,108.9,010126,3.1,W',
  RSA: '2.9,A,,V',
  VHW: ',,,,4.9,N,9.0,K',
  VLW: '1000.0,N,12.0,N',
  XTE: 'A,A,0.01,R,N',
  ZDA: '120000,01,01,2026,00,00',
};

/** A sentence with its checksum. */
export const sentenceOf = (body: string): string => `$${body}*${sentenceChecksum(body)}`;

/** What a recorder notes on a line where everything is as planned. */
export const recordLine = (planned: Planned, talker: string, seconds = 12): RecordedLine[] =>
  plannedSends(planned, { kind: 'line', id: talker })
    .flatMap(({ message, everyMs }, at) =>
      everyMs === undefined
        ? []
        : Array.from({ length: Math.floor((seconds * 1000) / everyMs) }, (_unused, count) => ({
            timeUs: 1_700_000_000_000_000 + at * 60_000 + count * everyMs * 1000,
            text: sentenceOf(`II${message},${bodies[String(message)] ?? '1.0'}`),
          })),
    )
    .sort((a, b) => a.timeUs - b.timeUs);
