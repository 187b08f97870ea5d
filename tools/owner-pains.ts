/** One thing owners run into on a refit: the rules that look at it, and what no rule looks at yet, with the reason. */
export interface OwnerPain {
  readonly pain: string;
  readonly rules: readonly string[];
  /** absent where the rules cover it */
  readonly open?: string;
}

/** What owners run into, gathered from what they report in public; each is covered by rules, or said to be open. */
export const ownerPains: readonly OwnerPain[] = [
  {
    pain: 'The new screen lacks the input of an old talker, and the converter is late or the wrong way round.',
    rules: [
      'converters/input-leads-nowhere',
      'readings/needed-but-missing',
      'wiring/baud-differs',
      'wiring/line-kinds-meet',
    ],
  },
  {
    pain: 'Several 0183 talkers are tied together.',
    rules: ['converters/output-overflows', 'wiring/too-many-listeners', 'wiring/two-talkers-on-one-pair'],
  },
  {
    pain: 'Which sentences have to be switched on?',
    rules: ['readings/needed-but-missing', 'wiring/line-too-full'],
    open: 'The plan lists what to switch on and off in each unit; whether a unit lets single sentences be switched, no sheet says yet.',
  },
  {
    pain: 'The pilot sees data but sounds its alarm, or will not follow the route.',
    rules: ['readings/needed-but-missing', 'readings/reference-unknown'],
    open: 'A sheet cannot say yet that several sentences are needed together, or which field of one may not be empty.',
  },
  {
    pain: 'One thing is mended, and half the gear goes silent.',
    rules: ['bus/in-line-unit-leaves', 'readings/needed-but-missing'],
    open: 'Every need is followed again after each change. What one failure takes away is not worked out yet.',
  },
  {
    pain: 'Two units send one value: it jumps, or the wrong one is shown.',
    rules: [
      'converters/heading-from-log',
      'converters/messages-go-round',
      'identities/several-sources',
      'readings/backup-reads-differently',
      'readings/chosen-source-silent',
      'readings/several-for-one-need',
    ],
  },
  {
    pain: 'Tanks, batteries or engines have the same number.',
    rules: [
      'identities/device-number-for-data-number',
      'identities/same-instance-twice',
      'identities/tank-number-too-high',
      'readings/one-of-two-lost',
    ],
  },
  {
    pain: 'Heading or wind is off by the variation.',
    rules: [
      'identities/several-sources',
      'readings/needed-but-missing',
      'readings/reference-unknown',
      'readings/variation-missing',
      'readings/wind-direction-without-heading',
    ],
    open: 'Wind by compass direction has no reference in the boat file yet.',
  },
  {
    pain: 'There is no true wind.',
    rules: ['readings/needed-but-missing', 'readings/true-wind-from-ground', 'readings/true-wind-of-two-kinds'],
  },
  {
    pain: 'The new screen cannot set the offset or the calibration of a sensor.',
    rules: ['readings/offset-twice', 'settings/offset-in-two', 'settings/offset-sign'],
    open: 'The plan says in which unit the offset of a depth is entered. Sheets do not say yet with which tool.',
  },
  {
    pain: 'Ships are shown without a name, or not drawn.',
    rules: ['readings/ais-names-missing', 'readings/needed-but-missing'],
    open: 'Heading at the AIS set is looked at only where it is entered as a need.',
  },
  {
    pain: 'Routes and waypoints do not get through a converter.',
    rules: ['readings/needed-but-missing'],
  },
  {
    pain: 'The bus is wrongly built: long drops, strings of tees, two supplies joined, 24 V, no terminator.',
    rules: [
      'bus/cable-left-on-the-bus',
      'bus/drop-too-long',
      'bus/drops-too-long-together',
      'bus/fed-twice',
      'bus/no-feed',
      'bus/tee-not-allowed-here',
      'bus/terminator-on-a-drop',
      'bus/terminators-too-many-or-few',
      'bus/too-far-end-to-end',
      'bus/volts-too-high',
      'bus/volts-too-low',
    ],
  },
  {
    pain: 'Screens restart with the horn, the starter or the thruster.',
    rules: [
      'bus/fed-from-start-bank',
      'bus/volts-too-low',
      'supply/reboots-while-cranking',
      'supply/screen-shares-with-motor',
      'supply/start-bank-feed',
    ],
  },
  {
    pain: 'It was ordered too late, the mast is up, the plug does not pass, the cable is short.',
    rules: [
      'plugs/fixed-lead-too-short',
      'plugs/plug-too-big-for-the-way',
      'provenance/length-guessed-and-bought',
      'ways/led-through-unseen-way',
      'ways/no-route-for-line',
      'ways/shorter-than-straight',
      'work/no-order',
      'work/papers-too-late',
    ],
    open: 'The last day to order each part stands in the plan of the work; no rule speaks of one that has passed.',
  },
  {
    pain: 'Nobody can say which unit is at fault.',
    rules: ['identities/known-by-address-only', 'identities/same-name-twice'],
    open: 'A recording is read into a draft; it is not held against the plan yet.',
  },
];
