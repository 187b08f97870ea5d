import type { Source } from './source.ts';

/** Sources of the tables about antennas, coax, compasses, displays and siting. */
export const fittingSources = {
  'iho-s52': {
    standing: 'published',
    text: 'IHO S-52 App. 2, ed. 6.0 (2010), second-hand: letters seen under 20 minutes of arc, text readable from 1 m.',
  },
  'memory-iec-62288': {
    standing: 'from memory',
    text: 'IEC 62288 or MSC/Circ.982: letters 3.5 mm high for each metre they are read from; the clause was not seen.',
  },
  'practice-viewing': {
    standing: 'common practice',
    text: 'Middle of a screen 15 to 30 degrees below the line of the eye, within 650 to 700 mm of reach.',
  },
  'memory-box-heat': {
    standing: 'from memory',
    text: 'A closed box gives off 6 W for each square metre of its walls and each kelvin it is warmer; not checked.',
  },
  'choice-box-rise': {
    standing: 'project choice',
    text: 'A closed box may get 15 K warmer: from 40 °C under a deck in the sun to the 55 °C that IEC 60945 is said to test units at (from memory).',
  },
  'practice-air-gaps': {
    standing: 'common practice',
    text: 'Air of 30 mm at the sides and the back of a display and of 50 mm above it.',
  },
  'practice-depth-behind': {
    standing: 'common practice',
    text: 'Depth behind a panel: body, plug and the bend of the cable, five to six times its diameter.',
  },
  'choice-depth-to-spare': {
    standing: 'project choice',
    text: 'Room behind a panel with less than 10 mm to spare is measured once more before anything is cut.',
  },
  'practice-plates': {
    standing: 'common practice',
    text: 'Adapter plates: GRP 4 to 6 mm, aluminium 3 to 4, acrylic and polycarbonate 6 to 10, HDPE 10 to 13, plywood 9 to 12; 15 to 25 mm over the old hole all round; screws 75 to 120 mm apart, 12 mm from the edge; bedded on butyl or a gasket; no steel near a compass.',
  },
  'choice-plate-corner': {
    standing: 'project choice',
    text: 'Corners of a plate are rounded with 10 mm where it is drawn; a sharp corner catches clothes.',
  },
  'practice-cutting': {
    standing: 'common practice',
    text: 'Cutting a panel: screws 2.5 diameters and cut-outs 30 mm from an edge, web of the larger of 25 mm and three thicknesses, flat within 1 mm in 300, inside corners of 3 to 6 mm, a frame where more than half is cut away; core dug back 10 to 15 mm and filled.',
  },
  'practice-ip-at-helm': {
    standing: 'common practice',
    text: 'A face at an open helm stands jets and immersion, so both IPX6 and IPX7; under a hard top IPX6.',
  },
  'choice-ip-by-itself': {
    standing: 'project choice',
    text: 'What stands in the open in a housing of its own, not in a panel, is asked to stand jets (IPX6): water runs off it, where it stays on a panel at a helm.',
  },
  'practice-wet-hands': {
    standing: 'common practice',
    text: 'Touch screens at open helms: drops work them, cold, wet and gloved fingers do not; keys or a keypad stand by.',
  },
  'practice-trial-order': {
    standing: 'common practice',
    text: 'What is tried at the dock and at sea after a refit, and in which order: each step feeds the next.',
  },
  'practice-crew-shown': {
    standing: 'common practice',
    text: 'Before the first passage everybody aboard does by hand once: distress by radio, man overboard, helm back from the pilot, chart, alarms, breakers, what to do in the dark.',
  },
  'uscg-led-noise': {
    standing: 'published',
    text: 'USCG Marine Safety Alert 13-18, August 2018: LED lights can spoil VHF and AIS reception, and how to find out.',
  },
  'practice-papers-aboard': {
    standing: 'common practice',
    text: 'Papers left aboard after a refit: power on one line, data drawing with the names of its nodes, cable list, plan with routes and hidden joints, breaker table, settings, deviation cards, test record, photos, manuals and templates, spares, change log; on paper and as files on two sticks. ISO 10240 asks for an owner’s manual.',
  },
  'practice-labels': {
    standing: 'common practice',
    text: 'Cable labels: one id a cable for life, the same at both ends, in every box and on both sides of a bulkhead; letters of 3 to 4 mm, read at 300 mm, 30 to 50 mm from the end; a label that wraps itself is pi times the diameter and 6 mm long.',
  },
  'choice-labels': {
    standing: 'project choice',
    text: 'Letters under the id are 2 mm high; squares of a code are 0.33 to 0.5 mm; what a tape of each width can be printed on.',
  },
  'iso-18004': {
    standing: 'from memory',
    text: 'ISO/IEC 18004, two-dimensional codes: four squares are left white round a code.',
  },
  'land-mobile-handbook': {
    standing: 'common practice',
    text: 'A land-mobile radio training handbook: loss of coax, metric column, and 0.25 dB for a joint at 150 MHz.',
  },
  'cable-loss-table': {
    standing: 'common practice',
    text: 'A public table of coax losses in dB for 100 ft, converted.',
  },
  'coax-data-sheets': {
    standing: 'published',
    text: 'LMR-400 and LMR-240 data sheets, second-hand: loss in dB for 100 ft is k1 sqrt(f) + k2 f, f in MHz.',
  },
  'practice-copied-settings': {
    standing: 'common practice',
    text: 'What is copied out of a unit before it is taken off, by kind of unit; manuals of many kinds of unit name the same.',
  },
  'practice-mast': {
    standing: 'common practice',
    text: 'Cables in a mast: held every one to two metres by a grip, tied against slapping, parted at the foot in a dry box with slack, drip loop below the exit.',
  },
  'memory-cable-weight': {
    standing: 'from memory',
    text: 'Weights of common cables by the metre.',
  },
  'memory-coax': {
    standing: 'from memory',
    text: 'Weight and velocity factor of coax; not checked.',
  },
  'practice-coax-class': {
    standing: 'common practice',
    text: 'Loss near 156 MHz where only the name of a coax is known: the worst of several prints.',
  },
  'practice-coax-size': {
    standing: 'common practice',
    text: 'Outside diameter of coax by its name.',
  },
  'practice-joints': {
    standing: 'common practice',
    text: 'Loss of a sound joint 0.05 dB; a bench measurement reports 0.01 to 0.02 dB.',
  },
  'radio-channels': {
    standing: 'common practice',
    text: 'Frequencies of the marine VHF and AIS channels.',
  },
  'osr-3-29': {
    standing: 'published',
    text: 'ISAF/World Sailing Offshore Special Regulations 2012-13, 3.29, second-hand: at most 40 % lost in the coax of a 25 W set.',
  },
  'choice-coax-limits': {
    standing: 'project choice',
    text: 'New coax aims at 2.2 dB and is a fault above 3 dB; kept coax above 3 dB is a doubt; a fault only when measured.',
  },
  'iec-60529': {
    standing: 'published',
    text: 'IEC 60529, second-hand: first digits and second digits to 6 imply the lower ones; 7, 8 and 9 do not imply 5 or 6.',
  },
  bowditch: {
    standing: 'published',
    text: 'Bowditch, American Practical Navigator (NGA Pub. 9), 1995 and 2002 editions, ch. 22, second-hand: 1.17 and 1.22 sqrt(ft).',
  },
  'practice-vhf-horizon': {
    standing: 'common practice',
    text: 'VHF line of sight 1.23 sqrt(ft); four-thirds-earth theory gives 1.2287.',
  },
  'computed-horizon': {
    standing: 'computed',
    text: 'Horizon without refraction on a sphere of 6371 km.',
  },
  'maker-heading-clearance': {
    standing: 'published',
    text: 'Distances from a heading sensor in pilot installation books; makers’ names withheld.',
  },
  'maker-radar-distance': {
    standing: 'published',
    text: 'Distances of people from one family of pulse radars, arithmetic redone; maker’s name withheld. The item’s plate decides.',
  },
  'practice-radar-beam': {
    standing: 'common practice',
    text: 'Vertical width of a radar beam by kind; prints for domes run from 20 to 30 degrees.',
  },
  'uscg-ais-fields': {
    standing: 'published',
    text: 'USCG NAVCEN, AIS message 5 page: name and call sign; dimensions second-hand from ITU-R M.1371-5.',
  },
  'iso-25862': {
    standing: 'published',
    text: 'ISO 25862 (formerly ISO 694) and IEC 60945 cl. 11.2, second-hand: 5.4/H degrees for a standard compass, 18/H for a steering compass; 5 m for an unknown item.',
  },
  'choice-siting': {
    standing: 'project choice',
    text: 'Thresholds of siting and fitting where prints differ; each is a setting, and its conflict is written beside it.',
  },
  'practice-heading-siting': {
    standing: 'common practice',
    text: 'Where a heading sensor goes: near the centre of roll and pitch, on the centreline, a little above the waterline, its arrow to the bow, raised off a hull of steel. Slid 30 cm each way the heading may change by 5 degrees, over 10 it is moved; automatic compensation reaches about 30. Several public installation books agree.',
  },
  'choice-heading-siting': {
    standing: 'project choice',
    text: 'Which kind of unit counts as which row of the clearances of a heading sensor; a place within 1.25 times a clearance leaves a doubt; two things in one place can keep 0.5 m apart; a feed of 20 A and more is a high-current wire, and so is what stands at a battery; a place named after anchor, chain, windlass or tools has iron in it.',
  },
  'practice-card-swing': {
    standing: 'common practice',
    text: 'Deviation is magnetic less compass, east positive. Under 3 degrees it is left alone, over 5 the compass is adjusted; a card is written anew after any electrical change nearby. Navigation textbooks agree.',
  },
  'practice-transducer-place': {
    standing: 'common practice',
    text: 'Where a transducer goes: ahead of the propeller by 10 % of the waterline, 150 mm from the keel and better ahead of it, a paddle wheel 0.3 m ahead, near the centreline, with 100 mm over it to pull the insert, within 10 degrees of upright or on a fairing block; in-hull only through solid laminate of about 12 mm, never core; a ring of solid fill where a hole goes through core; old housings seldom take new inserts; two sounders on one frequency disturb each other. Public installation books; some prints give 11 or 15 degrees.',
  },
  'practice-converter-inputs': {
    standing: 'common practice',
    text: 'A converter for bare sensors must state the volts it feeds, pulses for each knot, the coding of the vane, power and frequency; an element of another frequency gives no reading.',
  },
  'memory-sensor-signals': {
    standing: 'from memory',
    text: 'Usual signals of bare sensors: elements of 50 or 200 kHz, digital ones of 235 kHz, wheels of 5 to 6 Hz for a knot on 5 to 12 V, vanes of sine and cosine on 8 V.',
  },
  'choice-sensor-siting': {
    standing: 'project choice',
    text: 'Near the centreline is within 15 % of the beam; two frequencies within 2 % are one; what stands within 0.5 m of a wind head and higher is in its way.',
  },
  'sensor-manuals-offset': {
    standing: 'published',
    text: 'NMEA 2000 PGN 128267 and NMEA 0183 DPT, second-hand as public sensor manuals state it: depth is below the transducer, the offset is signed in steps of 0.001 m, positive to the waterline, negative to the keel, and is added.',
  },
  'choice-depth-offset': {
    standing: 'project choice',
    text: 'Two depth offsets up to a centimetre apart are one that was entered twice.',
  },
  'memory-sound-speed': {
    standing: 'from memory',
    text: 'Speed of sound: sounders are set to 1500 m/s; fresh water of 15 °C about 1466 m/s.',
  },
  'practice-metal-housing': {
    standing: 'common practice',
    text: 'No metal through-hull housing in a metal hull without insulation, no plastic one in wood: several public installation handbooks agree.',
  },
  'choice-wires-at-compass': {
    standing: 'project choice',
    text: 'Wires of a pair near a compass are taken 4 mm apart in a cable of up to 2.5 mm² and 20 mm apart above that or where the copper is not known; no wire comes nearer to the card than 0.1 m.',
  },
  'practice-helm-page': {
    standing: 'common practice',
    text: 'What a page at the helm says of switching on, man overboard, distress and a dark screen; the drill of the skipper and the manual of each unit come before it. That the distress key is never a test is a rule of the radio service.',
  },
  'practice-fallback-kit': {
    standing: 'common practice',
    text: 'A fallback kit that hangs on nothing aboard: charged handheld VHF, paper chart, hand compass, lead line, torch.',
  },
  'choice-cheap-reserve': {
    standing: 'project choice',
    text: 'A second source or radio of up to 400 euros in parts is worth a word even where a compass is left; a dearer one is for the owner to think of.',
  },
  'practice-usual-needs': {
    standing: 'common practice',
    text: 'What a kind of unit is usually wanted to show, or needs to work: position at a DSC radio, heading at a pilot computer, depth at every helm. Several public installation handbooks agree; a person changes any of them.',
  },
  'practice-usual-places': {
    standing: 'common practice',
    text: 'Where a kind of unit usually stands: screens at a helm, boxes in a dry locker, antennas high and clear, transducers low, a heading sensor low and amidships. Several public installation handbooks agree.',
  },
  'choice-new-coax': {
    standing: 'project choice',
    text: 'Kinds of coax a new run is picked from, and round prices of a metre: thin for short runs, 10 mm and 15 mm where the loss asks for it. The guidance lengths of the Offshore Special Regulations (6 mm to 15 m, 10 mm beyond, 15 mm above 43 m, second-hand) come out much the same.',
  },
  'practice-isolation': {
    standing: 'common practice',
    text: 'Radio-site engineering: side by side 22 + 20 log10(d/wavelength) less both gains, one above the other 28 + 40 log10(d/wavelength), slanting by the angle between the two, which is always an estimate. No standard stands behind it; below one wavelength it is an estimate too.',
  },
  'practice-antenna-distance': {
    standing: 'common practice',
    text: 'Installation books: AIS antenna 3 m from the voice antenna, position antenna 3 m (5 m in class B books) from any transmitting antenna and out of the radar beam, open sky from 5 to 90 degrees.',
  },
  'practice-scanner-neighbours': {
    standing: 'common practice',
    text: 'Installation books: the turning circle and 200 mm stay free; antennas out of 20 degrees above and below the plane of the scanner, electronics 2 m off it; two scanners 0.5 m apart in height in one book, 2 m and 45 degrees in another.',
  },
  'practice-blanking': {
    standing: 'common practice',
    text: 'The arc that an obstruction shadows is blanked with 5 degrees more.',
  },
  'imo-sn1-271': {
    standing: 'published',
    text: 'IMO SN.1/Circ.271, second-hand: no shadow sector from ahead to 22.5 degrees abaft the beam on either side; elsewhere none over 5 degrees and not over 20 together; sectors less than 3 degrees apart count as one; the sea seen past the bow within 500 m or two lengths, whichever is less. Written for ships, so advice on a boat.',
  },
  'icnirp-1998': {
    standing: 'published',
    text: 'ICNIRP 1998, second-hand: for the public 2 W/m² from 10 to 400 MHz and 10 W/m² from 2 GHz up. The 2020 edition allows more above 30 MHz; the stricter is kept.',
  },
  'icnirp-2020': {
    standing: 'published',
    text: 'ICNIRP 2020 (Health Physics 118:483-524), second-hand: local exposure above 6 GHz 55 f^-0.177 W/m² for the public, 275 f^-0.177 occupational, f in GHz.',
  },
  'computed-near-zone': {
    standing: 'computed',
    text: 'Where the lower edge of a radar beam meets the sea: height / tan(half the vertical beam + tilt).',
  },
  'plane-earth-law': {
    standing: 'computed',
    text: 'Over a flat sea received power falls with the fourth power of the distance, so that a weak signal keeps 10^(-dB/40) of its range. A textbook law, tied to no standard.',
  },
  'transmission-line': {
    standing: 'computed',
    text: 'Transmission-line theory: reflection (s - 1)/(s + 1); the return loss read at the radio is that of the antenna and twice the loss of the cable.',
  },
  'choice-people': {
    standing: 'project choice',
    text: 'A person’s head is 1.75 m over the sole; a wheel, a dash or a screen where one stands is taken as 0.85 m over it where the boat file does not say where the sole is.',
  },
  'choice-stations': {
    standing: 'project choice',
    text: 'The other stations that ranges are told to: an antenna 2 m over the water (a small boat), 15 m (a yacht’s masthead) and 20 m (a ship or a pilot station).',
  },
  'choice-neighbours': {
    standing: 'project choice',
    text: 'What stands more than 10 m off shadows a scanner too little to count, and 5 m off its plane no longer matters to an antenna; what covers 30 degrees of the sky of a position antenna does.',
  },
  'choice-widths': {
    standing: 'project choice',
    text: 'A mast is taken as 150 mm wide, a whip as 25 mm, an array as 0.6 m and a dome as 0.6 m across where no sheet says more; what stands under 0.5 degrees wide to a scanner is left out.',
  },
  'choice-antenna-gain': {
    standing: 'project choice',
    text: 'An antenna whose sheet does not say is taken as a half-wave dipole, 2.15 dBi, and a fixed VHF radio as one of 25 W.',
  },
  'practice-whip-gain': {
    standing: 'common practice',
    text: 'Gain and length of whips for marine VHF by the figures sold with them: 1 m with 3 dB, 2.4 m with 6 dB; taken as dBi.',
  },
  'memory-scanners': {
    standing: 'from memory',
    text: 'Size, beam, least range and people distance of scanners.',
  },
  'maker-hot-copper': {
    standing: 'published',
    text: 'A radar installation manual, maker’s name withheld: volts lost are 2 x length x resistance x 1.22 x current, the copper taken hot.',
  },
  'practice-swr': {
    standing: 'common practice',
    text: 'Standing-wave ratio: below 1.5 good, below 2 usable, above 3 a fault.',
  },
  'practice-compass-distance': {
    standing: 'common practice',
    text: 'Distance of kinds of unit to a compass by habit, unprinted.',
  },
  'imo-sn-227': {
    standing: 'published',
    text: 'IMO SN/Circ.227: as amended by SN/Circ.245, 2.2.1; written for ships, so advice on a boat.',
  },
  'iso-216': {
    standing: 'published',
    text: 'ISO 216: trimmed sizes of the A series of paper.',
  },
  'ansi-y14.1': {
    standing: 'published',
    text: 'ANSI/ASME Y14.1: sizes A (8.5 × 11 in) and B (11 × 17 in) of drawing sheets.',
  },
  'iso-5457': {
    standing: 'from memory',
    text: 'ISO 5457: border of a drawing sheet, 20 mm at the filing edge and 10 mm elsewhere; not checked against the printed standard.',
  },
} as const satisfies Record<string, Source>;
