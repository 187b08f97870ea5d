import type { Figure } from './figure.ts';

/** Distance of people from pulse radars inside the beam, m, at the stricter and the laxer limit; the item's plate decides. */
export const radarDistances = {
  source: 'maker-radar-distance',
  rows: [
    { kilowatts: 2, at100WPerM2: 0.5, at10WPerM2: 1.4 },
    { kilowatts: 4, at100WPerM2: 0.9, at10WPerM2: 2.8 },
    { kilowatts: 6, at100WPerM2: 1.1, at10WPerM2: 3.5 },
    { kilowatts: 10, at100WPerM2: 2.9, at10WPerM2: 9 },
    { kilowatts: 25, at100WPerM2: 5.5, at10WPerM2: 17.4 },
  ],
} as const;

/** Vertical width of the beam by kind, degrees. */
export const radarBeams = {
  dome: { value: 25, unit: '°', source: 'practice-radar-beam' },
  'pulse-2kw': { value: 30, unit: '°', source: 'practice-radar-beam' },
  'pulse-4kw': { value: 25, unit: '°', source: 'practice-radar-beam' },
  'pulse-6-to-25kw': { value: 20, unit: '°', source: 'practice-radar-beam' },
} as const satisfies Record<string, Figure>;

/** Horizon in nautical miles for each root of a foot of height above the water; a height in metres is converted exactly. */
export const horizons = {
  geometric: { value: 1.064, unit: 'nm/√ft', source: 'computed-horizon' },
  visible: { value: 1.17, unit: 'nm/√ft', source: 'bowditch' },
  radar: { value: 1.22, unit: 'nm/√ft', source: 'bowditch' },
  vhf: { value: 1.23, unit: 'nm/√ft', source: 'practice-vhf-horizon' },
} as const satisfies Record<string, Figure>;
