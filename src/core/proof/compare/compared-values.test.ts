import { describe, expect, test } from 'vitest';
import { sentenceParts } from '../decode/sentence-parts.ts';
import { comparedInSentence, comparedValues } from './compared-values.ts';

/** Values to a tenth, so that a sentence and a message of finer steps can be held side by side. */
const toTenths = (found: ReturnType<typeof comparedInSentence>) =>
  found.map((one) => ({
    ...one,
    value: Number(one.value.toFixed(1)),
    ...(one.variationDeg === undefined ? {} : { variationDeg: Number(one.variationDeg.toFixed(1)) }),
  }));
const inSentence = (body: string) => toTenths(comparedInSentence(sentenceParts(body)));
const inMessage = (pgn: number, hex: string) => toTenths(comparedValues(pgn, new Uint8Array(Buffer.from(hex, 'hex'))));

describe('what can be compared', () => {
  test.each<[string, number, string]>([
    ['HCHDG,132.7,,,4.2,W', 127_250, 'ff785aff7f23fdfd'],
    ['HEHDT,132.7,T', 127_250, 'ff785aff7fff7ffc'],
    // MS-74
    ['SDDPT,12.3,-1.5', 128_267, 'ffce04000024faff'],
    ['SDDBT,40.4,f,12.3,M,6.7,F', 128_267, 'ffce040000ff7fff'],
    // MS-73
    ['IIMWV,338,R,13.41,N,A', 130_306, 'ffb2026fe6faffff'],
    ['IIVWR,22.0,L,13.41,N,,M,,K', 130_306, 'ffb2026fe6faffff'],
    ['GPVTG,132.7,T,136.9,M,5.8,N,10.7,K,A', 129_026, 'fffc785affffffff'],
    ['GPGLL,5406.000,N,01012.000,W,120000,A', 129_025, '40013f20809aebf9'],
  ])('%s is the same in message %i', (body, pgn, hex) => {
    const found = inSentence(body);
    expect(found).not.toEqual([]);
    expect(inMessage(pgn, hex)).toEqual(found);
  });

  test('a depth that its sentence counts from the surface or the keel is not counted again', () => {
    expect(inSentence('SDDBS,,f,13.0,M,,F')).toEqual([{ kind: 'depth', value: 13, datum: 'surface' }]);
    expect(inSentence('SDDBK,,f,10.8,M,,F')).toEqual([{ kind: 'depth', value: 10.8, datum: 'keel' }]);
  });

  test.each([
    'GPGGA,120000,5406.000,N,01012.000,W,0,00,,,M,,M,,',
    'GPVTG,132.7,T,136.9,M,5.8,N,10.7,K,N',
    'GPGLL,5406.000,N,01012.000,W,120000,V',
    'IIMWV,338,T,13.41,N,A',
    'IIHDT,,T',
  ])('%s has nothing to hold against another source', (body) => {
    expect(inSentence(body)).toEqual([]);
  });

  test('of a message that is not compared nothing is read', () => {
    expect(inMessage(127_251, 'ff00000000ffffff')).toEqual([]);
  });
});
