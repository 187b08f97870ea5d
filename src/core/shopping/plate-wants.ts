import { smallPartPrices } from '../facts/buying.ts';
import { plateMaterialFigures } from '../facts/opening-figures.ts';
import type { PlateEntry } from '../fits-shape.ts';
import type { OrderInput } from './line-cutter.ts';
import type { Want } from './want.ts';

/** What a plate is for: the units in it, else the place whose hole it closes. */
const forOf = ({ cuts, place }: PlateEntry): string[] => (cuts.length === 0 ? [place] : cuts.map(({ unit }) => unit));

const plateWant = (input: OrderInput, plate: PlateEntry): Want => {
  const { id, outline, material, thicknessMm, cuts, notForCutting = [] } = plate;
  const item = `made-${id}`;
  const words = plateMaterialFigures.materials[material].name;
  return {
    id: item,
    item: `plate ${outline.widthMm} mm × ${outline.heightMm} mm, ${words} ${thicknessMm} mm, cut to its template`,
    kind: 'fixing',
    by: 'piece',
    count: 1,
    each: input.prices.each(item, smallPartPrices.plate),
    for: forOf(plate),
    why: cuts.length === 0 ? 'It closes an old hole.' : 'The old hole would show beside the new unit.',
    ...(notForCutting.length === 0 ? {} : { doubt: { other: 'unit or hole measure otherwise than usual or guessed' } }),
  };
};

/** Every plate, the screws that hold it, and what it is bedded on. */
export const plateWants = (input: OrderInput, plates: readonly PlateEntry[]): Want[] =>
  plates.flatMap((plate): Want[] => {
    const { outline, screws } = plate;
    const shared = { kind: 'fixing', for: forOf(plate) } as const;
    return [
      plateWant(input, plate),
      {
        ...shared,
        id: 'plate-screw',
        item: 'stainless screw for a plate, 4 mm',
        by: 'piece',
        count: screws.filter(({ of }) => of === undefined).length,
        each: input.prices.each('plate-screw', smallPartPrices.plateScrew),
        why: 'A plate is held every 75 to 120 mm.',
      },
      {
        ...shared,
        id: 'butyl-tape',
        item: 'butyl tape or gasket',
        by: 'metre',
        count: (2 * (outline.widthMm + outline.heightMm)) / 1000,
        each: input.prices.each('butyl-tape', smallPartPrices.butylPerM),
        why: 'A plate is bedded all round.',
      },
    ];
  });
