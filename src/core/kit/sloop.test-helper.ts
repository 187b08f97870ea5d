import { aBoat } from '../boat/a-boat.test-helper.ts';
import type { Boat } from '../boat/boat-schema.ts';
import { applyEdits } from '../boat/history.ts';
import type { Sheet } from '../boat/sheet.ts';
import { startHistory } from '../boat/start-history.ts';
import { typicalSheets } from '../facts/sheets/index.ts';
import { likelyPlaces } from './likely-places.ts';
import { placeUnit } from './place-unit.ts';

/** A typical sheet by its id. */
export const typical = (id: string): Sheet => {
  const found = typicalSheets.find((sheet) => sheet.id === id);
  if (found === undefined) throw new Error(`There is no typical sheet ${id}.`);
  return found;
};

/** The places and ways of the small boat with nothing aboard: no kit, no needs, no bus, an empty panel. */
export const emptyBoat = (): Boat => {
  const { boat } = aBoat().with({ kit: [], needs: [], joins: [], buses: [], sheets: [] });
  return {
    ...boat,
    supply: { ...boat.supply, panels: boat.supply.panels.map((panel) => ({ ...panel, circuits: [] })) },
  };
};

/** A boat with units put aboard one after another, each at the place that is offered first. */
export const boatWith = (boat: Boat, ids: readonly string[]): Boat =>
  ids.reduce((so, id) => {
    const sheet = typical(id);
    const place = likelyPlaces(so, sheet)[0]?.id ?? '';
    const { edits, says } = placeUnit(so, { sheet, place });
    return applyEdits(startHistory(so), edits, says).boat;
  }, boat);
