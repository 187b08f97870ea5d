import type { Source } from './source.ts';

/** Sources of what is set by the boat’s own measures, of the papers of her radios, and of what is computed at sea. */
export const settingSources = {
  'practice-depth-settings': {
    standing: 'common practice',
    text: 'Safe depth is draft, waves and squat, and doubt, typed in the same reference into plotter and sounder; the offset is entered once, nearest to the transducer, and proved with a lead line.',
  },
  'practice-air-draft': {
    standing: 'common practice',
    text: 'Air draft is the sum of named measured parts with whatever stands on top; no credit is taken for heel; which level a chart counts bridges from is read off the chart.',
  },
  'itu-m1371': {
    standing: 'published',
    text: 'ITU-R M.1371-5, message 5, second-hand: A bow, B stern, C port, D starboard, whole metres from the position antenna in use. Rounding, and A = 1 where A and C would both be 0, are ours.',
  },
  'uscg-ais-encoding': {
    standing: 'published',
    text: 'USCG AIS Encoding Guide v.25: a name over 20 characters keeps its first 15, an underscore and its last 4; prefixes are dropped; draft in metres.',
  },
  'cfr-80-231': {
    standing: 'published',
    text: 'US law, 47 CFR 80.231(b), text as of 1 October 2020: static data of an AIS class B is entered by its vendor or by one who installs marine communications for a living, in no event by the user. The present text was not seen.',
  },
  'uscg-mmsi': {
    standing: 'published',
    text: 'USCG NAVCEN, MMSIs for recreational vessels: one vessel, one number in all her own sets; a number of a private registrar is not for foreign ports, which need an FCC ship station licence and a new number.',
  },
  'memory-ais-entry': {
    standing: 'from memory',
    text: 'Outside the United States owners commonly enter the number and the static data themselves, usually once; a change needs the maker or a dealer. Not checked.',
  },
  'memory-paper-waits': {
    standing: 'from memory',
    text: 'Waiting times of numbers, licences and registrations. Not checked: they differ from state to state, so ask the office and write its answer down.',
  },
  'practice-papers-first': {
    standing: 'common practice',
    text: 'A radio, an AIS and a beacon cannot be set up before their papers are there, so those are started before anything is ordered; nine digits are read back by a second person before they are typed in.',
  },
  'practice-log-wind': {
    standing: 'common practice',
    text: 'New factor = old factor × true ÷ indicated; wind offset = half the difference between the tacks, same trim, four to six tacks. Factors of an old head do not hold in a new one.',
  },
  'computed-log-runs': {
    standing: 'computed',
    text: 'Relative motion: to and fro in a stream the speeds are averaged, not the times; the mean of means (named in J. Mar. Sci. Technol. 2015, doi 10.1007/s00773-015-0361-y) takes out a stream that changes evenly.',
  },
  'practice-deviation-curve': {
    standing: 'common practice',
    text: 'Deviation is A + B sin h + C cos h + D sin 2h + E cos 2h, navigation textbooks; swung with electronics off and all on, both cards kept.',
  },
  'choice-deviation-curve': {
    standing: 'project choice',
    text: 'A deviation curve is drawn through eight headings or more with no gap over 60° between them; with fewer it would be a guess.',
  },
  'choice-feet-for-metres': {
    standing: 'project choice',
    text: 'A figure that is 2.6 to 4.1 times what it should be, or a draft over 0.35 of the length, may be feet typed as metres; so may one that is as many times too small be metres typed as feet.',
  },
  'choice-depth-margins': {
    standing: 'project choice',
    text: 'Where the owner says nothing: 0.30 m for waves and squat, 0.50 m for doubt, 1 m free above the mast. Each is a setting.',
  },
  'choice-typed-agrees': {
    standing: 'project choice',
    text: 'What stands in a unit agrees with what should where it lies within 0.06 m, 0.02 of a factor or 1°: a tenth of a foot or a metre is the step of many menus.',
  },
  'practice-radar-start': {
    standing: 'common practice',
    text: 'A radar is told the height of its scanner over the water; its heading line starts at 0° and is aligned at sea on a mark dead ahead.',
  },
  'practice-screen-units': {
    standing: 'common practice',
    text: 'Messages carry metres, metres a second and kelvin; each screen shows them in units of its own, which are set one by one and written down.',
  },
} as const satisfies Record<string, Source>;
