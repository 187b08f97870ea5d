import type { BoatIndex } from '../boat/boat-index.ts';
import type { LimitOnBoat } from '../boat/limit-of.ts';
import type { Figure } from '../facts/figure.ts';
import { type SourceKey, sources } from '../facts/sources.ts';
import type { BusEntry, Cure } from '../plan-shape.ts';

/** A length as people read it: two decimals and its unit. */
export const metres = (lengthM: number): string => `${lengthM.toFixed(2)} m`;

/** The limit part of a finding. */
export const limitPart = ({ value, unit, source }: LimitOnBoat): { value: number; unit: string; source: string } => ({
  value,
  unit,
  source,
});

/** A source as people read it: how far it can be trusted, and what it is. */
export const sourceWords = (key: SourceKey): string => `${sources[key].standing}: ${sources[key].text}`;

/** The limit part of a finding whose limit no owner sets otherwise. */
export const figurePart = ({ value, unit, source }: Figure): { value: number; unit: string; source: string } => ({
  value,
  unit,
  source: sourceWords(source),
});

/** Name of a bus as the owner wrote it. */
export const busName = (index: BoatIndex, busId: string): string => index.buses.get(busId)?.name ?? busId;

/** Name of the unit a port belongs to, from `kit.port`. */
export const unitName = (index: BoatIndex, port: string): string => {
  const kit = port.split('.')[0] ?? port;
  return index.kit.get(kit)?.name ?? kit;
};

/** Changes that were tried and bring a bus that holds back within its warn limits, for a finding. */
export const warnCures = ({ layout, mend }: BusEntry): { readonly cures?: Cure[] } =>
  layout.status === 'infeasible' || mend === undefined || mend.cures.length === 0 ? {} : { cures: mend.cures };
