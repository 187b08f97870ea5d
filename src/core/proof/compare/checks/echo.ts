import { isMakersOwn } from '../../../facts/pgns.ts';
import { proofLimits } from '../../../facts/proof-limits.ts';
import type { Check } from '../check.ts';
import { messageWords } from '../message-words.ts';
import { atTime, deviceWords, reported } from '../say.ts';

/** One device that repeats what another has just said: a loop, or two bridges side by side. */
export const echo: Check = {
  id: 'echo',
  title: 'A message comes again from another device.',
  level: 'fault',
  sources: ['choice-proof'],
  find: ({ planned, buses }) =>
    buses.flatMap((bus) =>
      bus.watched.echoes
        .filter(({ contents, message }) => contents.size >= proofLimits.echoes.value && !isMakersOwn(Number(message)))
        .flatMap(({ of, by, message, count, firstUs }) => {
          const [first, second] = [reported(bus, of), reported(bus, by)];
          if (first === undefined || second === undefined) return [];
          const said = second.sends.find(({ pgn }) => pgn === message)?.messages ?? 0;
          if (count < said * proofLimits.echoShare.value) return [];
          return [
            {
              about: [bus.id, ...[first, second].flatMap((sender) => bus.unitOf(sender) ?? [])],
              apart: `${message}:${of.address ?? ''}:${by.address ?? ''}`,
              says: `${deviceWords(planned, bus, second)} repeats ${messageWords(message)} of ${deviceWords(planned, bus, first)} within 50 ms, ${count} times.`,
              device: deviceWords(planned, bus, second),
              message,
              ...atTime(firstUs),
              cure: 'Let one unit only pass messages on in each direction: switch the repeating off in this one, or take it off one of its two wires.',
            },
          ];
        }),
    ),
};
