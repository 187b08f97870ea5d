import type { Boat } from '../../../../../core/boat/boat-schema.ts';
import { idForName, idOfName } from '../../../../../core/boat/id-of-name.ts';
import type { Opening } from '../../../../../core/boat/opening.ts';
import { words } from './words.ts';

/** A new opening, before anybody has said anything of it: where the first screen stands, in the usual panel. */
export const freshOpening = ({ places, kit }: Boat): Opening => ({
  id: '',
  name: '',
  place: kit.find(({ fate }) => fate === 'comes')?.place ?? places[0]?.id ?? '',
  hole: { shape: 'rectangle', widthMm: 0, heightMm: 0 },
  panel: { material: 'grp', thicknessMm: 0 },
  how: 'taped',
});

/** What is still to be said before an opening can be put into the boat, in words. */
export const stillWanted = ({ name, place, hole, panel, instead }: Opening): string[] => [
  ...(name.trim() === '' ? [words.wants.name] : []),
  ...(place === '' ? [words.wants.place] : []),
  ...(hole.widthMm > 0 && hole.heightMm > 0 ? [] : [words.wants.size]),
  ...(panel.thicknessMm > 0 ? [] : [words.wants.thickness]),
  ...(instead !== undefined && instead.reason.trim() === '' ? [words.wants.reason] : []),
];

/** A hole said to be of another shape: what the new shape has not is left out. */
export const reshaped = (hole: Opening['hole'], shape: 'rectangle' | 'round'): Opening['hole'] => {
  const { widthMm, heightMm } = hole;
  return shape === 'round' ? { shape, widthMm, heightMm: widthMm } : { shape, widthMm, heightMm };
};

const withPlateId = (plate: NonNullable<Opening['plate']>): NonNullable<Opening['plate']> => {
  const id = idOfName(plate.id);
  return { ...plate, id: id === '' ? 'plate' : id };
};

/** The opening as it goes into the boat: a new one under an id made of its name, its plate under one made of what it is called. */
export const putOpening = (boat: Boat, draft: Opening): Opening => {
  const name = draft.name.trim();
  return {
    ...draft,
    name,
    id: draft.id === '' ? idForName(boat, name, 'opening') : draft.id,
    ...(draft.plate === undefined ? {} : { plate: withPlateId(draft.plate) }),
  };
};
