import type { Hears, Sends } from '../../boat/sheet.ts';
import type { UnitSketch } from '../../readings/wired.test-helper.ts';

/** A unit that says some sentences on one port. */
export const talker = (...sends: string[]): UnitSketch => ({ ports: { out: { protocol: 'nmea0183', sends } } });

/** A unit on a bus, with what it sends and hears there. */
export const onBus = (
  sends: readonly (number | string | Sends)[],
  hears: readonly (number | string | Hears)[] = [],
): UnitSketch => ({
  ports: {
    n2k: {
      protocol: 'nmea2000',
      ...(sends.length === 0 ? {} : { sends }),
      ...(hears.length === 0 ? {} : { hears }),
    },
  },
});
