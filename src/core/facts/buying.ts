import type { Figure } from './figure.ts';

/** What small parts cost, in whole hundredths of a euro: round figures, so that orders can be compared. */
export const smallPartPrices = {
  source: 'choice-small-parts',
  /** what a ready-made cable costs beyond its metres, for its two moulded plugs */
  mouldedPlugs: 1200,
  busFieldPlug: 2800,
  busAdapter: 4000,
  dustCap: 300,
  ethernetPlug: 300,
  coaxPlug: 900,
  fuseHolder: 900,
  fuse: 150,
  gland: 1200,
  transit: 6000,
  clip: 60,
  mastGrip: 800,
  dryBox: 2500,
  coaxJoiner: 600,
  terminalWay: 150,
  crimpTerminal: 60,
  label: 20,
  sleevePerM: 300,
  messengerPerM: 40,
  plate: 4000,
  plateScrew: 40,
  butylPerM: 300,
} as const;

/** The copper of one core that the usual price of a metre of feed lead stands for; thicker cable costs as much more as it has copper. */
export const usualFeedLead = {
  value: 1.5,
  unit: 'mm²',
  source: 'choice-small-parts',
} as const satisfies Figure;

/** Plugs that are fitted aboard to cable by the metre, by connector, and the price of each; bare leads need none. */
export const fieldPlugs = {
  source: 'choice-small-parts',
  byConnector: {
    leads: { name: 'bare leads', price: 0 },
    rj45: { name: 'RJ45', price: smallPartPrices.ethernetPlug },
    tnc: { name: 'TNC', price: smallPartPrices.coaxPlug },
    so239: { name: 'PL-259', price: smallPartPrices.coaxPlug },
    'video-bnc': { name: 'BNC', price: smallPartPrices.coaxPlug },
    'n2k-micro': { name: 'micro', price: smallPartPrices.busFieldPlug },
    'n2k-mini': { name: 'mini', price: smallPartPrices.busFieldPlug },
  },
} as const;

/** Work that a plug too large for a hole makes. */
export const passageHours = {
  fitPlug: { value: 0.3, unit: 'h', source: 'choice-passage-hours' },
  boreHole: { value: 1, unit: 'h', source: 'choice-passage-hours' },
} as const satisfies Record<string, Figure>;

/** What is ordered beyond the plan, and how much sleeve a label takes. */
export const orderFigures = {
  spareOfEach: { value: 1, unit: 'piece', source: 'choice-spares' },
  spareFuses: { value: 2, unit: 'pieces of each rating', source: 'choice-spares' },
  sleevePerLabel: { value: 0.05, unit: 'm', source: 'choice-spares' },
} as const satisfies Record<string, Figure>;

/** Over how many tees the hours of a usual backbone are spread, to reckon those of one tee put in later. */
export const teesOfBackbone = { value: 10, unit: 'tees', source: 'choice-phases' } as const satisfies Figure;
