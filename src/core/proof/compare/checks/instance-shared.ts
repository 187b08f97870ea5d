import { instanceOf } from '../../survey/draft-sends.ts';
import type { SharedInstance } from '../../survey/survey-report.ts';
import { partWords } from '../../survey/survey-words.ts';
import type { Check } from '../check.ts';
import { deviceWords, lastOf, listed } from '../say.ts';
import type { SeenBus } from '../seen.ts';

/** Who sends a shared number with data; two functions of one box count once. */
const users = (bus: SeenBus, { pgn, instance, kind, addresses }: SharedInstance) =>
  bus.senders.filter((sender, at) => {
    const own = sender.address ?? sender.addresses.at(-1) ?? -1;
    const box = bus.matches.matches.find(({ senders }) => senders.includes(at))?.senders[0];
    const parts = sender.sends.find((sent) => sent.pgn === pgn)?.parts ?? [];
    const says = parts.some((part) => part.instance === instance && part.kind === kind && part.empty < part.messages);
    return addresses.includes(own) && says && (box === undefined || box === at);
  });

/** One number of a tank, engine or battery used by several senders. */
export const instanceShared: Check = {
  id: 'instance-shared',
  title: 'Several senders use one number.',
  level: 'fault',
  sources: ['pgn-database'],
  find: ({ planned, buses }) =>
    buses.flatMap((bus) =>
      bus.survey.sharedInstances.flatMap((shared) => {
        const { pgn, kind, instance } = shared;
        const senders = instanceOf(pgn, shared) === undefined ? [] : users(bus, shared);
        const [first] = senders;
        if (first === undefined || senders.length < 2) return [];
        const what = partWords(pgn, kind === undefined ? {} : { kind });
        return [
          {
            about: [bus.id, ...senders.flatMap((sender) => bus.unitOf(sender) ?? [])],
            apart: `${pgn}:${instance}${kind === undefined ? '' : `:${kind}`}`,
            says: `${listed(senders.map((sender) => deviceWords(planned, bus, sender)))} all send ${what} as number ${instance} (${pgn}); screens mix them up.`,
            device: deviceWords(planned, bus, first),
            message: pgn,
            ...lastOf(bus.evidenceOf(first, pgn)[0]),
            cure: 'Give each of them a number of its own, in the unit, then record again.',
          },
        ];
      }),
    ),
};
