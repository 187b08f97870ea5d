import { unitItem, unitPrice } from '../prices/price-list.ts';
import type { OrderInput } from './line-cutter.ts';
import type { Want } from './want.ts';

/** The units that come, those of one sheet together, with the usual price of their kind. */
export const unitWants = ({ index, prices }: OrderInput): Want[] =>
  index.boat.kit
    .filter(({ fate }) => fate === 'comes')
    .flatMap((unit): Want[] => {
      const sheet = index.sheetOf.get(unit.id);
      if (sheet === undefined) return [];
      const id = unitItem(sheet);
      const why = 'Comes with this refit.';
      const each = unitPrice(prices, sheet);
      return [{ id, item: sheet.name, kind: 'unit', by: 'piece', count: 1, each, for: [unit.id], why }];
    });
