import type { ReactNode } from 'react';
import { LitRows } from '../../margin/lit-rows.tsx';
import type { StepMarginProps } from '../step.ts';

const fates = [
  ['comes', 'Comes', 'Nothing new comes aboard.'],
  ['stays', 'Stays', 'Nothing stays.'],
  ['goes', 'Goes', 'Nothing goes ashore.'],
] as const;

/** The kit by what becomes of it. */
export const KitBlock = ({ boat, hand }: Pick<StepMarginProps, 'boat' | 'hand'>): ReactNode => {
  const names = new Map(boat.places.map((place) => [place.id, place.name]));
  return fates.map(([fate, heading, empty]) => (
    <LitRows
      key={fate}
      heading={heading}
      rows={boat.kit
        .filter((unit) => unit.fate === fate)
        .map((unit) => ({
          key: unit.id,
          what: unit.name,
          fact: names.get(unit.place) ?? unit.place,
          lights: [unit.id],
          card: { kind: 'unit', id: unit.id } as const,
        }))}
      empty={empty}
      hand={hand}
    />
  ));
};
