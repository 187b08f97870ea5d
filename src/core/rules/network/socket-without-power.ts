import { lastPhase } from '../../boat/phase.ts';
import { networksOf } from '../../joins/networks.ts';
import { reservedW, socketGivesW, socketLoads } from '../../joins/socket-power.ts';
import type { Rule } from '../rule.ts';
import { sourceWords, unitName } from '../rule-words.ts';

/** A camera that lives on its network cable stays dark on a socket that gives no power, or too little of it. */
export const socketWithoutPower: Rule = {
  id: 'network/socket-without-power',
  level: 'fault',
  title: 'A unit that lives on its network cable hangs on a socket that does not feed it.',
  sources: ['ieee-poe'],
  check: ({ index, plan }) =>
    networksOf(index, lastPhase(index.boat), plan.joins)
      .flatMap((network) => socketLoads(index, network))
      .flatMap(({ port, deviceW, socket }) => {
        const [wantsW, givesW] = [reservedW(deviceW), socketGivesW(socket)];
        if (wantsW !== undefined && givesW >= wantsW) return [];
        const gives = givesW === 0 ? 'gives no power' : `gives ${givesW} W`;
        return [
          {
            about: [port, socket.id],
            says: `${unitName(index, port)} draws ${deviceW} W over its network cable${wantsW === undefined ? ', more than any class gives' : `, which takes ${wantsW} W at the socket`}; the socket on ${unitName(index, socket.id)} ${gives}.`,
            measured: { value: deviceW, unit: 'W' },
            limit: { value: givesW, unit: 'W', source: sourceWords('ieee-poe') },
            cure: 'Use a switch whose sockets give that power, or an injector in the line; 12 V put on the cable is not the same and may destroy the unit.',
          },
        ];
      }),
};
