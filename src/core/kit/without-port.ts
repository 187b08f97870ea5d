import type { Plug, Sheet } from '../boat/sheet.ts';

const plugWithout = (plug: Plug, port: string): Plug =>
  plug.conductors === undefined
    ? plug
    : {
        ...plug,
        conductors: plug.conductors.map((one) => ({ ...one, ports: one.ports.filter((id) => id !== port) })),
      };

/** A sheet without one of its ports, and without whatever it says of that port elsewhere. Pure. */
export const withoutPort = ({ together, turns, inLine, power, driveOutput, ...sheet }: Sheet, port: string): Sheet => ({
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
});
