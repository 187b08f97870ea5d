import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { AisWriter, vdmSentences } from '../../../../tests/recordings/ais-sentence.ts';
import { degreesOfRadians } from '../../units/compass-angle.ts';
import { knotsOfMetresPerSecond } from '../../units/knots.ts';
import { aisBits } from './ais-bits.ts';
import { startAisSentences } from './ais-sentences.ts';

const mmsi = 123_456_789;
const readAll = (sentences: readonly string[]) => {
  const ais = startAisSentences();
  const reports = sentences.map((sentence) => ais.take(sentence)).filter((report) => report !== undefined);
  return { reports, counts: ais.counts() };
};
const readOne = (writer: AisWriter) => readAll(vdmSentences(writer)).reports[0];
const head = (type: number): AisWriter => new AisWriter().number(type, 6).number(0, 2).number(mmsi, 30);

const classA = ({
  turn = -128,
  sog = 1023,
  lon = 181 * 600_000,
  lat = 91 * 600_000,
  cog = 3600,
  heading = 511,
  status = 15,
}) =>
  head(1)
    .number(status, 4)
    .number(turn, 8)
    .number(sog, 10)
    .number(0, 1)
    .number(lon, 28)
    .number(lat, 27)
    .number(cog, 12)
    .number(heading, 9)
    .number(60, 6)
    .number(0, 25);

const voyage = head(5)
  .number(0, 2)
  .number(9_074_729, 30)
  .text('XX1234', 7)
  .text('INVENTED SHIP', 20)
  .number(36, 8)
  .number(10, 9)
  .number(3, 9)
  .number(1, 6)
  .number(3, 6)
  .number(1, 4)
  .number(0, 20)
  .number(19, 8)
  .text('NOWHERE', 20)
  .number(0, 2);

