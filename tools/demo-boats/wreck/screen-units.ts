import type { Boat } from '../../../src/core/boat/boat-schema.ts';
import type { Sheet } from '../../../src/core/boat/sheet.ts';
import { sentenceSheet } from './pair-units.ts';

/** The boat with two screens more at one place, and what their manuals say of dimming and silencing. */
export const withScreens = (
  boat: Boat,
  place: string,
  screens: Readonly<Record<string, { readonly name: string; readonly lighting: NonNullable<Sheet['lighting']> }>>,
): Boat => {
  const all = Object.entries(screens);
  return {
    ...boat,
    sheets: [
      ...boat.sheets,
      ...all.map(([id, { name, lighting }]) => ({
        ...sentenceSheet(`${id}-sheet`, { name: `${name}, as its manual has it`, kind: 'instrument', ports: [] }),
        lighting,
      })),
    ],
    kit: [
      ...boat.kit,
      ...all.map(([id, { name }]) => ({ id, name, sheet: `${id}-sheet`, fate: 'stays' as const, place })),
    ],
  };
};
