import type { Place } from '../../boat/boat-schema.ts';
import type { Sheet } from '../../boat/sheet.ts';
import { waterAtPlace } from '../../facts/opening-figures.ts';
import type { FitEntry } from '../../fits-shape.ts';
import { ipEnough } from './ip-enough.ts';

/** What a place asks of the IP code of a unit set so, and whether it has it; undefined where the place asks nothing. */
export const waterAt = (
  exposure: Place['exposure'],
  { ipCode }: Pick<Sheet, 'ipCode'>,
  set: keyof typeof waterAtPlace,
): FitEntry['water'] | undefined => {
  const byExposure: Readonly<Partial<Record<Place['exposure'], readonly string[]>>> = waterAtPlace[set].byExposure;
  const need = byExposure[exposure];
  if (need === undefined) return undefined;
  return { need: [...need], ...(ipCode === undefined ? {} : { has: ipCode, enough: ipEnough(ipCode, need) }) };
};
