import type { Boat, Kit } from '../../../src/core/boat/boat-schema.ts';
import type { Opening } from '../../../src/core/boat/opening.ts';
import type { Sheet } from '../../../src/core/boat/sheet.ts';

/** A screen that is nothing but its face, with what its manual says of fitting it, over a hole of its own. */
export interface HoledPanel {
  readonly id: string;
  readonly name: string;
  readonly place: string;
  readonly sheet?: Partial<Sheet>;
  readonly opening?: Partial<Opening>;
}

const faceSheet = (id: string, name: string, own: Partial<Sheet>): Sheet => ({
  id,
  name: `${name}, as its manual has it`,
  kind: 'switch-box',
  source: 'manual',
  sourceNote: 'Installation manual, the page with the drill template.',
  plugs: [],
  ports: [],
  body: { widthMm: 250, heightMm: 160, depthMm: 60 },
  cutout: { widthMm: 225, heightMm: 140 },
  plugsMm: 60,
  compassSafe: { valueM: 0.2, how: 'papers' },
  ...own,
});

/** The boat with one face more over an old hole. */
export const withHoledPanel = (boat: Boat, { id, name, place, sheet = {}, opening = {} }: HoledPanel): Boat => {
  const unit: Kit = { id, name, sheet: `${id}-sheet`, fate: 'comes', place };
  const hole: Opening = {
    id: `${id}-hole`,
    name: `old hole for the ${name}`,
    place,
    hole: { shape: 'rectangle', widthMm: 200, heightMm: 120 },
    panel: { material: 'grp', thicknessMm: 6 },
    behind: { depthMm: 200, how: 'taped' },
    how: 'taped',
    for: id,
    ...opening,
  };
  return {
    ...boat,
    sheets: [...boat.sheets, faceSheet(`${id}-sheet`, name, sheet)],
    kit: [...boat.kit, unit],
    openings: [...(boat.openings ?? []), hole],
  };
};
