/** From where to where a reading lies, in its own unit. */
type Reach = readonly [least: number, most: number];

/** How far a fault of a bus may go, and how far a hand strays: what the search for a cause reckons with. */
export const faultRanges = {
  source: 'choice-dock-diagnosis',
  /** the share of readings that are slips: taken at the wrong pin, written in the wrong place */
  slips: 0.01,
  /** how far a reading strays beside what the meter and its leads add: volts, devices, the logarithm of errors, yes or no */
  stray: { volts: 0.08, devices: 0.15, errors: 0.4, 'yes-no': 0.1 },
  /** all that can be read at all, on the scale readings are compared on */
  whole: { ohm: 20, volts: 40, devices: 40, errors: 14, 'yes-no': 2 },
  /** at the feed of a sound bus, engine off or charging */
  suppliedV: [10.5, 14.8] as Reach,
  /** how far the level of a quiet wire lies from the usual, V */
  levelV: 0.3,
  /** between data wires that are shorted, ohm */
  shortOhm: [0.05, 2] as Reach,
  /** a data wire against what it touches, and the other one through the terminators, ohm */
  touchingOhm: [0.2, 1000] as Reach,
  throughOhm: [50, 1070] as Reach,
  /** a plug whose drop is open, and a leak in a wet tee: between the data wires, and to the plus, ohm */
  openDropOhm: 5000,
  wetOhm: [300, 20_000] as Reach,
  wetToPlusOhm: [1000, 100_000] as Reach,
  /** a shield that has a second earth, ohm */
  secondEarthOhm: [0.2, 900_000] as Reach,
  /** red and black swapped, V: on the lead, and on the bus */
  swappedV: [-15, -10] as Reach,
  swappedBusV: [-15, -8] as Reach,
  swappedLevelV: [-15, 0.5] as Reach,
  /** a bus that is fed from a second place with its breaker off, V */
  fedTwiceV: [9, 15] as Reach,
  /** what a bad joint in the minus takes, from little to much, V */
  lostV: [
    [0.5, 1.2],
    [1.2, 2.5],
    [2.5, 6],
  ] as readonly Reach[],
  /** errors in ten minutes: as good as none, a few, very many */
  errors: {
    none: [0, 1] as Reach,
    few: [0, 30] as Reach,
    perhaps: [0, 100_000] as Reach,
    many: [10, 100_000] as Reach,
  },
  /** over this no terminator is seen: what is left are devices, which may let through nothing at all, ohm */
  onlyNodesOhm: 1000,
} as const;
