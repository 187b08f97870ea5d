import { keptFor } from '../../boat/kept-for.ts';
import type { Sheet } from '../../boat/sheet.ts';

/** What a sensor feels of the water. */
interface Feels {
  readonly depth: boolean;
  readonly speed: boolean;
}

const said = (sheet: Sheet, pgn: number, reading: string): boolean =>
  sheet.ports.some(({ sends = [] }) => sends.some((one) => one.pgn === pgn || one.reading === reading));

/** Whether a sheet is of a sensor that sounds, of one with a wheel, or of both in one. */
export const feels: (sheet: Sheet) => Feels = keptFor(
  (sheet: Sheet): Feels => ({
    depth: said(sheet, 128_267, 'depth') || said(sheet, 128_267, 'sonar-picture'),
    speed: said(sheet, 128_259, 'speed-water'),
  }),
);
