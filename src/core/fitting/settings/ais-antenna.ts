import { joinedTo, type SheetInput, unitsOfKind } from './sheet-input.ts';

const antennaKinds = ['position-antenna', 'gnss'];

/** The position antenna an AIS reckons from: the one on its own lead, else the only one aboard. Undefined where it is not known which. */
export const aisAntenna = (input: SheetInput, ais: string): string | undefined => {
  const all = unitsOfKind(input.index, antennaKinds).map(({ id }) => id);
  const own = joinedTo(input, ais).filter((unit) => all.includes(unit));
  const [one, ...others] = own.length > 0 ? own : all;
  return others.length === 0 ? one : undefined;
};
