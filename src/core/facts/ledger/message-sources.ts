import type { Source } from './source.ts';

/** Sources of what a source plan rests on: which sender counts, which sentences to use, which numbers to give. */
export const messageSources = {
  'recorded-ship-reports': {
    standing: 'computed',
    text: 'Reports of other ships in two shared recordings: 445 and 76 positions, 14 names and voyages and 5 and 4 parts of names in 61 s of a full bus, told as 7.4 and 1.3 positions a second; 137 and 7 positions, 12 names and voyages and 9 parts of names among 183 sentences in 163 s on a coast.',
  },
  'computed-claims': {
    standing: 'computed',
    text: 'When n units are switched on together: n claims of an address, and where each asks all others for theirs, n questions and n · n more claims. A shared recording of three units switched on agrees: 4 questions, 15 claims.',
  },
  'iso-11898': {
    standing: 'published',
    text: 'ISO 11898-1, second-hand: the bits of a frame from start to space, a bit of the other kind after every five alike, CRC-15 by the polynomial 4599, 13 bits behind that are never stuffed.',
  },
  'memory-ais-layout': {
    standing: 'from memory',
    text: 'ITU-R M.1371, messages 1, 2, 3, 5, 18, 19 and 24: where each field stands, its step, and the value that says none; a turn is told by 4.733 times the root of degrees a minute. Held against the counts of a recording and an encoder of our own.',
  },
  'iso-11783-5': {
    standing: 'published',
    text: 'ISO 11783-5, second-hand through an open implementation: the lowest NAME keeps an address; a claim counts when nobody opposes it for 250 ms; 254 is the address of who has none, 255 means everyone; who loses its address takes another or falls silent.',
  },
  'choice-listening': {
    standing: 'project choice',
    text: 'A source is silent after 3 s without a byte; more than half of the bytes of five seconds making no line is noise, more than 95 % a wrong speed, as at a wrong one nothing has a right checksum; once each speed was tried each is listened to for 2 s; a sender is silent after three times its longest usual gap, at least 3 s; a second source takes over within 10 s. Claims are waited for 1.25 s, questions are 0.2 s apart, answers are waited for 2 s.',
  },
  'practice-baud': {
    standing: 'common practice',
    text: 'Talkers run at 4,800 baud, AIS and newer ones at 38,400, adapters and multiplexers on USB at 115,200.',
  },
  'choice-quiet-waters': {
    standing: 'project choice',
    text: 'In quiet waters one ship under way in reach, every 10 s, and one small craft, every 30 s; each with its name every 6 min. The intervals of class B are those of ITU-R M.1371-5, second-hand, the one of class A is from memory.',
  },
  'choice-fast-sender': {
    standing: 'project choice',
    text: 'A message sent five times as often as usual or more is pointed out. Shared recordings show sensors at two to twenty times the usual rate; no figure of a standard was found.',
  },
  'choice-source-order': {
    standing: 'project choice',
    text: 'Of several sources the one made to measure before one built into something else, then the reference and the offset as wanted, the higher rate, fewer converters, the better sheet, the lower number, the shorter way. Screens choose by sender or take the lowest number.',
  },
  'practice-satellite-sentences': {
    standing: 'common practice',
    text: 'GSV comes in sets of several sentences of up to 70 characters each; with GSA and GBS it takes a good part of a 4800 baud line, and a plotter or radio that is given a position needs none of them.',
  },
  'practice-engine-numbers': {
    standing: 'common practice',
    text: 'Of two engines port is number 0 and starboard number 1; displays label them so. No standard was read.',
  },
  'practice-pilot-sentences': {
    standing: 'common practice',
    text: 'A pilot on NMEA 0183 wants APB and RMB both, and variation; with one of them missing it alarms, or does not follow.',
  },
  'practice-log-headings': {
    standing: 'common practice',
    text: 'VHW has fields for heading; a log without a compass leaves them empty, sends nothing but zero, or fills in its course. They are not to be turned into a heading.',
  },
  'practice-empty-variation': {
    standing: 'common practice',
    text: 'Many receivers leave the variation of RMC empty, and some listeners take an empty field for zero.',
  },
  'choice-proof': {
    standing: 'project choice',
    text: 'How far a watched bus or line may be from its plan. No figure was found in print: an interval from half to twice the planned one, headings 5° apart, depths 0.5 m after their offsets, variations 0.5°, a load from half to 1.2 of the planned one, a silence of ten intervals.',
  },
} as const satisfies Record<string, Source>;
