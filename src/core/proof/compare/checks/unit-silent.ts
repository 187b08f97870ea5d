import type { Check } from '../check.ts';
import { listed, unitName } from '../say.ts';

/** A planned unit that nobody heard on its wire. */
export const unitSilent: Check = {
  id: 'unit-silent',
  title: 'A planned unit was not heard.',
  level: 'fault',
  sources: ['choice-proof'],
  find: ({ planned, units, messages, buses, lines }) =>
    units
      // On a wire that is silent altogether that is what is told.
      .filter(({ on }) => [...buses, ...lines].some(({ id, wire }) => id === on && wire.count > 0))
      .filter(({ state }) => state === 'silent')
      .map(({ unit, on }) => {
        const twins = units.filter(
          (other) => other.on === on && other.state === 'alike' && other.orElse.includes(unit),
        );
        const ids = [unit, ...twins.map((twin) => twin.unit)];
        const due = messages.find(
          (one) => one.on === on && one.port.startsWith(`${unit}.`) && one.plannedMs !== undefined,
        );
        const names = listed(
          ids.map((id) => unitName(planned, id)),
          'or',
        );
        return {
          about: ids,
          says:
            twins.length === 0 ? `${names} was not heard.` : `One of these, planned alike, was not heard: ${names}.`,
          device: names,
          ...(due === undefined ? {} : { message: due.message }),
          cure: 'See that it is switched on, then its plug, its drop and its feed; where other units beyond it are silent too, look at the cable between.',
        };
      }),
};
