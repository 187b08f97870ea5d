import { buyingSources } from './ledger/buying-sources.ts';
import { fittingSources } from './ledger/fitting-sources.ts';
import { lineSources } from './ledger/line-sources.ts';
import { messageSources } from './ledger/message-sources.ts';
import { powerSources } from './ledger/power-sources.ts';
import { settingSources } from './ledger/setting-sources.ts';
import type { Source } from './ledger/source.ts';
import { workOrderSources } from './ledger/work-order-sources.ts';
import { workSources } from './ledger/work-sources.ts';

export type { Source, Standing } from './ledger/source.ts';

/**
 * The ledger of sources. Every figure in core/facts names one of these keys; docs/sources.md is printed from it.
 * `standing` says how far the figure can be trusted, and is shown with it. Long parts of it stand in `ledger/`.
 */
export const sources = {
  ...lineSources,
  ...messageSources,
  ...powerSources,
  ...fittingSources,
  ...settingSources,
  ...buyingSources,
  ...workOrderSources,
  ...workSources,
  'practice-length-doubt': {
    standing: 'common practice',
    text: 'Doubt of a length by the way it is known; nothing printed was found. Every one is a setting.',
  },
  'message-fields': {
    standing: 'computed',
    text: 'Readings a message carries, from the names and fields of the messages: CANboat PGN database 6.2.0 for the bus; E. S. Raymond, NMEA Revealed, 2025, for sentences.',
  },
  'practice-message-readings': {
    standing: 'common practice',
    text: 'Fields that most senders leave empty, and messages that carry one of several kinds: several public converter handbooks and recordings agree; the standards were not read.',
  },
  'practice-derived-readings': {
    standing: 'common practice',
    text: 'What a reading is worked out from: true wind from apparent wind and speed through the water (over the ground in the careless form), set and drift from heading and both speeds.',
  },
  'practice-sentence-rates': {
    standing: 'common practice',
    text: 'Usual intervals of NMEA 0183 sentences, and the once a second at which a 4800 baud line passes on a faster heading: several public handbooks agree.',
  },
  'computed-expected-load': {
    standing: 'computed',
    text: 'Exact frame bits are 0.886 of the worst case in a recording of 49,928 frames, and 0.885 over three recordings; Nolte et al. 2001 report about a tenth less than the worst case.',
  },
  'computed-packet-wait': {
    standing: 'computed',
    text: 'Longest wait of a message of several frames: the method of Davis et al. 2007 with all frames queued at once, and with each frame finding another just begun; recomputed for a boat of thirty messages.',
  },
  'davis-2007': {
    standing: 'published',
    text: 'Davis, Burns, Bril, Lukkien, Real-Time Systems 35 (2007) 239-272: worst-case bits of a frame, 80 + 10n with a 29-bit identifier, interframe space included; longest wait of a message, exact over every sending of a busy stretch, and the short test beside it.',
  },
  'maker-loads': {
    standing: 'published',
    text: 'Currents at 12 V as boat-equipment makers print them, names withheld, grouped by kind.',
  },
  'memory-loads': {
    standing: 'from memory',
    text: 'Currents of magnetron radars and of tiller and wheel pilots, not checked against a printed page.',
  },
  'practice-sent-messages': {
    standing: 'common practice',
    text: 'Messages by kind of unit: those sent counted in public recordings of buses, those needed by habit.',
  },
  'practice-converter': {
    standing: 'common practice',
    text: 'What a converter carries and loses, after one converter handbook.',
  },
  'practice-display-envelope': {
    standing: 'common practice',
    text: 'Sizes of the middle of each class, never for cutting.',
  },
  'maker-compass-distance': {
    standing: 'published',
    text: 'Distance to a compass: one printed manual for each kind, a stand-in until the plate is read.',
  },
  'practice-radio-compass-distance': {
    standing: 'common practice',
    text: 'Distance of a fixed radio to a compass: 0.5 to 0.8 m by habit, unprinted; the larger is taken.',
  },
  'practice-sheet-gaps': {
    standing: 'project choice',
    text: 'Plugs, leads and whatever else nothing printed was found for are a plausible choice.',
  },
  'pgn-database': {
    standing: 'published',
    text: 'CANboat PGN database 6.2.0, (C) 2009-2025 Kees Verruijt, Apache-2.0; priorities it lacks from its extract of NMEA 2000 Appendix B.1 version 1.300 (May 2009).',
  },
  'pgn-typical-length': {
    standing: 'project choice',
    text: 'Typical length of a message of variable length, where the CANboat PGN database 6.2.0 states only the least.',
  },
  'pgn-maker-range': {
    standing: 'published',
    text: 'Ranges kept for makers, CANboat PGN database 6.2.0. A length of 20 bytes for their fast packets is a project choice.',
  },
  'practice-bus-limits': {
    standing: 'common practice',
    text: 'Several public installation handbooks for NMEA 2000 wiring agree. The standard itself is sold and was not read.',
  },
  'practice-cable-grades': {
    standing: 'common practice',
    text: 'Grades of NMEA 2000 cable: gauges, plug, current and outside diameter as several public handbooks give them; diameters also in Omron and AIPU data.',
  },
  'practice-plug-holes': {
    standing: 'common practice',
    text: 'Hole that lets a moulded plug pass: about 16 mm for M12, 26 to 28 mm for 7/8 in.',
  },
  'toshiba-devicenet': {
    standing: 'published',
    text: 'Toshiba, 2000-series DeviceNet module manual 6F8C0845, tables 1-2 and 1-3, 250 kbit/s (the same cable and bus); boat-trade handbooks agree where they speak.',
  },
  'omron-devicenet': {
    standing: 'published',
    text: 'Omron, DeviceNet Operation Manual, sections 2-2, 2-3, 3-4, 3-5.',
  },
  'aipu-cable': {
    standing: 'published',
    text: 'AIPU, DeviceNet cable data page: 57.0 mohm/m at most for the 22 AWG pair.',
  },
  'memory-thick-cable': {
    standing: 'from memory',
    text: 'Thick industrial cable, 15 AWG power pair: 3.6 ohm per 1000 ft; not checked against a printed page. Printed figures run from 8.9 to 11.3 mohm/m, so this one is on the careful side.',
  },
  'computed-stranded-copper': {
    standing: 'computed',
    text: 'Copper of 0.017241 ohm mm²/m (IEC 60028) at the gauge’s theoretical diameter, plus 8 % for stranded tinned wire.',
  },
  'choice-resistance-range': {
    standing: 'project choice',
    text: 'Range a conductor of this gauge can have; one handbook prints a figure ten times too small, a lost decimal.',
  },
  'choice-feed-lead': {
    standing: 'project choice',
    text: 'A feed lead nobody has measured counts as 16 AWG (1.3 mm²).',
  },
  'choice-lost-volts': {
    standing: 'project choice',
    text: 'Handbooks of boat-equipment makers print 1.5 V, 1.67 V (newer) and 3.0 V (older, or a 13.8 V supply). From a battery: warn at 1.5 V, fail at 1.67 V; from a regulated supply of 13.8 V or more: fail at 3.0 V.',
  },
  'choice-prices': {
    standing: 'project choice',
    text: 'Round figures of the order asked over the counter, so that layouts can be compared before any price is entered.',
  },
  'choice-need-worth': {
    standing: 'project choice',
    text: 'What it is worth to have a reading at a screen, when joins are chosen: more than any cable where it must be there, 100 in the currency where it would be nice.',
  },
  'choice-part-prices': {
    standing: 'project choice',
    text: 'Round prices of units by kind and of cable by the metre, so that cures can be put in order before a shop is asked.',
  },
  'practice-terminators': {
    standing: 'common practice',
    text: 'Two terminators, one at each end of the trunk, where they can be lifted for a test: several public installation handbooks agree.',
  },
  'practice-dry-joints': {
    standing: 'common practice',
    text: 'No joints in the bilge, in the weather or in the engine space; a wet tee is the commonest fault of a bus.',
  },
  'practice-0183': {
    standing: 'common practice',
    text: 'One talker, several listeners on a pair; never two talkers: several public installation handbooks agree.',
  },
  'iec-61162': {
    standing: 'published',
    text: 'IEC 61162-1 (4800 baud) and IEC 61162-2 (38400 baud), second-hand; the standards themselves are sold and were not read.',
  },
  'messages-conflicts': {
    standing: 'computed',
    text: 'Two senders of one instance overwrite each other on every receiver: follows from the messages, which carry no other mark; seen in shared recordings.',
  },
  'practice-survey': {
    standing: 'common practice',
    text: 'Open every conduit, pull a messenger line and tape the length before cable is cut or ordered.',
  },
  'practice-bus-load': {
    standing: 'common practice',
    text: 'Note a bus at 30 %, warn at 50 %, stop at 70 % of its worst-case load: secondary sources only, no figure of the standard was found. Shared recordings: a refitted boat at 10 to 15 %, a bus of 43 addresses at 52 %.',
  },
  'practice-bus-feed': {
    standing: 'common practice',
    text: 'One feed with its own switch or breaker, from the house bank, never from the start bank; fused at the lowest rating downstream: several public installation handbooks agree.',
  },
  'practice-tank-numbers': {
    standing: 'common practice',
    text: 'Some displays refuse a tank numbered above 5; owners report it, no standard asks for it.',
  },
  'practice-ais-static': {
    standing: 'common practice',
    text: 'A target’s name and size come in messages of their own (129794, 129809, 129810 on the bus); both lists must have them.',
  },
  geometry: { standing: 'computed', text: 'Follows from the places and ways as entered.' },
  'project-layout': {
    standing: 'project choice',
    text: 'The layout problem of one bus as this project states it; see docs/decisions/0002.',
  },
  'project-readings': {
    standing: 'project choice',
    text: 'A reading arrives when a chain of ports, joins and turns carries it to the screen; see docs/decisions/0003.',
  },
  'project-provenance': {
    standing: 'project choice',
    text: 'Every figure says where it comes from; nothing from memory is shown as checked.',
  },
  'practice-tails': {
    standing: 'common practice',
    text: 'Cable left at a unit where none was entered: enough to reach its plug, and to draw a flush unit forward. Every one is a setting.',
  },
  'practice-drop-pieces': {
    standing: 'common practice',
    text: 'Lengths in which moulded drop cables are commonly sold; the owner’s own price list replaces them.',
  },
  'practice-lowest-bank': {
    standing: 'common practice',
    text: 'A 12 V bank is taken down to about 11.5 V under load before it is charged again; the owner’s own figure replaces it.',
  },
  'choice-unknown-supply': {
    standing: 'project choice',
    text: 'A panel feeder of unknown length, size or load counts as losing 3 %, the limit it should have been made to; a supply of unknown voltage counts as 12 V.',
  },
  'iec-60028': {
    standing: 'from memory',
    text: 'IEC 60028, resistance of annealed copper: 0.017241 ohm mm²/m at 20 °C, 0.00393 per kelvin. The standard was not at hand.',
  },
  'rockwell-devicenet': {
    standing: 'published',
    text: 'Rockwell Automation, DeviceNet Media Design and Installation Guide, DNET-UM072C-EN-P, July 2004.',
  },
  'computed-industrial-fit': {
    standing: 'computed',
    text: 'Straight-line resistance fitted to the tables of Omron, DeviceNet Operation Manual, and Bray, Series 70 DeviceNet manual (2000), tables 4 and 5, within 0.011 A.',
  },
  'drawn-hull-shapes': {
    standing: 'project choice',
    text: 'Hull shapes drawn for this project, stretched to the length, beam, draft and air draft entered. No boat was traced.',
  },
  'practice-hull-measures': {
    standing: 'common practice',
    text: 'Beam, draft, air draft, batteries and circuits that boats of a kind usually have, set beside the length to have something to start from; nothing printed was found. Each is to be measured.',
  },
  'practice-guessed-ways': {
    standing: 'common practice',
    text: 'A cable led along lockers, linings and frames is about a third longer than the straight line, in a mast a twentieth. Nothing printed was found; taped ways of the demo boats lie between 1.1 and 1.6.',
  },
  'heading-reference': {
    standing: 'computed',
    text: 'The heading message of the bus (127250) has a field that says true or magnetic, and true is magnetic and variation: CANboat PGN database 6.2.0. A sheet cannot say yet which of the two a sensor sends.',
  },
  'choice-before-and-after': {
    standing: 'project choice',
    text: 'The boat before the refit is the file with what leaves still aboard and nothing that comes; screens are computers, displays, instruments, pilot heads, sounders and tablets.',
  },
} as const satisfies Record<string, Source>;

export type SourceKey = keyof typeof sources;
