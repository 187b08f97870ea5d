import type { Boat, Kit } from '../../../src/core/boat/boat-schema.ts';
import { byCodeUnit } from '../../../src/core/boat/ids.ts';
import type { Power, Sheet } from '../../../src/core/boat/sheet.ts';
import type { Circuit } from '../../../src/core/boat/supply.ts';

interface FedUnit {
  readonly kit: Omit<Kit, 'sheet' | 'fate'> & Partial<Pick<Kit, 'fate'>>;
  readonly maxA: number;
  readonly power?: Partial<Power>;
  readonly circuit?: Partial<Circuit>;
  readonly sheet?: Partial<Sheet>;
  /** its panel; the switch panel where not given */
  readonly panel?: string;
  /** the wire that somebody settled for it, mm² */
  readonly wireMm2?: number;
}

const settled = (boat: Boat, unit: string, panel: string, areaMm2: number): Boat => {
  const line = `feed:${[`${unit}.supply`, panel].sort(byCodeUnit).join('~')}`;
  return { ...boat, pins: { ...boat.pins, wires: { ...boat.pins?.wires, [line]: { areaMm2, state: 'fixed' } } } };
};

/** The boat with one more unit that only draws current, and seldom, by a manual of its own, on a circuit of its own. */
export const withFedUnit = (boat: Boat, unit: FedUnit): Boat => {
  const { kit, maxA, power = {}, circuit = {}, sheet = {}, panel = 'switches', wireMm2 } = unit;
  const own: Sheet = {
    id: `${kit.id}-sheet`,
    name: `${kit.name}, by its manual`,
    kind: 'lamp',
    source: 'manual',
    sourceNote: 'Invented for this boat.',
    plugs: [{ id: 'supply', connector: 'leads', gender: 'none' }],
    ports: [{ id: 'dc', onPlug: 'supply', protocol: 'dc', role: 'listen' }],
    power: [
      {
        port: 'dc',
        typical: Math.min(maxA, 0.05),
        max: maxA,
        unit: 'A',
        behaves: 'current',
        minV: 9,
        maxV: 32,
        ...power,
      },
    ],
    ...sheet,
  };
  const added: Circuit = {
    id: `c-${kit.id}`,
    ratingA: Math.ceil(maxA * 1.25),
    kind: 'fuse',
    feeds: [`${kit.id}.dc`],
    ...circuit,
  };
  const fed: Boat = {
    ...boat,
    sheets: [...boat.sheets, own],
    kit: [...boat.kit, { fate: 'stays', ...kit, sheet: own.id }],
    supply: {
      ...boat.supply,
      panels: boat.supply.panels.map((entry) =>
        entry.id === panel ? { ...entry, circuits: [...entry.circuits, added] } : entry,
      ),
    },
  };
  return wireMm2 === undefined ? fed : settled(fed, kit.id, panel, wireMm2);
};
