import type { Boat } from '../boat/boat-schema.ts';
import type { EditCall } from '../boat/history.ts';
import { byCodeUnit } from '../boat/ids.ts';
import type { Plan } from '../plan-shape.ts';
import { feedHer } from './feed-her.ts';
import { sheetedUnits } from './usual-needs-at.ts';

// reason: a plan names edits by their ids, and every edit checks its parameters before it is made
const asCalls = (edits: unknown): readonly EditCall[] => edits as readonly EditCall[];

/** Ports with a bus plug that are on no bus yet, of units with one such port; a bridge is for a person to place. */
const loosePorts = (boat: Boat, plan: Pick<Plan, 'joins'>): string[] => {
  const onBus = new Set(
    [...boat.joins, ...plan.joins].flatMap(({ bus, members }) =>
      bus === undefined ? [] : members.map(({ kit, port }) => `${kit}.${port}`),
    ),
  );
  return sheetedUnits(boat)
    .flatMap(({ unit, sheet }) => {
      const ports = sheet.ports.filter(({ protocol }) => protocol === 'nmea2000');
      return ports.length === 1 ? ports.map(({ id }) => `${unit.id}.${id}`) : [];
    })
    .filter((port) => !onBus.has(port))
    .sort(byCodeUnit);
};

/**
 * The edits that wire the boat: every join that her plan proposes, every unit with a bus plug on the bus where there is but
 * one, and a circuit for what comes and has none. Empty where nothing is left to wire. Pure; one step.
 */
export const wireHer = (
  boat: Boat,
  plan: Pick<Plan, 'joins' | 'proposal' | 'panels' | 'loads' | 'buses'>,
): readonly EditCall[] => {
  const proposed = (plan.proposal?.joins ?? []).flatMap(({ edits }) => asCalls(edits));
  const [bus, ...others] = boat.buses;
  const onBus: readonly EditCall[] =
    bus === undefined || others.length > 0
      ? []
      : loosePorts(boat, plan).map((port) => ({ edit: 'join-bus', params: { port, bus: bus.id } }));
  return [...proposed, ...onBus, ...feedHer(boat, plan)];
};
