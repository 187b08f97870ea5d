import { describe, expect, it } from 'vitest';
import { readingsOf, readingsOfPgn, readingsOfSentence } from './message-readings.ts';
import { pgnInfo } from './pgns.ts';
import { readingIds } from './reading-ids.ts';

const named = (entries: readonly { reading: string }[]) => entries.map((entry) => entry.reading);

describe('which readings a message gives', () => {
  it('lets the offset travel in 128267 and DPT, and not in DBT: depth below keel comes from DPT only (MS-84, field lists)', () => {
    expect(readingsOfPgn(128267)).toMatchObject([{ reading: 'depth', withOffset: true }]);
    expect(readingsOfSentence('DPT')).toMatchObject([{ reading: 'depth', withOffset: true }]);
    expect(readingsOfSentence('DBT')).toMatchObject([{ reading: 'depth', reference: 'transducer', withOffset: false }]);
  });

  it('leaves the reference of a bus heading open and names it in the heading sentences', () => {
    expect(readingsOfPgn(127250)[0]).toEqual({ reading: 'heading', source: 'message-fields' });
    expect(readingsOfSentence('HDM')[0]?.reference).toBe('magnetic');
    expect(readingsOfSentence('HDG')[0]?.reference).toBe('magnetic');
    expect(readingsOfSentence('HDT')[0]?.reference).toBe('true');
    expect(readingsOfSentence('THS')[0]?.reference).toBe('true');
  });

  it('does not take a heading from VHW, which a log without a compass may invent', () => {
    expect(named(readingsOfSentence('VHW'))).toEqual(['speed-water']);
  });

  it('has no engine sentence: RPM alone is not the engine', () => {
    expect(readingsOfSentence('RPM')).toEqual([]);
  });

  it('takes true wind from a sender only where its sheet says so', () => {
    for (const wind of [readingsOfPgn(130306), readingsOfSentence('MWV')])
      expect(wind.map((entry) => [entry.reading, entry.ifSaid ?? false])).toEqual([
        ['wind-apparent', false],
        ['wind-true', true],
      ]);
  });

  it('lets one tank message stand for fuel and for water', () => {
    expect(named(readingsOfPgn(127505))).toEqual(['fuel-level', 'water-level']);
  });

  it('gives position, course, time and variation from RMC', () => {
    expect(named(readingsOfSentence('RMC'))).toEqual(['position', 'course-speed-ground', 'time-date', 'variation']);
  });

  it('gives nothing for the protocol messages and for a number it does not know', () => {
    for (const pgn of [59904, 60928, 126208, 126996, 65300, 1]) expect(readingsOfPgn(pgn)).toEqual([]);
    expect(readingsOfSentence('QQQ')).toEqual([]);
  });

  it('names only readings and messages that the other tables know', () => {
    const known = new Set<string>(readingIds);
    for (let pgn = 59_000; pgn < 131_072; pgn += 1) {
      const given = readingsOfPgn(pgn);
      if (given.length === 0) continue;
      expect(pgnInfo(pgn), `PGN ${pgn}`).toBeDefined();
      for (const entry of given) expect(known).toContain(entry.reading);
    }
  });

  it('takes a bare reading as itself', () => {
    expect(readingsOf({ reading: 'camera' })).toEqual([{ reading: 'camera' }]);
    expect(named(readingsOf({ pgn: 129025 }))).toEqual(['position']);
    expect(named(readingsOf({ sentence: 'XTE' }))).toEqual(['cross-track']);
  });
});
