import type { AirDraftEntry } from '../../settings-sheet-shape.ts';
import { lengthIn, unitsAt } from './device-unit.ts';
import { type SheetInput, unitsOfKind, type Wanted } from './sheet-input.ts';

const screenKinds = ['display', 'plotter', 'instrument', 'sounder'];

/** The units of every screen, where somebody looked, and the air draft on every chart. */
export const screenEntries = ({ index }: SheetInput, air: AirDraftEntry): Wanted[] => {
  const { screens } = index.boat.measures ?? {};
  return [
    ...unitsOfKind(index, screenKinds).map(({ id: kit }): Wanted => {
      const row = { id: `${kit}:screen-units`, kit, what: 'screen-units' } as const;
      const own = screens?.find(({ unit }) => unit === kit);
      if (own === undefined) return { ...row, missing: 'screen-units' };
      const { unit: _, ...said } = own;
      const figure = Object.entries(said)
        .map(([what, unit]) => `${what} ${unit}`)
        .join(', ');
      return { ...row, shown: { figure, in: '' } };
    }),
    ...unitsOfKind(index, ['display', 'plotter']).map(
      ({ id: kit }): Wanted => ({
        id: `${kit}:air-draft`,
        kit,
        what: 'air-draft',
        ...lengthIn({ valueM: air.mostM, unit: unitsAt(screens, kit).height, rounding: 'up' }),
        how: air.how,
      }),
    ),
  ];
};
