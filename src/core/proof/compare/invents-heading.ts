import { readingsOf } from '../../facts/message-readings.ts';
import { comesIn } from './comes-in.ts';
import type { Planned } from './planned-sends.ts';

const isHeading = (said: { pgn?: number; sentence?: string; reading?: string }): boolean =>
  said.reading === 'heading' ||
  readingsOf(said as { pgn: number }).some(({ reading, ifSaid }) => reading === 'heading' && ifSaid !== true);

/** Whether a unit can know no heading: its sheet gives none, or only one that would have to come in and does not. */
export const inventsHeading = ({ index, plan }: Planned, unit: string): boolean => {
  const sheet = index.sheetOf.get(unit);
  if (sheet === undefined) return false;
  return !sheet.ports.some((to) =>
    (to.sends ?? []).some((sent) => {
      if (!isHeading(sent)) return false;
      const message = sent.pgn ?? sent.sentence;
      return message === undefined || comesIn({ index, plan }, { kit: unit, sheet, to, message });
    }),
  );
};
