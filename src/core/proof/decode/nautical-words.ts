import { degreesOfRadians, trueBearingDeg } from '../../units/compass-angle.ts';
import type { FieldValues } from './read-field.ts';

const degrees = (value: number): string => `${value.toFixed(1)}°`;

/** References of a direction as the bus numbers them (lookup DIRECTION_REFERENCE: pgn-database). */
const isTrue = 0;
const isMagnetic = 1;

/** What a direction is measured from, in a word; undefined where the message does not say. */
export const referenceWord = (reference: number | undefined): string | undefined => {
  if (reference === isTrue) return 'true';
  return reference === isMagnetic ? 'magnetic' : undefined;
};

const bearingWords = (bearingDeg: number, reference: number | undefined): string =>
  `${degrees(bearingDeg)} ${referenceWord(reference) ?? 'of no told reference'}`;

/** A variation or deviation in words: `2.4° E`. East is positive. */
export const variationWords = (rad: number): string =>
  `${degrees(Math.abs(degreesOfRadians(rad)))} ${rad < 0 ? 'W' : 'E'}`;

/** An angle with its sign: `-5.7°`. */
export const turnWords = (rad: number): string => degrees(degreesOfRadians(rad));

/** A heading, and where it is magnetic what it is true: sensor heading + deviation + variation, east positive. */
export const headingWords = ({ heading, deviation, variation, reference }: FieldValues): string | undefined => {
  if (heading === undefined) return undefined;
  const sensorDeg = degreesOfRadians(heading);
  const said = bearingWords(sensorDeg, reference);
  if (reference !== isMagnetic) return said;
  if (variation === undefined) return `${said}, variation not told`;
  const magneticDeg = sensorDeg + degreesOfRadians(deviation ?? 0);
  const trueDeg = trueBearingDeg({ magneticDeg, variationDeg: degreesOfRadians(variation) });
  const bent = deviation === undefined ? '' : `deviation ${variationWords(deviation)} and `;
  return `${said}, with ${bent}variation ${variationWords(variation)} ${degrees(trueDeg)} true`;
};

/** A course over ground; undefined where the boat lies still and tells none. */
export const courseWords = ({ cog, cogReference }: FieldValues): string | undefined =>
  cog === undefined ? undefined : bearingWords(degreesOfRadians(cog), cogReference);

/** What a depth offset leads to: positive to the waterline, negative to the keel (source: pgn-database). */
export const offsetWords = (offsetM: number): string =>
  `${Math.abs(offsetM).toFixed(2)} m to the ${offsetM < 0 ? 'keel' : 'waterline'}`;

/** Less than can be meant, and than is printed: an offset left as it came out of the box. */
const leastOffsetM = 0.005;

/** Whether somebody has set an offset. */
export const isOffsetSet = (offsetM: number | undefined): offsetM is number =>
  offsetM !== undefined && Math.abs(offsetM) >= leastOffsetM;

/** A depth below the transducer, and with the offset that below the keel or the waterline. */
export const depthWords = ({ depth, offset }: FieldValues): string | undefined => {
  if (depth === undefined) return undefined;
  const said = `${depth.toFixed(2)} m below the transducer`;
  if (!isOffsetSet(offset)) return `${said}, offset not set`;
  return `${said}, ${(depth + offset).toFixed(2)} m below the ${offset < 0 ? 'keel' : 'waterline'}`;
};

const sideWords = (angleDeg: number): string => {
  const toPort = angleDeg > 180;
  const sideDeg = toPort ? 360 - angleDeg : angleDeg;
  if (sideDeg < 0.05) return 'from ahead';
  return sideDeg > 179.95 ? 'from astern' : `${degrees(sideDeg)} to ${toPort ? 'port' : 'starboard'}`;
};

/** Where the wind comes from: a bearing where it is measured from north, else the side of the bow. */
export const windWords = ({ windAngle, reference }: FieldValues): string | undefined => {
  if (windAngle === undefined) return undefined;
  const angleDeg = degreesOfRadians(windAngle);
  return referenceWord(reference) === undefined ? sideWords(angleDeg) : `from ${bearingWords(angleDeg, reference)}`;
};
