import type { Plug, Sheet } from '../boat/sheet.ts';

const plugWithout = (plug: Plug, port: string): Plug =>
  plug.conductors === undefined
    ? plug
    : {
        ...plug,
        conductors: plug.conductors.map((one) => ({ ...one, ports: one.ports.filter((id) => id !== port) })),
      };

/** A sensor without the signal of a port; where that was all that is said of it, nothing is. */
const sensorWithout = (
  { signals = [], ...known }: NonNullable<Sheet['sensor']>,
  port: string,
): Pick<Sheet, 'sensor'> => {
  const left = signals.filter((one) => one.port !== port);
  const sensor = { ...known, ...(left.length === 0 ? {} : { signals: left }) };
  return Object.keys(sensor).length === 0 ? {} : { sensor };
};

/** A sheet without one of its ports, and without whatever it says of that port elsewhere. Pure. */
export const withoutPort = (
  { together, turns, inLine, power, driveOutput, sensor, ...sheet }: Sheet,
  port: string,
): Sheet => ({
  ...sheet,
  plugs: sheet.plugs.map((plug) => plugWithout(plug, port)),
  ports: sheet.ports.filter(({ id }) => id !== port),
  ...(together === undefined ? {} : { together: together.map((group) => group.filter((id) => id !== port)) }),
  ...(turns === undefined
    ? {}
    : { turns: turns.filter(({ fromPort, toPort }) => fromPort !== port && toPort !== port) }),
  ...(inLine === undefined || inLine.includes(port) ? {} : { inLine }),
  ...(power === undefined ? {} : { power: power.filter((one) => one.port !== port) }),
  ...(driveOutput === undefined || driveOutput.port === port ? {} : { driveOutput }),
  ...(sensor === undefined ? {} : sensorWithout(sensor, port)),
});
