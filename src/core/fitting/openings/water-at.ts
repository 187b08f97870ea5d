import type { Place } from '../../boat/boat-schema.ts';
import { waterAtPlace } from '../../facts/opening-figures.ts';
import type { FitEntry } from '../../fits-shape.ts';
import { ipEnough } from './ip-enough.ts';
import type { FaceSheet } from './opening-case.ts';

const needs: Readonly<Partial<Record<Place['exposure'], readonly string[]>>> = waterAtPlace.byExposure;

/** What a place asks of the IP code of a face in a panel, and whether it has it; undefined where the place asks nothing. */
export const waterAt = (exposure: Place['exposure'], { ipCode }: FaceSheet): FitEntry['water'] | undefined => {
  const need = needs[exposure];
  if (need === undefined) return undefined;
  return { need: [...need], ...(ipCode === undefined ? {} : { has: ipCode, enough: ipEnough(ipCode, need) }) };
};
