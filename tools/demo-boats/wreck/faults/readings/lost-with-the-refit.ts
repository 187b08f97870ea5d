import type { Sheet } from '../../../../../src/core/boat/sheet.ts';
import { taped } from '../../base.ts';
import { fillerSheet, withOwnBus, withUnit } from '../../edits.ts';
import type { Fault } from '../../fault.ts';

const sheetOf = (id: string, name: string, kind: string): Sheet => ({
  ...fillerSheet(id, name, 1),
  kind,
  source: 'manual',
  sourceNote: 'Read aboard in its manual, chapter on messages.',
});

const withMessages = (sheet: Sheet, messages: Pick<Sheet['ports'][number], 'sends' | 'hears'>): Sheet => ({
  ...sheet,
  ports: sheet.ports.map((port) => ({ ...port, ...messages })),
});

const sender: Sheet = {
  ...withMessages(sheetOf('log-sender', 'Log sender', 'speed-sensor'), { sends: [{ pgn: 128275 }] }),
  earthing: { body: 'plastic' },
};
const gauge = withMessages(sheetOf('log-gauge', 'Old log gauge', 'instrument'), {
  sends: [],
  hears: [{ pgn: 128275 }],
});

/** The one gauge that shows the log total leaves in phase 2, and nobody has asked for it elsewhere. */
export const readingsLostWithTheRefit: Fault = {
  rule: 'readings/lost-with-the-refit',
  about: ['old-log-gauge'],
  plant: (before) => {
    const boat = withOwnBus(before, {
      id: 'log-bus',
      name: 'Log bus',
      sheet: sender,
      kit: [
        { id: 'old-log-gauge', name: 'old log gauge', place: 'panel-locker', tail: taped(0.3), phase: 2 },
        { id: 'old-log', name: 'log sender behind it', place: 'panel-locker', tail: taped(0.3) },
      ],
      walk: [{ place: 'panel-locker', tees: ['old-log.n2k', 'feed'] }],
    });
    return withUnit({ ...boat, sheets: [...boat.sheets, gauge] }, 'old-log-gauge', (unit) => ({
      ...unit,
      sheet: gauge.id,
      fate: 'goes',
    }));
  },
};
