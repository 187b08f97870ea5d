import type { Boat, Kit } from '../../../src/core/boat/boat-schema.ts';
import type { Power, Sheet } from '../../../src/core/boat/sheet.ts';
import type { Bank, Charger, Circuit, Dcdc, Panel } from '../../../src/core/boat/supply.ts';
import { taped } from './base.ts';

/** A bank as it should be: a fuse that breaks enough, near by. */
export const soundBank = (id: string, more: Partial<Bank> = {}): Bank => ({
  id,
  place: 'battery-box',
  chemistry: 'agm',
  nominalV: 12,
  capacityAh: 110,
  lowestV: 11.8,
  for: 'house',
  coldCrankingA: 600,
  main: { kind: 'fuse', family: 'anl', distance: taped(0.05), ratingA: 40 },
  isolator: true,
  ...more,
});

/** A panel on a heavy feeder, with places left. */
export const soundPanel = (id: string, from: string, more: Partial<Panel> = {}): Panel => ({
  id,
  place: 'battery-box',
  from,
  feeder: { length: taped(1), areaMm2: 25 },
  mainA: 40,
  freeWays: 4,
  circuits: [],
  ...more,
});

/** A circuit of 10 A. */
export const circuit = (id: string, feeds: string[], more: Partial<Circuit> = {}): Circuit => ({
  id,
  ratingA: 10,
  kind: 'fuse',
  feeds,
  ...more,
});

/** A converter from whatever feeds it to 12 V. */
export const converterOf = (id: string, more: Partial<Dcdc> = {}): Dcdc => ({
  id,
  place: 'panel-locker',
  outV: 12.5,
  ratedA: 5,
  efficiencyPct: 90,
  isolated: true,
  ...more,
});

/** A unit with two wires and nothing else, at most 1 A at 9 to 32 V where not said otherwise, and little for long. */
export const wiredSheet = (
  id: string,
  { kind = 'lamp', power = {} }: { kind?: string; power?: Partial<Power> } = {},
): Sheet => ({
  id,
  name: `Two-wire ${id}, as its manual has it`,
  kind,
  source: 'manual',
  sourceNote: 'Read aboard in its manual, chapter on supply.',
  plugs: [{ id: 'supply', connector: 'leads', gender: 'none' }],
  ports: [{ id: 'dc', onPlug: 'supply', protocol: 'dc', role: 'listen' }],
  power: [{ port: 'dc', typical: 0.02, max: 1, unit: 'A', behaves: 'current', minV: 9, maxV: 32, fuseA: 10, ...power }],
});

/** A unit of the sheet of its own id and `-kind`. */
export const wiredUnit = (id: string, name: string, more: Partial<Kit> = {}): Kit => ({
  id,
  name,
  sheet: `${id}-kind`,
  fate: 'stays',
  place: 'panel-locker',
  ...more,
});

export interface SupplyMore {
  readonly banks?: readonly Bank[];
  readonly panels?: readonly Panel[];
  readonly dcdc?: readonly Dcdc[];
  readonly chargers?: readonly Charger[];
  /** circuits of the old switch panel */
  readonly switches?: readonly Circuit[];
  readonly kit?: readonly Kit[];
  readonly sheets?: readonly Sheet[];
}

/** The boat with more on its source side, beside all she had. */
export const withMore = (boat: Boat, more: SupplyMore): Boat => ({
  ...boat,
  sheets: [...boat.sheets, ...(more.sheets ?? [])],
  kit: [...boat.kit, ...(more.kit ?? [])],
  supply: {
    ...boat.supply,
    banks: [...boat.supply.banks, ...(more.banks ?? [])],
    panels: [
      ...boat.supply.panels.map((panel) =>
        panel.id === 'switches' ? { ...panel, circuits: [...panel.circuits, ...(more.switches ?? [])] } : panel,
      ),
      ...(more.panels ?? []),
    ],
    dcdc: [...boat.supply.dcdc, ...(more.dcdc ?? [])],
    ...(more.chargers === undefined ? {} : { chargers: [...(boat.supply.chargers ?? []), ...more.chargers] }),
  },
});
