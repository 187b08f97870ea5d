import { describe, expect, test } from 'vitest';
import { sentenceParts } from '../decode/sentence-parts.ts';
import { valueWords } from '../decode/told-values.ts';
import { figureOfValues } from './live-figure.ts';
import { startLiveState } from './live-state.ts';
import { sentenceAsMessage } from './sentence-as-message.ts';

const said = (body: string) => {
  const as = sentenceAsMessage(sentenceParts(body));
  return as === undefined
    ? undefined
    : { words: valueWords(as.pgn, as.values), figure: figureOfValues(as.pgn, as.values) };
};

describe('what a sentence says', () => {
  test.each<[string, string | undefined, number | undefined]>([
    // MS-74
    ['SDDPT,12.3,-1.5', '12.30 m below the transducer, 10.80 m below the keel', 12.3],
    ['SDDBT,40.4,f,12.3,M,6.7,F', '12.30 m below the transducer, offset not set', 12.3],
    ['HCHDG,132.7,,,4.2,W', '132.7° magnetic, with variation 4.2° W 128.5° true', 132.7],
    ['IIHDT,,T', undefined, undefined],
    // MS-73
    ['IIMWV,338,R,13.41,N,A', '13.4 kn, 22.0° to port', 13.41],
    ['IIMWV,338,R,13.41,N,V', undefined, undefined],
    // MS-76
    ['GPVTG,224.4,T,220.2,M,5.8,N,10.7,K,A', '5.8 kn, 224.4° true', 5.8],
    ['IIVHW,,,132.7,M,6.10,N,,K', '6.1 kn', 6.1],
    ['IIMTW,14.5,C', '14.5 °C', 14.5],
    ['IIRSA,-5.0,A,,V', '-5.0°', -5],
    ['GPGLL,5406.000,N,01012.000,W,120000,A', undefined, undefined],
    ['TIROT,-12.0,A', undefined, -12],
    ['TIROT,-12.0,V', undefined, undefined],
    ['GPXTE,A,A,0.10,L,N', undefined, 185.2],
    ['GPXTE,A,A,0.10,R,N', undefined, -185.2],
    ['SDDBT,10.0,f,,M,,F', '3.05 m below the transducer, offset not set', 3.048],
    ['GPVTG,,T,220.2,M,5.8,N,10.7,K,A', '5.8 kn, 220.2° magnetic', 5.8],
  ])('%s', (body, words, value) => {
    const found = said(body);
    expect(found?.words).toBe(words);
    if (value === undefined) expect(found?.figure).toBeUndefined();
    else expect(found?.figure?.value).toBeCloseTo(value, 6);
  });

  test('tells the own position as a chart has it', () => {
    const state = startLiveState();
    state.sentence({ text: '$GPGLL,5406.000,N,01012.000,W,120000,A', checksum: 'right' }, 0);
    expect(state.heard(0).readings[0]).toMatchObject({
      reading: 'position',
      says: '54°06.000′ N 010°12.000′ W',
    });
  });

  test('stands as words and as a curve at its talker, apparent wind apart from true', () => {
    const state = startLiveState();
    const take = (text: string, nowMs: number) => state.sentence({ text, checksum: 'right' }, nowMs);
    take('$IIMWV,338,R,13.41,N,A*2C', 0);
    take('$IIMWV,300,T,9.00,N,A', 1000);
    const { readings } = state.heard(1000);
    expect(readings.map(({ reading, says }) => [reading, says])).toEqual([
      ['wind-apparent', '13.4 kn, 22.0° to port'],
      ['wind-true', '9.0 kn, 60.0° to port'],
    ]);
    take('$IIMWV,,T,,N,A', 2000);
    take('$IIMWV,300,T,9.00,N,V', 3000);
    expect(state.heard(3000).readings.map(({ reading, says }) => [reading, says])).toEqual([
      ['wind-apparent', '13.4 kn, 22.0° to port'],
      ['wind-true', undefined],
    ]);
    expect(state.curve(0, 1000)).toEqual({ unit: 'kn', points: [[1000, 13.41]] });
  });
});
