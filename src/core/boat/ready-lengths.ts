import { dropPieces, trunkPieces } from '../facts/defaults.ts';
import type { Boat, LineKind } from './boat-schema.ts';

const usualM: Partial<Record<LineKind, readonly number[]>> = {
  trunk: trunkPieces.valuesM,
  drop: dropPieces.valuesM,
};

/**
 * Lengths, mm and shortest first, in which ready-made cables of a kind are bought: those the owner's own prices name
 * (`light-drop-1500mm`, `ethernet-5000mm`, whatever the grade), else the usual ones; none where it is sold by the metre.
 */
export const readyLengthsMm = ({ boat, kind }: { boat: Pick<Boat, 'prices'>; kind: LineKind }): number[] => {
  const named = new RegExp(`^(?:[a-z-]+-)?${kind}-([1-9][0-9]{0,5})mm$`);
  const own = Object.keys(boat.prices?.items ?? {}).flatMap((item) => named.exec(item)?.[1] ?? []);
  if (own.length === 0) return (usualM[kind] ?? []).map((valueM) => Math.round(valueM * 1000));
  return [...new Set(own.map(Number))].sort((one, other) => one - other);
};
