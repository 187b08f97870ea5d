import type { Place } from '../boat/boat-schema.ts';
import type { PlateEntry } from '../fits-shape.ts';
import type { Figure } from './figure.ts';
import type { SourceKey } from './sources.ts';

/** How a screen is seen and reached. */
export const viewing = {
  letters: { value: 20, unit: 'arcmin', source: 'iho-s52' },
  lettersFloor: { value: 3.5, unit: 'mm for each metre', source: 'memory-iec-62288' },
  belowEyeLeast: { value: 15, unit: '°', source: 'practice-viewing' },
  belowEyeMost: { value: 30, unit: '°', source: 'practice-viewing' },
  reach: { value: 700, unit: 'mm', source: 'practice-viewing' },
} as const satisfies Record<string, Figure>;

/** Letters are looked at from this far where nobody has measured it: ships ask for text to be read from there. */
export const usualViewingM = { value: 1, unit: 'm', source: 'iho-s52' } as const satisfies Figure;

/** Warmth of a closed box: what a square metre of its walls gives off, and how much warmer it may get in there. */
export const boxHeat = {
  coefficient: { value: 6, unit: 'W/m²K', source: 'memory-box-heat' },
  mostRise: { value: 15, unit: 'K', source: 'choice-box-rise' },
} as const satisfies Record<string, Figure>;

/** Air that is left round a body behind a panel. */
export const airGaps = {
  beside: { value: 30, unit: 'mm', source: 'practice-air-gaps' },
  above: { value: 50, unit: 'mm', source: 'practice-air-gaps' },
} as const satisfies Record<string, Figure>;

/** Room behind: how a cable bends there, and how much must be to spare before a measure is trusted. */
export const roomBehind = {
  bend: { value: 6, unit: 'x outside diameter', source: 'practice-depth-behind' },
  spare: { value: 10, unit: 'mm', source: 'choice-depth-to-spare' },
} as const satisfies Record<string, Figure>;

/** Screws of a plate: their hole, from its edge, from each other at least and at most. */
export const plateScrews = {
  holeMm: { value: 4, unit: 'mm', source: 'practice-plates' },
  fromEdge: { value: 12, unit: 'mm', source: 'practice-plates' },
  apartLeast: { value: 75, unit: 'mm', source: 'practice-plates' },
  apartMost: { value: 120, unit: 'mm', source: 'practice-plates' },
} as const satisfies Record<string, Figure>;

/** Radius of the corners of a plate. */
export const plateCorner = { value: 10, unit: 'mm', source: 'choice-plate-corner' } as const satisfies Figure;

interface PlateMaterial {
  readonly name: string;
  readonly leastMm: number;
  readonly mostMm: number;
  /** taken where nobody wishes otherwise */
  readonly takenMm: number;
  readonly says: string;
}

/** What a plate is made of and how thick it is then. */
export const plateMaterialFigures = {
  source: 'practice-plates',
  materials: {
    grp: { name: 'GRP', leastMm: 4, mostMm: 6, takenMm: 5, says: 'sheet laminate, edges sealed' },
    aluminium: {
      name: 'aluminium',
      leastMm: 3,
      mostMm: 4,
      takenMm: 4,
      says: 'parted from stainless screws by a paste or bushes',
    },
    acrylic: {
      name: 'acrylic',
      leastMm: 6,
      mostMm: 10,
      takenMm: 8,
      says: 'holes one size larger than the screws, no solvent near it',
    },
    polycarbonate: {
      name: 'polycarbonate',
      leastMm: 6,
      mostMm: 10,
      takenMm: 8,
      says: 'holes one size larger than the screws, no solvent near it',
    },
    hdpe: { name: 'HDPE', leastMm: 10, mostMm: 13, takenMm: 12, says: 'nothing sticks to it: a gasket, no sealant' },
    plywood: { name: 'plywood', leastMm: 9, mostMm: 12, takenMm: 12, says: 'edges sealed' },
  } satisfies Record<PlateEntry['material'], PlateMaterial>,
} as const;

/** IP codes that a unit must have, by how wet it gets where it is; places that are left out ask nothing. */
interface WaterAtPlace {
  readonly source: SourceKey;
  readonly byExposure: Readonly<Partial<Record<Place['exposure'], readonly string[]>>>;
}

/** What a unit must stand: a face in a panel, and one in a housing of its own that water runs off. */
export const waterAtPlace = {
  'in-panel': { source: 'practice-ip-at-helm', byExposure: { weather: ['IPX6', 'IPX7'], spray: ['IPX6'] } },
  'by-itself': { source: 'choice-ip-by-itself', byExposure: { weather: ['IPX6'], spray: ['IPX6'] } },
} as const satisfies Record<string, WaterAtPlace>;
