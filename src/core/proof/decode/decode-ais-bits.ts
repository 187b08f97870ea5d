import type { AisBits } from './ais-bits.ts';
import { type AisReport, reportOf } from './ais-report.ts';

const radians = Math.PI / 180;
const metresPerSecond = 1852 / 3600;
const minutesInDegree = 60;
const stepsInMinute = 10_000;

const unless = (value: number | undefined, isNone: (value: number) => boolean): number | undefined =>
  value === undefined || isNone(value) ? undefined : value;
const scaled = (value: number | undefined, factor: number): number | undefined =>
  value === undefined ? undefined : value * factor;
const dividedBy = (value: number | undefined, parts: number): number | undefined =>
  value === undefined ? undefined : value / parts;

/** Degrees of a place in steps of a ten-thousandth of a minute; beyond `most` it is none (181°, 91°). */
const degreesAt = (bits: AisBits, from: number, width: number, most: number): number | undefined =>
  unless(dividedBy(bits.signed(from, width), minutesInDegree * stepsInMinute), (value) => Math.abs(value) > most);

/** Speed in tenths of a knot: 1023 is none. Course in tenths of a degree: 3600 is none. Heading in degrees: 511 is none. */
const speedAt = (bits: AisBits, from: number) =>
  scaled(
    dividedBy(
      unless(bits.number(from, 10), (value) => value === 1023),
      10,
    ),
    metresPerSecond,
  );
const courseAt = (bits: AisBits, from: number) =>
  scaled(
    dividedBy(
      unless(bits.number(from, 12), (value) => value >= 3600),
      10,
    ),
    radians,
  );
const headingAt = (bits: AisBits, from: number) =>
  scaled(
    unless(bits.number(from, 9), (value) => value >= 360),
    radians,
  );

const mostMeasuredTurn = 126;
/** Steps of a turn are 4.733 x the root of degrees a minute; 127 either way tells only that it turns, 128 nothing. */
const turnAt = (bits: AisBits, from: number): number | undefined => {
  const steps = unless(bits.signed(from, 8), (value) => Math.abs(value) > mostMeasuredTurn);
  return steps === undefined ? undefined : (Math.sign(steps) * (steps / 4.733) ** 2 * radians) / 60;
};

const unlessZero = (value: number | undefined): number | undefined => unless(value, (one) => one === 0);

/** Length and beam are sums of what lies either way of the antenna; without them the whole is not known. */
const sizeAt = (bits: AisBits, from: number): Pick<AisReport, never> & Record<string, number | undefined> => {
  const [bow, stern] = [bits.number(from, 9), bits.number(from + 9, 9)];
  const [port, starboard] = [bits.number(from + 18, 6), bits.number(from + 24, 6)];
  if (bow === undefined || stern === undefined || port === undefined || starboard === undefined) return {};
  const isPlaced = bow > 0 || port > 0;
  return {
    length: unlessZero(bow + stern),
    beam: unlessZero(port + starboard),
    fromBow: isPlaced ? bow : undefined,
    fromStarboard: isPlaced ? starboard : undefined,
  };
};

type Said = { readonly [Key in keyof AisReport]?: AisReport[Key] | undefined };

const positionOfClassA = (bits: AisBits): Said => ({
  status: unless(bits.number(38, 4), (value) => value === 15),
  rateOfTurn: turnAt(bits, 42),
  speed: speedAt(bits, 50),
  longitude: degreesAt(bits, 61, 28, 180),
  latitude: degreesAt(bits, 89, 27, 90),
  course: courseAt(bits, 116),
  heading: headingAt(bits, 128),
});

const positionOfClassB = (bits: AisBits): Said => ({
  speed: speedAt(bits, 46),
  longitude: degreesAt(bits, 57, 28, 180),
  latitude: degreesAt(bits, 85, 27, 90),
  course: courseAt(bits, 112),
  heading: headingAt(bits, 124),
});

const extendedOfClassB = (bits: AisBits): Said => ({
  ...positionOfClassB(bits),
  name: bits.text(143, 120),
  shipType: unlessZero(bits.number(263, 8)),
  ...sizeAt(bits, 271),
});

const voyage = (bits: AisBits): Said => ({
  imo: unlessZero(bits.number(40, 30)),
  callSign: bits.text(70, 42),
  name: bits.text(112, 120),
  shipType: unlessZero(bits.number(232, 8)),
  ...sizeAt(bits, 240),
  draught: dividedBy(unlessZero(bits.number(294, 8)), 10),
  destination: bits.text(302, 120),
});

const isAuxiliary = (mmsi: number): boolean => Math.floor(mmsi / 10_000_000) === 98;

/** Part A holds the name; in part B of a boat that belongs to a ship the size gives way to the ship’s number. */
const staticOfClassB = (bits: AisBits, mmsi: number): Said =>
  bits.number(38, 2) === 0
    ? { name: bits.text(40, 120) }
    : {
        shipType: unlessZero(bits.number(40, 8)),
        callSign: bits.text(90, 42),
        ...(isAuxiliary(mmsi) ? {} : sizeAt(bits, 132)),
      };

const saidBy = (bits: AisBits, type: number, mmsi: number): Said => {
  switch (type) {
    case 1:
    case 2:
    case 3:
      return positionOfClassA(bits);
    case 5:
      return voyage(bits);
    case 18:
      return positionOfClassB(bits);
    case 19:
      return extendedOfClassB(bits);
    case 24:
      return staticOfClassB(bits, mmsi);
    default:
      return {};
  }
};

/**
 * Reads an AIS message: types 1, 2, 3, 5, 18, 19 and 24 in full, of others who sent them (source:
 * memory-ais-layout). Undefined when it is too short to say that.
 */
export const decodeAisBits = (bits: AisBits, own: boolean): AisReport | undefined => {
  const type = bits.number(0, 6);
  const mmsi = bits.number(8, 30);
  if (type === undefined || mmsi === undefined || type === 0 || type > 27) return undefined;
  return reportOf({ type, mmsi, own }, saidBy(bits, type, mmsi));
};
