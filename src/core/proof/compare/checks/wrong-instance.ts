import { instanceOf } from '../../survey/draft-sends.ts';
import type { Check } from '../check.ts';
import { sendersOf } from '../find-messages.ts';
import { messageWords } from '../message-words.ts';
import { deviceSays, lastOf, listed } from '../say.ts';

/** A tank, engine or battery under another number than planned. */
export const wrongInstance: Check = {
  id: 'wrong-instance',
  title: 'A unit sends under another number than planned.',
  level: 'fault',
  sources: ['pgn-database'],
  find: ({ planned, buses }) =>
    buses.flatMap((bus) =>
      bus.sends.flatMap(({ unit, message, instances }) =>
        sendersOf(bus, unit).flatMap((sender) => {
          const parts = sender.sends.find(({ pgn }) => pgn === message)?.parts ?? [];
          const heard = [...new Set(parts.flatMap((part) => instanceOf(Number(message), part) ?? []))];
          const missing = instances.filter((instance) => !heard.includes(instance));
          if (instances.length === 0 || heard.length === 0 || missing.length === 0) return [];
          return [
            {
              about: [unit],
              apart: message,
              says: `${deviceSays(planned, bus, sender)} sends ${messageWords(message)} as number ${listed(heard.sort((a, b) => a - b).map(String))}; planned is ${listed(instances.map(String))}.`,
              device: deviceSays(planned, bus, sender),
              message,
              ...lastOf(bus.evidenceOf(sender, Number(message))[0]),
              cure: `Set number ${listed(missing.map(String))} in the unit, or change the number in the boat file where the unit is right.`,
            },
          ];
        }),
      ),
    ),
};
