import type { Draft } from 'mutative';
import type { Boat } from '../boat-schema.ts';

/** Takes one pin out, and with the last of its kind the list, so that letting go leaves the file as it was before. */
export const withoutPin = (boat: Draft<Boat>, kind: keyof NonNullable<Boat['pins']>, id: string): void => {
  const { [kind]: pins, ...others } = boat.pins ?? {};
  if (pins === undefined || !Object.hasOwn(pins, id)) return;
  const left = Object.fromEntries(Object.entries(pins).filter(([key]) => key !== id));
  const kept = Object.keys(left).length === 0 ? others : { ...others, [kind]: left };
  if (Object.keys(kept).length === 0) delete boat.pins;
  else boat.pins = kept;
};
