import type { Check } from '../check.ts';
import { figure } from '../say.ts';

/** A recorder whose clock was set while it ran. */
export const clockStepped: Check = {
  id: 'clock-stepped',
  title: 'The recorder’s clock jumped.',
  level: 'advice',
  sources: ['choice-proof'],
  find: ({ buses, lines }) =>
    [...buses, ...lines].flatMap(({ id, wire }) => {
      const steps = wire.time?.clockSteps ?? [];
      const [first] = steps;
      if (first === undefined) return [];
      return [
        {
          about: [id],
          says: `The recorder’s clock jumped ${steps.length === 1 ? 'once,' : `${steps.length} times, first`} by ${figure(first.jumpS)} s; jumps of more than 60 s add no time here.`,
          cure: 'Set the recorder’s clock before the next recording, or keep it from being set while it records.',
        },
      ];
    }),
};