describe('AIS sentences (ITU-R M.1371, layout from memory)', () => {
  test('MS-81: an invented report of class A (own encoder)', () => {
    const { reports, counts } = readAll(['!AIVDM,1,1,,A,11mg=5@P10w?sm0O2dL8@Ovt0000,0*33']);
    const [report] = reports;
    expect(report).toMatchObject({ type: 1, mmsi: 123_456_789, own: false });
    expect(report?.longitude).toBeCloseTo(-10.5, 6);
    expect(report?.latitude).toBeCloseTo(54.25, 6);
    expect(knotsOfMetresPerSecond(report?.speed ?? 0)).toBeCloseTo(6.4, 6);
    expect(degreesOfRadians(report?.course ?? 0)).toBeCloseTo(211.3, 6);
    expect(report).not.toHaveProperty('heading');
    expect(aisBits('11mg=5@P10w?sm0O2dL8@Ovt0000', 0)?.length).toBe(168);
    expect(counts).toEqual({ sentences: 1, messages: 1, incomplete: 0, notDecodable: 0, openAtEnd: 0 });
  });

  test('what a ship does not know is absent: no place, speed, course, heading, turn or status', () => {
    expect(readOne(classA({}))).toEqual({ type: 1, mmsi, own: false });
  });

  test('a turn is told by its root, and one too fast to be measured is none', () => {
    const turn = readOne(classA({ turn: -47 }))?.rateOfTurn ?? 0;
    expect(degreesOfRadians(turn) * 60).toBeCloseTo(-((47 / 4.733) ** 2), 6);
    expect(readOne(classA({ turn: 127 }))).not.toHaveProperty('rateOfTurn');
  });

  test('a voyage in two sentences is one message, once both are in and in order', () => {
    const parts = vdmSentences(voyage, { group: 3 });
    expect(parts).toHaveLength(2);
    const expected = {
      type: 5,
      mmsi,
      own: false,
      imo: 9_074_729,
      callSign: 'XX1234',
      name: 'INVENTED SHIP',
      shipType: 36,
      length: 13,
      beam: 4,
      fromBow: 10,
      fromStarboard: 3,
      draught: 1.9,
      destination: 'NOWHERE',
    };
    expect(readAll(parts)).toMatchObject({ reports: [expected], counts: { sentences: 2, messages: 1, incomplete: 0 } });
    expect(readAll([...parts].reverse())).toMatchObject({ reports: [], counts: { incomplete: 1, openAtEnd: 1 } });
    expect(readAll([...parts.slice(0, 1), ...parts]).counts).toMatchObject({ messages: 1, incomplete: 1 });
  });

  test('parts of two messages may come mixed; a receiver that only begins them does not fill the memory', () => {
    const [a = '', b = ''] = vdmSentences(voyage, { group: 1 });
    const [c = '', d = ''] = vdmSentences(voyage, { group: 2 });
    expect(readAll([a, c, b, d]).counts).toMatchObject({ messages: 2, incomplete: 0 });
    const begun = Array.from(
      { length: 500 },
      (_unused, at) =>
        `!A${String.fromCharCode(65 + (at % 26))}VDM,9,1,${at % 10},${String.fromCharCode(65 + (at % 7))},1,0`,
    );
    expect(readAll(begun).counts.openAtEnd).toBeLessThanOrEqual(64);
  });

  test('class B: position, position with name and size, and both static parts', () => {
    const place = (type: number) =>
      head(type)
        .number(0, 8)
        .number(50, 10)
        .number(0, 1)
        .number(-6_300_000, 28)
        .number(32_550_000, 27)
        .number(900, 12)
        .number(91, 9)
        .number(0, 6);
    expect(readOne(place(18).number(0, 29))).toMatchObject({ type: 18, longitude: -10.5, latitude: 54.25 });
    const extended = place(19)
      .number(0, 4)
      .text('B BOAT', 20)
      .number(37, 8)
      .number(4, 9)
      .number(6, 9)
      .number(1, 6)
      .number(2, 6)
      .number(0, 11);
    expect(readOne(extended)).toMatchObject({
      type: 19,
      name: 'B BOAT',
      shipType: 37,
      length: 10,
      beam: 3,
      fromBow: 4,
      fromStarboard: 2,
    });
    expect(readOne(head(24).number(0, 2).text('B BOAT', 20))).toEqual({ type: 24, mmsi, own: false, name: 'B BOAT' });
    const partB = head(24)
      .number(1, 2)
      .number(36, 8)
      .text('ABC', 3)
      .number(0, 24)
      .text('XX9', 7)
      .number(4, 9)
      .number(6, 9)
      .number(1, 6)
      .number(2, 6)
      .number(0, 6);
    expect(readOne(partB)).toEqual({
      type: 24,
      mmsi,
      own: false,
      shipType: 36,
      callSign: 'XX9',
      length: 10,
      beam: 3,
      fromBow: 4,
      fromStarboard: 2,
    });
  });

  test('the own ship is told from others, and a type that is not read still says who sent it', () => {
    const [own = ''] = vdmSentences(classA({ heading: 45 }), { formatter: 'VDO' });
    expect(readAll([own]).reports[0]).toMatchObject({ own: true, mmsi });
    expect(readOne(head(8).number(0, 100))).toEqual({ type: 8, mmsi, own: false });
  });

  test.each([
    '!AIVDM,1,1,,A,,0',
    '!AIVDM,1,1,,A,1,0',
    '!AIVDM,1,1,,A,0000000000,0',
    '!AIVDM,1,2,,A,11mg=5@P10,0',
    '$AIVDM,1,1,,A,1,0',
    '!AIVDM,1,1,,A,11mg~,0',
  ])('%s is no message', (sentence) => {
    expect(readAll([sentence]).reports).toEqual([]);
  });

  test('what an encoder wrote is what is read, whatever the numbers', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: -107_999_999, max: 107_999_999 }),
        fc.integer({ min: -53_999_999, max: 53_999_999 }),
        fc.nat(1022),
        fc.nat(3599),
        fc.nat(359),
        (lon, lat, sog, cog, heading) => {
          const report = readOne(classA({ lon, lat, sog, cog, heading, status: 0 }));
          expect(report?.longitude).toBeCloseTo(lon / 600_000, 9);
          expect(report?.latitude).toBeCloseTo(lat / 600_000, 9);
          expect(knotsOfMetresPerSecond(report?.speed ?? 0)).toBeCloseTo(sog / 10, 9);
          expect(degreesOfRadians(report?.course ?? 0)).toBeCloseTo(cog / 10, 9);
          expect(degreesOfRadians(report?.heading ?? 0)).toBeCloseTo(heading, 9);
          expect(report?.status).toBe(0);
        },
      ),
    );
  });
});
