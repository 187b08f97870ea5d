import { isAboard, lastPhase } from '../../boat/phase.ts';
import type { Protocol } from '../../boat/sheet.ts';
import type { Rule } from '../rule.ts';

/** What a port may be besides that says nothing about the network a unit is for. */
const noNetwork: ReadonlySet<Protocol> = new Set(['dc', 'analog', 'coax', 'audio', 'video']);

/** One maker's old wire has a plug that looks like the bus, and a name close to it; bought in its place it is deaf. */
export const singleWireAsBus: Rule = {
  id: 'converters/single-wire-as-bus',
  level: 'doubt',
  title: 'A unit that comes speaks one maker’s wire only, on a boat with a bus.',
  sources: ['project-readings', 'practice-own-plugs'],
  check: ({ index, plan }) => {
    if (index.boat.buses.length === 0) return [];
    const joined = new Set(
      plan.joins.flatMap(({ members }) => (members.length > 1 ? members : [])).map(({ kit }) => kit),
    );
    return index.boat.kit
      .filter((unit) => unit.fate === 'comes' && isAboard(unit, lastPhase(index.boat)) && !joined.has(unit.id))
      .filter(({ id }) => {
        const ports = index.sheetOf.get(id)?.ports.filter(({ protocol }) => !noNetwork.has(protocol)) ?? [];
        return ports.length > 0 && ports.every(({ protocol }) => protocol === 'single-wire');
      })
      .map(({ id, name }) => ({
        about: [id],
        says: `${name} has no port for the bus, only one for a maker’s single wire, and is joined to nothing. The plugs look alike; the languages are not the same.`,
        cure: 'Choose a unit with a port for the bus, or add an active converter from that wire to the bus and join the two.',
      }));
  },
};
