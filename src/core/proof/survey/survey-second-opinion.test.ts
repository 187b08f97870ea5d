import { FromPgn } from '@canboat/canboatjs';
import { describe, expect, test } from 'vitest';
import { recordBus } from '../../../../tests/recordings/invented-bus.ts';
import { surveyRecording } from '../../../../tests/recordings/survey-recording.ts';
import { candumpBytes } from '../../../../tests/recordings/write-recording.ts';
import { isMakersOwn } from '../../facts/pgns.ts';

const bytes = candumpBytes(recordBus({ seconds: 12 }));
const report = surveyRecording(bytes);

/** The same recording through the decoder of another project. It skips makers' own messages it does not know. */
const second = (() => {
  const parser = new FromPgn();
  parser.on('error', () => undefined);
  parser.on('warning', () => undefined);
  const messages = new Map<number, number>();
  const claims = new Set<number>();
  let lenSum = 0;
  for (const line of String.fromCharCode(...bytes)
    .trim()
    .split('\n')) {
    const found = parser.parseString(line);
    if (found === undefined) continue;
    messages.set(found.pgn, (messages.get(found.pgn) ?? 0) + 1);
    if (found.pgn === 60_928 && found.src !== undefined) claims.add(found.src);
    const fields: Record<string, unknown> = { ...found.fields };
    if (typeof fields.loadEquivalency === 'number') lenSum += fields.loadEquivalency;
  }
  return { messages, claims, lenSum };
})();

describe('a second decoder (@canboat/canboatjs) over the same recording', () => {
  test('counts the same messages under every standard number', () => {
    const ours = report.byPgn.filter(({ pgn }) => !isMakersOwn(pgn)).map(({ pgn, messages }) => [pgn, messages]);
    const theirs = [...second.messages].filter(([pgn]) => !isMakersOwn(pgn)).sort(([a], [b]) => a - b);
    expect(ours).toEqual(theirs);
    expect(ours.length).toBeGreaterThan(14);
  });

  test('sees claims from the same addresses', () => {
    const named = report.senders.filter(({ name }) => name !== undefined).map(({ address }) => address);
    expect(named).toEqual([...second.claims].sort((a, b) => a - b));
  });

  test('adds up the same LEN', () => {
    expect(report.lenSum).toBe(second.lenSum);
  });
});
