/**
 * Continuous current of one copper conductor at 30 °C outside an engine space, A, by size and by temperature rating of the
 * insulation. The drop is not considered.
 */
export const ampacityTables = {
  awg: {
    source: 'cfr-33-183-425',
    insulationC: [60, 75, 80, 90, 105, 125, 200],
    amps: {
      '18': [10, 10, 15, 20, 20, 25, 25],
      '16': [15, 15, 20, 25, 25, 30, 35],
      '14': [20, 20, 25, 30, 35, 40, 45],
      '12': [25, 25, 35, 40, 45, 50, 55],
      '10': [40, 40, 50, 55, 60, 70, 70],
      '8': [55, 65, 70, 70, 80, 90, 100],
      '6': [80, 95, 100, 100, 120, 125, 135],
      '4': [105, 125, 130, 135, 160, 170, 180],
      '3': [120, 145, 150, 155, 180, 195, 210],
      '2': [140, 170, 175, 180, 210, 225, 240],
      '1': [165, 195, 210, 210, 245, 265, 280],
      '1/0': [195, 230, 245, 245, 285, 305, 325],
      '2/0': [225, 265, 285, 285, 330, 355, 370],
      '3/0': [260, 310, 330, 330, 385, 410, 430],
      '4/0': [300, 360, 385, 385, 445, 475, 510],
    },
  },
  /** unconfirmed: shown with that mark, and nothing rests on it as verified */
  metric: {
    source: 'memory-iso-ampacity',
    insulationC: [60, 70, 90, 105, 125, 200],
    amps: {
      '0.75': [6, 10, 12, 16, 20, 25],
      '1': [8, 14, 18, 20, 25, 35],
      '1.5': [12, 18, 21, 25, 30, 40],
      '2.5': [17, 25, 30, 35, 40, 45],
      '4': [22, 35, 40, 45, 50, 55],
      '6': [29, 45, 50, 60, 70, 75],
      '10': [40, 65, 70, 90, 100, 120],
      '16': [54, 90, 100, 130, 150, 170],
      '25': [71, 120, 140, 170, 185, 200],
      '35': [87, 160, 185, 210, 225, 240],
      '50': [105, 210, 230, 270, 300, 325],
      '70': [135, 265, 285, 330, 360, 375],
      '95': [165, 310, 330, 390, 410, 430],
      '120': [190, 360, 400, 450, 480, 520],
      '150': [220, 380, 430, 475, 520, 560],
    },
  },
} as const;

/** What is left of the current in an engine space (50 °C), by temperature rating; absent = not allowed there. */
export const engineFactors = {
  awg: [
    { insulationC: 60, factor: 0.58, source: 'memory-engine-factors' },
    { insulationC: 75, factor: 0.75, source: 'memory-engine-factors' },
    { insulationC: 80, factor: 0.78, source: 'memory-engine-factors' },
    { insulationC: 90, factor: 0.82, source: 'memory-engine-factors' },
    { insulationC: 105, factor: 0.85, source: 'cfr-33-183-425' },
    { insulationC: 125, factor: 0.89, source: 'memory-engine-factors' },
    { insulationC: 200, factor: 1, source: 'memory-engine-factors' },
  ],
  metric: [
    { insulationC: 70, factor: 0.75, source: 'memory-iso-ampacity' },
    { insulationC: 90, factor: 0.82, source: 'memory-iso-ampacity' },
    { insulationC: 105, factor: 0.86, source: 'memory-iso-ampacity' },
    { insulationC: 125, factor: 0.89, source: 'memory-iso-ampacity' },
    { insulationC: 200, factor: 1, source: 'memory-iso-ampacity' },
  ],
} as const;

/** What is left where several conductors that carry current together lie in one bundle; a DC pair counts two. */
export const bundleFactors = {
  awg: {
    source: 'uscg-bundles',
    rows: [
      { fromConductors: 1, factor: 1 },
      { fromConductors: 3, factor: 0.7 },
      { fromConductors: 4, factor: 0.6 },
      { fromConductors: 7, factor: 0.5 },
      { fromConductors: 25, factor: 0.4 },
    ],
  },
  metric: {
    source: 'memory-iso-ampacity',
    rows: [
      { fromConductors: 1, factor: 1 },
      { fromConductors: 4, factor: 0.7 },
      { fromConductors: 7, factor: 0.6 },
      { fromConductors: 25, factor: 0.5 },
    ],
  },
} as const;
