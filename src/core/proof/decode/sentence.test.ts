import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readSentence, sentenceChecksum } from './sentence.ts';

describe('a sentence of NMEA 0183', () => {
  test.each([
    ['BB-47', 'HEHDT,098.0,T', '$HEHDT,098.0,T*2E', 19],
    ['MS-72', 'IIHDT,,T', '$IIHDT,,T*0C', 14],
    ['MS-73', 'IIMWV,338,R,13.41,N,A', '$IIMWV,338,R,13.41,N,A*2C', 27],
    ['MS-74', 'SDDPT,12.3,-1.5', '$SDDPT,12.3,-1.5*4E', 21],
    ['MS-76', 'GPVTG,224.4,T,220.2,M,5.8,N,10.7,K,A', '$GPVTG,224.4,T,220.2,M,5.8,N,10.7,K,A*1A', 42],
  ])('%s: %s carries its checksum (XOR of the characters between start and star)', (_id, body, sentence, chars) => {
    expect(`$${body}*${sentenceChecksum(body)}`).toBe(sentence);
    expect(readSentence(`${sentence}\r\n`)).toMatchObject({ body, chars, checksum: 'right' });
  });

  test('MS-80: with a wrong checksum it is known as wrong (XOR of the characters between start and star)', () => {
    expect(readSentence('$SDDPT,12.3,-1.5*00')).toMatchObject({ checksum: 'wrong', computed: '4E' });
  });

  test('without a checksum is neither right nor wrong; digits may be small letters; other text is no sentence', () => {
    expect(readSentence('$SDDPT,12.3,-1.5')).toMatchObject({ checksum: 'absent', computed: '4E', chars: 18 });
    expect(readSentence('$SDDPT,12.3,-1.5*4e')?.checksum).toBe('right');
    for (const line of ['', '$', '$*00', '# SDDPT', 'SDDPT,12.3*00', '$SDDPT,12.3*4', '$SDDPT,12.3*4E7'])
      expect(readSentence(line)).toBeUndefined();
  });

  test('with one character changed is never taken for right', () => {
    const body = 'IIMWV,338,R,13.41,N,A';
    fc.assert(
      fc.property(fc.nat(body.length - 1), fc.integer({ min: 0x20, max: 0x7e }), (at, code) => {
        const char = String.fromCodePoint(code);
        fc.pre(char !== body[at] && char !== '*');
        const changed = body.slice(0, at) + char + body.slice(at + 1);
        expect(readSentence(`$${changed}*${sentenceChecksum(body)}`)?.checksum).toBe('wrong');
      }),
    );
  });
});
