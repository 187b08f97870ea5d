import type { SourceKey } from './sources.ts';

interface PinMap {
  readonly name: string;
  readonly source: SourceKey;
  /** pins of the M12 plug, in order, each with the RJ45 pin it goes to */
  readonly toRj45: readonly { readonly m12: number; readonly rj45: number; readonly signal?: string }[];
}

/** M12 plugs for Ethernet and the RJ45 pins they go to. Codings do not mate; an eight-pole A-coded one is another order. */
export const ethernetPlugs = {
  'm12-d': {
    name: 'M12 D-coded, 4 poles, 100 Mbit/s',
    source: 'm12-d-manuals',
    toRj45: [
      { m12: 1, rj45: 1, signal: 'TX+' },
      { m12: 2, rj45: 3, signal: 'RX+' },
      { m12: 3, rj45: 2, signal: 'TX-' },
      { m12: 4, rj45: 6, signal: 'RX-' },
    ],
  },
  'm12-x': {
    name: 'M12 X-coded, 8 poles, to 10 Gbit/s',
    source: 'framos-d435e',
    toRj45: [
      { m12: 1, rj45: 1 },
      { m12: 2, rj45: 2 },
      { m12: 3, rj45: 3 },
      { m12: 4, rj45: 6 },
      { m12: 5, rj45: 7 },
      { m12: 6, rj45: 8 },
      { m12: 7, rj45: 5 },
      { m12: 8, rj45: 4 },
    ],
  },
} as const satisfies Record<string, PinMap>;
