import type { Boat, Kit } from '../../../src/core/boat/boat-schema.ts';
import type { Sheet } from '../../../src/core/boat/sheet.ts';
import type { Circuit } from '../../../src/core/boat/supply.ts';

interface FedUnit {
  readonly kit: Omit<Kit, 'sheet' | 'fate'> & Partial<Pick<Kit, 'fate'>>;
  readonly maxA: number;
  readonly circuit?: Partial<Circuit>;
  readonly sheet?: Partial<Sheet>;
  /** fed by this panel; absent is the switch panel */
  readonly panel?: string;
}

/** The boat with one more unit that only draws current, by a manual of its own, on a circuit of its own. */
export const withFedUnit = (
  boat: Boat,
  { kit, maxA, circuit = {}, sheet = {}, panel: fedBy = 'switches' }: FedUnit,
): Boat => {
  const own: Sheet = {
    id: `${kit.id}-sheet`,
    name: `${kit.name}, by its manual`,
    kind: 'lamp',
    source: 'manual',
    sourceNote: 'Invented for this boat.',
    plugs: [{ id: 'supply', connector: 'leads', gender: 'none' }],
    ports: [{ id: 'dc', onPlug: 'supply', protocol: 'dc', role: 'listen' }],
    power: [{ port: 'dc', typical: Math.min(maxA, 0.05), max: maxA, unit: 'A', behaves: 'current', minV: 9, maxV: 32 }],
    ...sheet,
  };
  const added: Circuit = {
    id: `c-${kit.id}`,
    ratingA: Math.ceil(maxA * 1.25),
    kind: 'fuse',
    feeds: [`${kit.id}.dc`],
    ...circuit,
  };
  return {
    ...boat,
    sheets: [...boat.sheets, own],
    kit: [...boat.kit, { fate: 'stays', ...kit, sheet: own.id }],
    supply: {
      ...boat.supply,
      panels: boat.supply.panels.map((panel) =>
        panel.id === fedBy ? { ...panel, circuits: [...panel.circuits, added] } : panel,
      ),
    },
  };
};
