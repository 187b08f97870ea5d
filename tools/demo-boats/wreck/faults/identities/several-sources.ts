import { taped } from '../../base.ts';
import { fillerSheet, withOwnBus } from '../../edits.ts';
import type { Fault } from '../../fault.ts';

const compasses = ['compass-port', 'compass-stbd'].map((id) => ({
  id,
  name: `${id} sensor`,
  place: 'aft-cabin',
  tail: taped(0.3),
}));
const sheet = fillerSheet('spare-compass', 'Spare heading sensor', 1);

/** Two heading sensors on one bus, and nothing says which counts. */
export const identitiesSeveralSources: Fault = {
  rule: 'identities/several-sources',
  about: ['compasses', 'compass-port', 'compass-stbd'],
  plant: (boat) =>
    withOwnBus(boat, {
      id: 'compasses',
      name: 'Compass bus',
      sheet: { ...sheet, ports: sheet.ports.map((port) => ({ ...port, sends: [{ pgn: 127250, everyMs: 100 }] })) },
      kit: compasses,
      walk: [{ place: 'aft-cabin', tees: [...compasses.map(({ id }) => `${id}.n2k`), 'feed'] }],
    }),
};
