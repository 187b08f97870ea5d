import type { LineKind } from '../boat/boat-schema.ts';
import type { Figure } from './figure.ts';

/** What a new cable needs of a pipe: its own outside diameter, and the plug that comes on it where one is moulded on. */
interface CableSize {
  readonly outsideMm: Figure;
  /** absent where the cable is drawn bare and gets its plug behind the hole */
  readonly plugMm?: Figure;
}

const size = (value: number): Figure => ({ value, unit: 'mm', source: 'choice-cable-sizes' });

/** Sizes of new cable by kind of line, trunk and drops aside: those have the sizes of their grade. */
export const cableSizes: Readonly<Record<Exclude<LineKind, 'trunk' | 'drop'>, CableSize>> = {
  ethernet: { outsideMm: size(6.5), plugMm: { value: 16, unit: 'mm', source: 'practice-plug-holes' } },
  pair: { outsideMm: size(6) },
  'single-wire': { outsideMm: size(6) },
  analog: { outsideMm: size(6) },
  'engine-can': { outsideMm: size(7) },
  modbus: { outsideMm: size(6) },
  coax: { outsideMm: { value: 6.1, unit: 'mm', source: 'practice-coax-size' } },
  video: { outsideMm: size(6) },
  audio: { outsideMm: size(6) },
  usb: { outsideMm: size(5), plugMm: size(16) },
  feed: { outsideMm: size(8) },
  feeder: { outsideMm: size(16) },
};

/** Beyond this length a coax of 6 mm loses too much: then it is one of 10 mm. */
export const longCoax = {
  beyondM: { value: 15, unit: 'm', source: 'osr-coax-lengths' },
  outsideMm: { value: 10.3, unit: 'mm', source: 'practice-coax-size' },
} as const satisfies Record<string, Figure>;
