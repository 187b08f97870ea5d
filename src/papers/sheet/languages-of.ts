import type { Protocol, Sheet } from '../../core/boat/sheet.ts';
import { byCodeUnit } from '../../core/units/by-code-unit.ts';

/** Languages as they are named on a drawing; what carries no message has none. */
const names: ReadonlyMap<Protocol, string> = new Map([
  ['nmea2000', '2000'],
  ['nmea0183', '0183'],
  ['single-wire', 'single wire'],
  ['ethernet', 'Ethernet'],
  ['analog', 'analog'],
  ['engine-can', 'engine bus'],
  ['modbus', 'Modbus'],
  ['usb', 'USB'],
  ['wifi', 'Wi-Fi'],
]);

/** Kinds of unit whose whole task is to turn one language into another; a screen that does so too is still a screen. */
const turningKinds = /converter|gateway|multiplexer|adapter|bridge/;

/** Whether a unit is drawn as a converter: a square with a diagonal. */
export const isConverter = (sheet: Sheet | undefined): boolean =>
  sheet !== undefined && turningKinds.test(sheet.kind) && languagesOf(sheet).length > 1;

/** The languages a unit turns into each other, in alphabetical order. */
export const languagesOf = (sheet: Sheet): string[] => {
  const protocols = new Map(sheet.ports.map((port) => [port.id, port.protocol]));
  const turned = (sheet.turns ?? []).flatMap((turn) => [protocols.get(turn.fromPort), protocols.get(turn.toPort)]);
  const named = turned.flatMap((protocol) => (protocol === undefined ? [] : (names.get(protocol) ?? [])));
  return [...new Set(named)].sort(byCodeUnit);
};
