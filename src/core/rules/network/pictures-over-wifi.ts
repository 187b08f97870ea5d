import { lastPhase } from '../../boat/phase.ts';
import { ethernetLimits } from '../../facts/ethernet.ts';
import { networksOf } from '../../joins/networks.ts';
import type { Rule } from '../rule.ts';
import { unitName } from '../rule-words.ts';

const pictures: ReadonlySet<string> = new Set(['radar-picture', 'sonar-picture']);

/** Pictures are sent to everybody at once; an access point repeats them at its slowest rate and has no time for anything else. */
export const picturesOverWifi: Rule = {
  id: 'network/pictures-over-wifi',
  level: 'advice',
  title: 'Pictures of radar or sonar reach a wifi that is one network with them.',
  sources: ['practice-ethernet'],
  check: ({ index, plan }) =>
    networksOf(index, lastPhase(index.boat), plan.joins).flatMap(({ ports, radios }) => {
      const senders = ports.filter(({ port }) => port.sends?.some(({ reading = '' }) => pictures.has(reading)));
      const [radio] = radios;
      if (radio === undefined || senders.length === 0) return [];
      const names = [...new Set(senders.map(({ id }) => unitName(index, id)))];
      return [
        {
          about: [...senders.map(({ kit }) => kit), ...radios.map((id) => id.split('.')[0] ?? id)],
          says: `The pictures of ${names.join(' and ')} go out to everybody on the network, up to ${ethernetLimits.radarPicture.value} Mbit/s each, and the wifi of ${unitName(index, radio)} is one network with them. It repeats them at its slowest rate, and phones lose their link though nobody looks.`,
          cure: 'Give the pictures a switch or a network of their own, or one that keeps such traffic from the sockets that did not ask for it; never bridge it to wifi.',
        },
      ];
    }),
};
