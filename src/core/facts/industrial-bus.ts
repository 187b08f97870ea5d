/**
 * Power figures printed for the industrial bus that shares its cable and plugs with NMEA 2000, at 24 V: an outside check
 * of the solver. `lostVPerConductor` is the loss in ONE conductor; NMEA 2000 figures count the way out and back.
 */
export const industrialBus = {
  source: 'omron-devicenet',
  lostVPerConductor: 4.65,
  /** most current at the end of a trunk of that length */
  thick: {
    lengthM: [0, 25, 50, 100, 150, 200, 250, 300, 350, 400, 450, 500],
    mostA: [8, 8, 5.42, 2.93, 2.01, 1.53, 1.23, 1.03, 0.89, 0.78, 0.69, 0.63],
    capA: 8,
  },
  thin: {
    lengthM: [0, 10, 20, 30, 40, 50, 60, 70, 80, 90, 100],
    mostA: [3, 3, 3, 2.06, 1.57, 1.26, 1.06, 0.91, 0.8, 0.71, 0.64],
    capA: 3,
  },
  /** resistance of one conductor that gives these tables to 0.011 A */
  fitted: {
    source: 'computed-industrial-fit',
    thick: { ohmPerM: 0.01458, fixedOhm: 0.13 },
    thin: { ohmPerM: 0.07153, fixedOhm: 0.105 },
  },
  /** most current on one drop line: 4.57 A m / length, at most 3 A */
  drop: {
    source: 'rockwell-devicenet',
    lengthM: [1.5, 2, 3, 4.5, 6],
    mostA: [3, 2, 1.5, 1, 0.75],
    ampMetres: 4.57,
    capA: 3,
  },
} as const;
