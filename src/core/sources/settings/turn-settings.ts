import type { ReadingId } from '../../facts/reading-ids.ts';
import type { PortNetwork, PortNode } from '../../readings/port-network.ts';
import type { ChosenSources } from '../choose-sources.ts';
import { logHeadings } from '../log-headings.ts';
import { messagePorts } from '../relied-messages.ts';
import type { Setting } from './port-settings.ts';

interface Passed {
  readonly from: PortNode;
  readonly to: PortNode;
  readonly readings: Set<ReadingId>;
  readonly at: Set<string>;
}

/** Every pair of ports of a unit between which a message that is relied on is turned; what a unit measures is no setting. */
const passedOn = (network: PortNetwork, chosen: readonly ChosenSources[]): Passed[] => {
  const found = new Map<string, Passed>();
  for (const { need, primary, backups } of chosen) {
    for (const way of [primary, ...backups.map((backup) => backup.way)]) {
      way.ports.forEach((port, at) => {
        const [from, to] = [network.nodes.get(port), network.nodes.get(way.ports[at + 1] ?? '')];
        if (from === undefined || to === undefined || from.kit !== to.kit || from.group.includes(to)) return;
        if (!messagePorts.has(from.port.protocol) || !messagePorts.has(to.port.protocol)) return;
        const key = `${from.id} ${to.id}`;
        const entry = found.get(key) ?? { from, to, readings: new Set(), at: new Set() };
        found.set(key, entry);
        entry.readings.add(need.reading);
        entry.at.add(need.at);
      });
    }
  }
  return [...found.values()];
};

const others = ({ memberships, kit }: PortNode): Set<string> =>
  new Set(memberships.flatMap(({ net }) => net.members.map(({ node }) => node.kit)).filter((unit) => unit !== kit));

const isGivenTo = ({ memberships }: PortNode, reading: ReadingId): boolean =>
  memberships.some(({ net }) => net.members.some(({ talks, node }) => talks && node.gives.has(reading)));

/** Readings a unit would give back to the very unit it has them from: in at one port, round by the bus, out at another. */
const echoes = ({ nodesOf }: PortNetwork): Setting[] =>
  [...nodesOf.values()].flatMap((nodes) =>
    nodes.flatMap((input) =>
      input.turnsFrom.flatMap(({ turn, to }) =>
        nodes.flatMap((back) =>
          back.turnsFrom.flatMap(({ turn: backTurn, to: output }): Setting[] => {
            if (back !== to || input.port.protocol !== 'nmea0183' || output.port.protocol !== 'nmea0183') return [];
            const readings = turn.carries
              .map(({ reading }) => reading)
              .filter((reading) => backTurn.carries.some((carry) => carry.reading === reading))
              .filter((reading) => output.gives.has(reading) && isGivenTo(input, reading));
            const away = others(output);
            if (readings.length === 0 || ![...others(input)].some((unit) => away.has(unit))) return [];
            return [{ kit: input.kit, port: input.id, does: 'no-echo', readings, at: [], to: output.id }];
          }),
        ),
      ),
    ),
  );

/** Which way each converter and bridge passes what on, and what it must not pass. */
export const turnSettings = (network: PortNetwork, chosen: readonly ChosenSources[]): Setting[] => [
  ...passedOn(network, chosen).map(
    ({ from, to, readings, at }): Setting => ({
      kit: from.kit,
      port: from.id,
      does: 'pass',
      readings: [...readings],
      at: [...at],
      to: to.id,
    }),
  ),
  ...echoes(network),
  ...logHeadings(network).map(
    ({ log, input, to }): Setting => ({
      kit: input.split('.')[0] ?? input,
      port: input,
      does: 'no-heading',
      sentence: 'VHW',
      readings: ['heading'],
      at: [],
      source: log,
      to,
    }),
  ),
];
