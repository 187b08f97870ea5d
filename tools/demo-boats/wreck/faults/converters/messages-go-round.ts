import { taped } from '../../base.ts';
import { fillerSheet, withOwnBus } from '../../edits.ts';
import type { Fault } from '../../fault.ts';

const filler = fillerSheet('both-ways', 'Gateway that sends everything everywhere', 1);
const carries = [{ reading: 'speed-water' as const }];

/** Two gateways, each way round, between one bus and one pair of wires. */
export const convertersMessagesGoRound: Fault = {
  rule: 'converters/messages-go-round',
  about: ['round', 'gateway-a', 'gateway-b'],
  plant: (before) => {
    const boat = withOwnBus(before, {
      id: 'round',
      name: 'Round bus',
      sheet: {
        ...filler,
        kind: 'gateway',
        plugs: [...filler.plugs, { id: 'wires', connector: 'leads', gender: 'none' }],
        ports: [
          ...filler.ports,
          { id: 'in', onPlug: 'wires', protocol: 'nmea0183', baud: 4800, role: 'listen' },
          { id: 'out', onPlug: 'wires', protocol: 'nmea0183', baud: 4800, role: 'talk' },
        ],
        turns: [
          { fromPort: 'n2k', toPort: 'out', carries },
          { fromPort: 'in', toPort: 'n2k', carries },
        ],
      },
      kit: [
        { id: 'gateway-a', name: 'first gateway', place: 'panel-locker', tail: taped(0.3) },
        { id: 'gateway-b', name: 'second gateway', place: 'panel-locker', tail: taped(0.3) },
      ],
      walk: [{ place: 'panel-locker', tees: ['gateway-a.n2k', 'gateway-b.n2k', 'feed'] }],
    });
    return {
      ...boat,
      joins: [
        ...boat.joins,
        {
          id: 'round-pair',
          kind: 'nmea0183',
          members: [
            { kit: 'gateway-a', port: 'out', as: 'talk' },
            { kit: 'gateway-b', port: 'in', as: 'listen' },
          ],
          hold: 'fixed',
        },
      ],
    };
  },
};
