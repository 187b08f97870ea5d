import type { Source } from './source.ts';

/** Sources of the tables about data lines: sentences, plugs, levels, Ethernet, segregation. */
export const lineSources = {
  'raymond-nmea': {
    standing: 'published',
    text: 'E. S. Raymond, NMEA Revealed, 2025 (BSD-2-Clause document): what each sentence says, at most 82 characters.',
  },
  'recorded-sentence-lengths': {
    standing: 'computed',
    text: 'Characters counted in recordings of NMEA 0183 lines, from the start character to CR LF.',
  },
  'usual-sentence-lengths': {
    standing: 'common practice',
    text: 'Characters of a sentence as in recordings seen, start character to CR LF; not counted again here.',
  },
  'sample-sentences': {
    standing: 'computed',
    text: 'Characters of an invented sentence with every field filled, start character to CR LF.',
  },
  'practice-0183-load': {
    standing: 'common practice',
    text: 'Plan an NMEA 0183 line to at most 80 %: sentences come in bursts, and the excess is lost.',
  },
  'computed-serial': {
    standing: 'computed',
    text: 'Ten bit times a character: one start bit, eight data bits, one stop bit.',
  },
  'choice-fan-out': {
    standing: 'project choice',
    text: 'Listeners on one NMEA 0183 output where its manual is silent: makers print 1, 2, 3, 4 and 10; 3 is taken.',
  },
  'ti-rs422': {
    standing: 'published',
    text: 'TI, SN75179B data sheet SLLS003G, for TIA/EIA-422-B: a receiver needs 200 mV.',
  },
  'rs422-primers': {
    standing: 'published',
    text: 'EIA-422 annex, second-hand through public RS-422 primers: about 1200 m at 100 kbit/s, 10 receivers.',
  },
  'practice-0183-pairs': {
    standing: 'common practice',
    text: 'Twisted pair above 20 m at 38400 and above 50 m at 4800 baud; how old single wires and pairs are joined.',
  },
  'practice-bus-pins': {
    standing: 'common practice',
    text: 'Pins and colours of the five-pole bus plugs, micro and mini alike: several public installation handbooks agree.',
  },
  'ge-devicenet': {
    standing: 'published',
    text: 'GE, OKCV3000 DeviceNet manual, p 53: numbering of the five-way screw terminal.',
  },
  'beckhoff-ep6001': {
    standing: 'published',
    text: 'Beckhoff, EP6001 pages: colours of generic A-coded M12 leads.',
  },
  'practice-moulded-leads': {
    standing: 'common practice',
    text: 'Moulded power leads with other colours exist; meter before joining.',
  },
  'practice-own-plugs': {
    standing: 'common practice',
    text: 'Makers’ own plugs on what is electrically the same bus, and how they are joined.',
  },
  'm12-d-manuals': {
    standing: 'published',
    text: 'SICK, DT1000 manual, p 46; Datalogic, Matrix 410 manual, p 74: signals of the D-coded M12 plug; the RJ45 pins follow from the signals.',
  },
  'framos-d435e': {
    standing: 'published',
    text: 'Framos, D435e manual, p 11: X-coded M12 plug to RJ45.',
  },
  'ieee-poe': {
    standing: 'published',
    text: 'IEEE 802.3af, at and bt class figures, second-hand; Linux kernel PSE-PD introduction. Class 8 counts as 90 W at the source.',
  },
  'memory-ethernet-length': {
    standing: 'from memory',
    text: 'ISO/IEC 11801: 100 m of copper with its patch leads; the standard was not read.',
  },
  'practice-ethernet': {
    standing: 'common practice',
    text: 'Radar cables sold for 50 m only, holes for plugs, radar pictures as multicast up to 8 Mbit/s: public handbooks.',
  },
  'practice-remote': {
    standing: 'common practice',
    text: 'Converters write on unless set to listen only, phones work screens, first passwords stand in manuals, a router gives addresses, one giver a network.',
  },
  'practice-lighting': {
    standing: 'common practice',
    text: 'Screens of one maker dim together by its own messages; old ones have a knob each.',
  },
  'iec-61162-450': {
    standing: 'published',
    text: 'IEC 61162-450:2011, 5.3 and 5.4: addresses set aside for ship networks.',
  },
  'practice-segregation': {
    standing: 'common practice',
    text: 'Distances between data, radio and power leads: several public installation handbooks agree.',
  },
  'schneider-atv312': {
    standing: 'published',
    text: 'Schneider, ATV312 DeviceNet manual, p 12: fieldbus cables beside power.',
  },
  'practice-bend': {
    standing: 'common practice',
    text: 'Bend radius of at least 100 mm for any data or power cable: several handbooks.',
  },
  'aipu-bend': {
    standing: 'published',
    text: 'AIPU, DeviceNet cable data page: bend radius 8 x the outside diameter.',
  },
  'memory-bend': {
    standing: 'from memory',
    text: 'Bend radius as a multiple of the outside diameter, for power, coax and category 6 cables; not checked.',
  },
  'ti-can-levels': {
    standing: 'published',
    text: 'TI, TCAN1144-Q1 SLLSF80B, TCAN1465-Q1 SLLSFP9, TCAN1044-Q1 SLLSF17B: levels of a CAN transceiver.',
  },
  'practice-shield': {
    standing: 'common practice',
    text: 'The shield of a bus is earthed at one point, at its feed, and carried through insulated everywhere else; that of an NMEA 0183 pair at the talker only.',
  },
  'esd-can': {
    standing: 'published',
    text: 'CAN troubleshooting guide of esd (in manual C.2066.21): 50 to 70 ohm, idle 2.0 to 4.0 V, shield above 1 Mohm.',
  },
  'wago-canopen': {
    standing: 'published',
    text: 'WAGO, 750 CANopen manual, p 80: what the resistance between the data wires tells.',
  },
  'practice-one-terminator': {
    standing: 'common practice',
    text: 'A bus with one terminator often still works where it is short; errors grow with its length. WAGO, 750 CANopen manual, p 80 reads 120 ohm then.',
  },
  'maker-meter-levels': {
    standing: 'published',
    text: 'Alarm levels of one diagnostic instrument; maker’s name withheld.',
  },
  'practice-dock-tests': {
    standing: 'common practice',
    text: 'Order of the tests at the dock, and what a meter shows on a busy bus.',
  },
  'computed-bus-ohm': {
    standing: 'computed',
    text: 'Resistance between the data wires with t terminators and n nodes: R = 1 / (t/120 + n/Rd).',
  },
  'choice-dock-meter': {
    standing: 'project choice',
    text: 'A hand meter: 1 % of what it reads, half an ohm in its leads, and over 20 Mohm it shows an open circuit.',
  },
  'choice-dock-diagnosis': {
    standing: 'project choice',
    text: 'How far each fault of a bus may go and how far readings stray, to weigh causes against each other; before anything is read each is as likely as another. Tried on 10,000 simulated faults.',
  },
  'practice-dead-bus': {
    standing: 'common practice',
    text: 'A bus whose breaker is off has no volts between red and black; where it has, it is fed from a second place. Half a volt is allowed for what units still hold.',
  },
  'practice-0183-idle': {
    standing: 'common practice',
    text: 'An idle NMEA 0183 pair has A low and B high, 0 V and 5 V in one manual. 0.2 V between the two is the least a receiver reads by (TI, SLLS003G).',
  },
  'practice-hull-volts': {
    standing: 'common practice',
    text: 'On a metal hull the volts from plus to hull and from minus to hull are read with all off, then as each panel comes on, and the potential of an anode before and after the work. No figure was found for any: only what changes is told.',
  },
} as const satisfies Record<string, Source>;
