import type { Source } from './source.ts';

/** Sources of the tables about conductors, ampacity, overcurrent, loads, labour and cautions. */
export const powerSources = {
  'astm-b258': {
    standing: 'published',
    text: 'ASTM B258, second-hand: d = 0.127 mm x 92^((36-n)/39); computed areas match catalogue areas.',
  },
  'sae-j1127': {
    standing: 'published',
    text: 'SAE J1127 and J1128 minimum areas, second-hand: several cable catalogues repeat them. 6 AWG: the smaller of two printed figures.',
  },
  'iec-60228-tables': {
    standing: 'published',
    text: 'IEC 60228 tables 2 and 3, largest resistance at 20 °C, second-hand: three public cable pages agree.',
  },
  'vde-0295': {
    standing: 'published',
    text: 'DIN VDE 0295, small bunched pairs, second-hand.',
  },
  'abyc-e11': {
    standing: 'published',
    text: 'ABYC E-11, second-hand: drop formula with K = 10.75, drop of 3 and 10 %, interrupt capacity of table V-A. Check against the edition in force.',
  },
  'iso-13297': {
    standing: 'published',
    text: 'ISO 10133:2012 and ISO 13297:2020 with A1:2022, second-hand: drop constant 0.0164, conductor sizes, supports. Check against the edition in force.',
  },
  'division-227': {
    standing: 'published',
    text: 'France, Division 227, art. 227-5.02: 5 % at the consumer, supports every 250 mm.',
  },
  'cfr-33-183-425': {
    standing: 'published',
    text: 'Code of Federal Regulations, 33 CFR 183.425, table 5 and (d) to (g): current of conductors at 30 °C, least sizes; note 1 (0.85 in an engine space at 105 °C) second-hand.',
  },
  'memory-engine-factors': {
    standing: 'from memory',
    text: 'Factors of an engine space for insulation other than 105 °C; all but 200 °C fit sqrt((T-50)/(T-30)).',
  },
  'uscg-bundles': {
    standing: 'published',
    text: 'USCG electrical compliance guideline, second-hand: factors for conductors in one bundle.',
  },
  'memory-iso-ampacity': {
    standing: 'from memory',
    text: 'ISO 13297 table A.1, its engine and bundle factors; unconfirmed but for the 200 °C column.',
  },
  'cfr-46-183-340': {
    standing: 'published',
    text: 'Code of Federal Regulations, 46 CFR 183.340: least sizes and supports on inspected vessels.',
  },
  'cfr-33-183-455': {
    standing: 'published',
    text: 'Code of Federal Regulations, 33 CFR 183.455: overcurrent protection at the source, within 178 mm, or within 1016 mm in a sheath; at most 150 % of the conductor below 50 V.',
  },
  'cfr-46-overcurrent': {
    standing: 'published',
    text: 'Code of Federal Regulations, 46 CFR 111.50-3 and 183.380(d): 100 % of the conductor, or the next size up to 150 %.',
  },
  'imo-small-craft': {
    standing: 'published',
    text: 'IMO small-craft text 8.2.4, second-hand: protection at most at the conductor’s rating.',
  },
  'iso-13590': {
    standing: 'published',
    text: 'ISO 13590:2018 (personal watercraft), second-hand.',
  },
  'memory-fuse-places': {
    standing: 'from memory',
    text: 'Distances of protection from a battery in trade wording (7, 40, 72 inches) and in ISO 10133; not checked.',
  },
  'choice-conductor-basis': {
    standing: 'project choice',
    text: 'Gauges are sized by K = 10.75 on the least area a cable may be sold with, metric sizes by tinned class 5 wire at 30 °C, 50 °C in an engine space; the other rule is shown beside it.',
  },
  'physics-wire-field': {
    standing: 'computed',
    text: 'Field of a long straight wire, B = μ0 I / (2π d); of a go-and-return pair and of a small loop from it.',
  },
  'choice-fuse-place': {
    standing: 'project choice',
    text: 'Protection within 178 mm of the source for everything but engine cranking; other rules can be chosen by name.',
  },
  'choice-fuse-limit': {
    standing: 'project choice',
    text: 'A fuse up to 100 % of the conductor is right, up to 150 % a warning, above it refused: texts print 100 and 150 %.',
  },
  'practice-fuse-size': {
    standing: 'common practice',
    text: 'Fuse at least 1.25 x the steady current at the lowest supply voltage; families of fuses and their ranges.',
  },
  'memory-fuse-steps': {
    standing: 'from memory',
    text: 'Steps in which fuses and breakers are made, and colours of blade fuses; not checked.',
  },
  'practice-device-aic': {
    standing: 'common practice',
    text: 'Fault current that blade, bolt-down and class T fuses can break: makers’ catalogues agree.',
  },
  'memory-device-aic': {
    standing: 'from memory',
    text: 'Fault current that ANL and terminal-post fuses can break; not checked.',
  },
  'practice-fault-current': {
    standing: 'common practice',
    text: 'Fault current that batteries can give, by kind.',
  },
  'practice-loads': {
    standing: 'common practice',
    text: 'Currents as owners report them: AIS receiver, linear drive, satellite terminal; the maker’s sheet wins.',
  },
  'memory-switch-loads': {
    standing: 'from memory',
    text: 'Currents of a PoE switch alone and of LED lights; not checked.',
  },
  'practice-duty': {
    standing: 'common practice',
    text: 'Hours a day that things run at anchor, sailing and motoring; every one can be set.',
  },
  'choice-day-duty': {
    standing: 'project choice',
    text: 'What runs when nothing printed says so: a kind without a row of its own with the instruments, a pilot all the run, alarms and meters always, alongside only what is never switched off and what is used below.',
  },
  'practice-battery': {
    standing: 'common practice',
    text: 'Usable share, charge efficiency and Peukert exponents of lead batteries.',
  },
  'memory-battery': {
    standing: 'from memory',
    text: 'Usable share, charge efficiency and Peukert exponent of lithium iron phosphate batteries; not checked.',
  },
  'practice-labour': {
    standing: 'common practice',
    text: 'Planning hours by task for a professional and for an owner; every one can be set.',
  },
  'practice-cautions': {
    standing: 'common practice',
    text: 'Safety texts in the words of this project; each names the law, standard or manual that decides.',
  },
  'nec-fill': {
    standing: 'published',
    text: 'NFPA 70 (NEC) chapter 9 table 1, second-hand: 53, 31 and 40 % of a conduit, 60 % of a nipple; jam between 2.8 and 3.2 diameters.',
  },
  'choice-fill': {
    standing: 'project choice',
    text: 'Pipes in real boats sit at 50 to 60 %: a doubt above 40 %, refused above 60 % or when the largest plug cannot pass; what is in place is never refused.',
  },
  'memory-supports': {
    standing: 'from memory',
    text: 'ABYC E-11, supports every 457 mm; not checked.',
  },
  'cfr-46-143': {
    standing: 'published',
    text: 'Code of Federal Regulations, 46 CFR 143 (towing vessels): supports every 1219 mm.',
  },
  'practice-crimp': {
    standing: 'common practice',
    text: 'Pull a crimp must stand for one minute, as a component maker specifies it.',
  },
  'memory-crimp': {
    standing: 'from memory',
    text: 'ABYC least pull of a crimp; not checked.',
  },
  'cfr-33-183-445': {
    standing: 'published',
    text: 'Code of Federal Regulations, 33 CFR 183.445(a): conductors are protected against chafe where they pass a bulkhead or a rigid edge.',
  },
  'practice-cable-holds': {
    standing: 'common practice',
    text: 'What network, pair and coax cables hold, as they are commonly sold for boats.',
  },
  'practice-openings': {
    standing: 'common practice',
    text: 'How openings for cables and sensors are closed: glands or side entries on deck, bedding by the maker’s manual, a through-hull watched for 24 hours afloat, an old hole plugged or laminated by the yard.',
  },
  'memory-dc-colours': {
    standing: 'from memory',
    text: 'Colours of direct current after ABYC and ISO: plus red, minus black or yellow, yellow where black is the live wire of mains aboard; not checked.',
  },
  'world-magnetic-model': {
    standing: 'computed',
    text: 'Horizontal field of the Earth by the World Magnetic Model, June 2026.',
  },
  'choice-summed-drop': {
    standing: 'project choice',
    text: 'Feeder and branch are tested each alone, as the standards do, and a sum above 3 % is warned of: the device feels the sum.',
  },
  'memory-caution-texts': {
    standing: 'from memory',
    text: 'Safety texts that refer to standards which were not read; each names what decides.',
  },
  'practice-bores': {
    standing: 'common practice',
    text: 'Bores conduits are sold in, mm.',
  },
  'choice-rated-transit': {
    standing: 'project choice',
    text: 'A watertight or fire bulkhead is passed only by a transit rated for it; each such passage is noted.',
  },
  'choice-detours': {
    standing: 'project choice',
    text: 'How much longer a cable may be for keeping out of heat, wet and bilge, off mains, radio leads and compass, and out of a bulkhead that wants a rated transit.',
  },
  'osr-coax-lengths': {
    standing: 'published',
    text: 'Guidance to the Offshore Special Regulations, second-hand: RG-8X to 15 m, thicker coax beyond.',
  },
  'practice-load-test': {
    standing: 'common practice',
    text: 'Public workshop manuals agree: a sound 12 V battery under half its cold-cranking amperes may fall to 9.6 V within 15 s at 20 °C, lower in the cold.',
  },
  'practice-separate-feeds': {
    standing: 'common practice',
    text: 'A fuse or breaker for each unit, or an in-line fuse for each where several share a breaker; screens apart from motors; not from the starting battery; one feed to a bus; after any one fuse a radio, a position and a screen are left.',
  },
  'practice-middle-tap': {
    standing: 'common practice',
    text: 'Public guides to 24 V supplies agree: 12 V taken from between two batteries in series empties one and overcharges the other; a converter for the whole bank, or an equaliser, is the way.',
  },
  'cfr-46-28-860': {
    standing: 'published',
    text: 'Code of Federal Regulations, 46 CFR 28.860(f) and (g): navigation lights on their own switched circuits, each radio on its own protected circuit from the main panel.',
  },
  'choice-converter-load': {
    standing: 'project choice',
    text: 'A converter is held against everything on it drawing its most at once; a peak beyond its rating is a doubt, for some give more for moments.',
  },
  'choice-named-volts': {
    standing: 'project choice',
    text: 'A supply of 13.8 V counts as 12 V and one of 28 V as 24 V: the largest name that is not above it, less a tenth.',
  },
  'choice-feed-insulation': {
    standing: 'project choice',
    text: 'Insulation a new feed is reckoned with where nobody has said: 90 °C for a metric size, 105 °C for a gauge, as most boat cable sold by each.',
  },
  'choice-cable-sizes': {
    standing: 'project choice',
    text: 'Outside diameter of a cable by its kind, and of the plug that comes moulded on it, where nobody has measured: the thicker of those met aboard.',
  },
  'choice-steering-reach': {
    standing: 'project choice',
    text: 'What makes a pilot let go is within reach up to 1 m in a straight line from where one steers: an arm and half a step.',
  },
  'choice-drive-drop': {
    standing: 'project choice',
    text: 'Feed and lead of a steering drive together: 3 % at the current it runs at, 10 % at its peak. A maker’s cable tables for pilots (name withheld) keep 3 % at a current between the two.',
  },
  'choice-let-go': {
    standing: 'project choice',
    text: 'Every steering place has a hard-wired or mechanical way within reach to free the helm from the pilot; a key on a screen or on a network is none, for it needs what may have failed. ABYC, ISO 25197 and the manual of the pilot decide.',
  },
  'practice-drive-match': {
    standing: 'common practice',
    text: 'Manuals of pilot computers ask for a drive of the volts, currents, clutch and rudder sensor that their outputs and inputs are made for.',
  },
  'memory-laden-share': {
    standing: 'from memory',
    text: 'Makers of steering drives rate them for the laden boat, about a fifth more than she weighs empty; not checked.',
  },
  'memory-pilot-outputs': {
    standing: 'from memory',
    text: 'Outputs of pilot computers, weights drives are rated for; not checked.',
  },
  'geometry-plug-passage': {
    standing: 'computed',
    text: 'A plug stops where it is larger than the bore less the thickest cable in place, and passes where it is no larger than the bore less the circle round all of them; for three and more that circle is an estimate.',
  },
} as const satisfies Record<string, Source>;
