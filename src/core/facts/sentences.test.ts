import { describe, expect, it } from 'vitest';
import { byCodeUnit } from '../boat/ids.ts';
import { lostInConversion, sentencePreference } from './conversion.ts';
import { howPairsJoin, nmea0183 } from './nmea0183.ts';
import { pgnInfo } from './pgns.ts';
import { sampleSentences } from './sample-sentences.ts';
import { usualEveryMs } from './sentence-rates.ts';
import { sentenceInfo, sentences } from './sentences.ts';

const charsPerSecond = (baud: number): number => baud / nmea0183.bitsPerChar.value;
const samples: ReadonlyMap<string, { readonly text?: string; readonly chars: number }> = new Map(
  Object.entries(sampleSentences),
);

/** XOR of the characters between start and star, two hexadecimal digits. */
const checksum = (body: string): string =>
  [...body]
    .reduce((sum, char) => sum ^ (char.codePointAt(0) ?? 0), 0)
    .toString(16)
    .toUpperCase()
    .padStart(2, '0');

describe('the sentences of NMEA 0183', () => {
  it('are 49, each once and in order', () => {
    const letters = sentences.map((info) => info.letters);
    expect(letters).toHaveLength(49);
    expect(letters).toEqual([...new Set(letters)].sort(byCodeUnit));
  });

  it('say what a recording of a boat showed: DBT 38 characters, RMC 68, VDM 37 to 78', () => {
    expect(sentenceInfo('DBT')?.chars).toEqual({
      least: 38,
      median: 38,
      most: 38,
      source: 'recorded-sentence-lengths',
    });
    expect(sentenceInfo('RMC')?.chars?.median).toBe(68);
    expect(sentenceInfo('VDM')?.chars).toMatchObject({ least: 37, median: 49, most: 78 });
    expect(sentenceInfo('VDM')?.everyMs).toBeUndefined();
    expect(sentenceInfo('QQQ')).toBeUndefined();
  });

  it('come as often as the table of rates says', () => {
    expect(sentences.map(({ letters, everyMs }) => [letters, everyMs])).toEqual(
      sentences.map(({ letters }) => [letters, usualEveryMs(letters)]),
    );
  });

  it('name messages of the bus that the table of messages knows, and are never longer than 82 characters but one', () => {
    const unknown = sentences.flatMap(({ relatedPgns }) => relatedPgns).filter((pgn) => pgnInfo(pgn) === undefined);
    expect(unknown).toEqual([]);
    const long = sentences.filter(({ chars }) => (chars?.most ?? 0) > nmea0183.sentenceMost.value);
    expect(long.map(({ letters }) => letters)).toEqual(['XDR']);
    for (const { chars } of sentences) {
      if (chars !== undefined)
        expect([chars.least, chars.median, chars.most].toSorted((a, b) => a - b)).toEqual([
          chars.least,
          chars.median,
          chars.most,
        ]);
    }
  });

  it('a converter takes DPT before DBT, MWV before VWR, HDG before HDM, VTG before RMC (MS-87, one converter handbook)', () => {
    const first = (reading: 'depth' | 'wind-apparent' | 'heading' | 'course-speed-ground') =>
      sentencePreference.get(reading)?.[0];
    expect([first('depth'), first('wind-apparent'), first('heading'), first('course-speed-ground')]).toEqual([
      'DPT',
      'MWV',
      'HDG',
      'VTG',
    ]);
  });
});

describe('a converter to NMEA 0183', () => {
  it('loses the second rudder, engine data and tanks unless its manual says otherwise (MS-86, practice)', () => {
    const words = lostInConversion.lost.join('; ');
    for (const word of ['second rudder', 'engine data', 'tank', 'instance']) expect(words).toContain(word);
  });
});

describe('an NMEA 0183 line', () => {
  it('to an old single wire leaves B open: tied to ground it would drive current at every bit', () => {
    expect(howPairsJoin['pair to single wire'].open).toEqual(['B']);
    expect(howPairsJoin['single wire to pair'].joins).toContain('talker 0 V to B');
  });

  it('carries 480 characters a second at 4800 baud and 3840 at 38400 (MS-77, E. S. Raymond, NMEA Revealed, 2025)', () => {
    expect(charsPerSecond(nmea0183.baud.value)).toBe(480);
    expect(charsPerSecond(nmea0183.fastBaud.value)).toBe(3840);
  });

  it('carries 5.85 sentences of full length a second, or 46.83 (BB-46)', () => {
    const full = (baud: number): number => charsPerSecond(baud) / nmea0183.sentenceMost.value;
    expect(full(4800)).toBeCloseTo(5.85, 2);
    expect(full(38_400)).toBeCloseTo(46.83, 2);
  });

  it('is 90 % full at 4800 with ten instrument sentences, 11 % at 38400 (BB-48, computed)', () => {
    const once = ['RMC', 'GGA', 'VTG', 'GLL', 'DPT', 'DBT', 'VHW', 'MTW', 'HDG', 'MWV', 'MWV'];
    const charsPerS = once.reduce((sum, letters) => sum + (samples.get(letters)?.chars ?? 0), 0);
    expect(charsPerS).toBe(432);
    expect(charsPerS / charsPerSecond(4800)).toBeCloseTo(0.9, 3);
    expect(charsPerS / charsPerSecond(38_400)).toBeCloseTo(0.1125, 4);
    expect(charsPerS / charsPerSecond(4800)).toBeGreaterThan(nmea0183.planShare.value);
  });

  it('takes 9.8 one-slot AIS messages a second at 4800, 78.4 at 38400 (BB-50, computed)', () => {
    expect(charsPerSecond(4800) / sampleSentences.VDM.chars).toBeCloseTo(9.8, 1);
    expect(charsPerSecond(38_400) / sampleSentences.VDM.chars).toBeCloseTo(78.4, 1);
  });

  it('bears ten listeners of 2 mA at 2 V: 20 mA, a load of 100 ohm (BB-51, IEC 61162-1, second-hand)', () => {
    const amps = (nmea0183.fanOutMost.value * nmea0183.listenerMa.value) / 1000;
    expect(amps).toBeCloseTo(0.02, 6);
    expect(nmea0183.listenerAtV.value / amps).toBeCloseTo(100, 6);
  });
});

describe('the sample sentences', () => {
  it('are as long as they say and carry their checksum (BB-47: $HEHDT,098.0,T*2E has 19 characters)', () => {
    expect([sampleSentences.HDT.text, sampleSentences.HDT.chars]).toEqual(['$HEHDT,098.0,T*2E', 19]);
    for (const { text, chars } of samples.values()) {
      if (text === undefined) continue;
      expect(text.length + '\r\n'.length).toBe(chars);
      const [body = '', sum] = text.slice(1).split('*');
      expect(sum).toBe(checksum(body));
    }
  });
});
