import { nmea0183 } from '../../../facts/nmea0183.ts';
import type { Check } from '../check.ts';
import { unitOfPort } from '../planned-sends.ts';
import { figure, unitName } from '../say.ts';

/** A line that carries more than may be planned on it. */
export const lineTooFull: Check = {
  id: 'line-too-full',
  title: 'A 0183 line is fuller than it should be.',
  level: 'doubt',
  sources: ['practice-0183-load', 'computed-serial'],
  find: ({ planned, lines }) =>
    lines.flatMap(({ id, wire }) => {
      const { sharePct, charsPerS, baud } = wire.line ?? { baud: 0 };
      const limitPct = 100 * nmea0183.planShare.value;
      if (sharePct === undefined || charsPerS === undefined || sharePct <= limitPct) return [];
      return [
        {
          about: [id],
          ...(sharePct > 100 ? { level: 'fault' as const } : {}),
          says: `The line carries ${figure(charsPerS)} characters a second, ${figure(sharePct)} % of ${baud} baud; ${limitPct} % is the limit.`,
          device: id === '' ? 'the 0183 line' : unitName(planned, unitOfPort(id)),
          cure: 'Switch off what nobody on it needs (satellite lists first), or set both ends to 38400 baud.',
        },
      ];
    }),
};
