import type { Boat } from '../../../../../src/core/boat/boat-schema.ts';
import type { Port, Sheet } from '../../../../../src/core/boat/sheet.ts';
import { fillerSheet, withUnit } from '../../edits.ts';

/** A sheet with one bus port that somebody has read in its manual, so that no other rule doubts it. */
export const asRead = (id: string, name: string, says: Pick<Port, 'sends' | 'hears'>): Sheet => {
  const sheet = fillerSheet(id, name, 1);
  return {
    ...sheet,
    kind: 'instrument',
    source: 'manual',
    sourceNote: 'Read aboard in its manual, chapter on messages.',
    ports: sheet.ports.map(({ sends: _, ...port }) => ({ ...port, ...says })),
  };
};

/** The boat with one unit on a sheet of its own. */
export const withSecondSheet = (boat: Boat, unit: string, sheet: Sheet): Boat =>
  withUnit({ ...boat, sheets: [...boat.sheets, sheet] }, unit, (kit) => ({ ...kit, sheet: sheet.id }));
