import { canonicalSensor } from './canonical-sensor.ts';
import type { DriveOutput } from './drive.ts';
import { byCodeUnit } from './ids.ts';
import type { Hears, Plug, Port, Sends, Sheet, Turn } from './sheet.ts';
import { sortedBy } from './sorted-by.ts';

const inOrder = (words: readonly string[]): string[] => [...words].sort(byCodeUnit);

const byMessage = (said: Sends | Hears): (string | number | undefined)[] => [
  said.pgn,
  said.sentence,
  said.reading,
  said.instance,
];

const canonicalPort = (port: Port): Port => ({
  ...port,
  ...(port.sends === undefined ? {} : { sends: sortedBy(port.sends, byMessage) }),
  ...(port.hears === undefined ? {} : { hears: sortedBy(port.hears, byMessage) }),
});

const canonicalPlug = (plug: Plug): Plug => {
  if (plug.conductors === undefined) return plug;
  const conductors = plug.conductors.map((conductor) => ({ ...conductor, ports: inOrder(conductor.ports) }));
  return { ...plug, conductors: sortedBy(conductors, (conductor) => [conductor.label]) };
};

const canonicalTurn = (turn: Turn): Turn => {
  const carries = turn.carries.map((carried) =>
    carried.loses === undefined ? carried : { ...carried, loses: [...carried.loses].sort(byCodeUnit) },
  );
  return { ...turn, carries: sortedBy(carries, (carried) => [carried.reading, carried.instance]) };
};

const canonicalPair = ([a, b]: readonly [string, string]): [string, string] => (a <= b ? [a, b] : [b, a]);

const ascending = (values: readonly number[]): number[] => [...values].sort((one, other) => one - other);

const canonicalOutput = (output: DriveOutput): DriveOutput => ({
  ...output,
  works: [...output.works].sort(byCodeUnit),
  ...(output.motorV === undefined ? {} : { motorV: ascending(output.motorV) }),
  ...(output.clutch?.clutchV === undefined
    ? {}
    : { clutch: { ...output.clutch, clutchV: ascending(output.clutch.clutchV) } }),
  ...(output.rudder === undefined
    ? {}
    : { rudder: { ...output.rudder, hears: [...output.rudder.hears].sort(byCodeUnit) } }),
});

/** The same sheet with every list in one order: by id, by message, by reading. */
export const canonicalSheet = (sheet: Sheet): Sheet => {
  const { together, turns, inLine, power, driveOutput, cutout, sensor, antenna } = sheet;
  return {
    ...sheet,
    plugs: sortedBy(sheet.plugs.map(canonicalPlug), (plug) => [plug.id]),
    ports: sortedBy(sheet.ports.map(canonicalPort), (port) => [port.id]),
    ...(together === undefined ? {} : { together: sortedBy(together.map(inOrder), (group) => [group.join(' ')]) }),
    ...(turns === undefined
      ? {}
      : { turns: sortedBy(turns.map(canonicalTurn), (turn) => [turn.fromPort, turn.toPort]) }),
    ...(inLine === undefined ? {} : { inLine: canonicalPair(inLine) }),
    ...(power === undefined ? {} : { power: sortedBy(power, (entry) => [entry.port]) }),
    ...(sensor === undefined ? {} : { sensor: canonicalSensor(sensor) }),
    ...(antenna === undefined ? {} : { antenna: { ...antenna, for: inOrder(antenna.for) as typeof antenna.for } }),
    ...(driveOutput === undefined ? {} : { driveOutput: canonicalOutput(driveOutput) }),
    ...(cutout?.screws === undefined
      ? {}
      : { cutout: { ...cutout, screws: sortedBy(cutout.screws, ({ xMm, yMm, holeMm }) => [xMm, yMm, holeMm]) } }),
  };
};
