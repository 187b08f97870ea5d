import type { SourceKey } from './sources.ts';

interface Caution {
  readonly id: string;
  readonly hazard: string;
  /** what in a boat or a job brings it up, in words */
  readonly showWhen: string;
  readonly text: string;
  /** law, standard or manual that decides */
  readonly deferTo?: string;
  readonly source: SourceKey;
}

/** What is said where the work can hurt someone; `limits` goes on every report. */
export const cautions: readonly Caution[] = [
  {
    id: 'battery-short',
    hazard: 'battery short circuit',
    showWhen: 'any work at battery, bus bar or main fuse',
    text: 'Disconnect the negative first; insulated tools, no rings; cover live studs. Battery must not move more than 25 mm (US) or 10 mm (ISO); no fuel fittings above or below; metal fuel parts within 300 mm above insulated; no spring-clip terminals; hydrogen vented.',
    deferTo: '33 CFR 183.420 and 183.445(b); ISO 10133 5.2-5.7; ABYC E-10, E-11',
    source: 'practice-cautions',
  },
  {
    id: 'short-energy',
    hazard: 'energy of a short circuit',
    showWhen: 'any work at battery, bus bar or main fuse',
    text: 'A bank drives thousands of amperes into a short circuit: a tool across two studs glows, welds itself fast and throws metal. Nothing ends it before the main fuse. Take that out first, and cover what stays live.',
    deferTo: '33 CFR 183.455; ABYC E-11',
    source: 'memory-caution-texts',
  },
  {
    id: 'licence',
    hazard: 'who may do this work',
    showWhen: 'any wiring',
    text: 'Where law, insurer or class wants a licensed electrician, have one do this work or check it before it is live. Local rules come before this plan.',
    deferTo: 'local law; ABYC, ISO 13297',
    source: 'practice-cautions',
  },
  {
    id: 'lithium',
    hazard: 'lithium bank',
    showWhen: 'battery kind is lithium',
    text: 'Fault current in the kA range: high-interrupt fuse at the battery. A battery-management cut-off can leave alternator and displays without supply: sound an alarm first.',
    deferTo: 'ABYC E-13, ISO/TS 23625',
    source: 'memory-caution-texts',
  },
  {
    id: 'petrol',
    hazard: 'petrol vapour',
    showWhen: 'petrol engine or tank',
    text: 'Anything that can spark near petrol tanks or engines is ignition protected or isolated by bulkhead, deck or at least 2 ft of open space. Ventilate and switch off before drilling. A transceiver is an ignition source.',
    deferTo: '33 CFR 183.410; ISO 8846; SAE J1171',
    source: 'practice-cautions',
  },
  {
    id: 'lpg',
    hazard: 'LPG',
    showWhen: 'gas locker aboard',
    text: 'Detector fitted, locker vents overboard, no cables through the locker.',
    deferTo: 'ABYC A-1, ISO 10239',
    source: 'memory-caution-texts',
  },
  {
    id: 'radar',
    hazard: 'radar',
    showWhen: 'radar in the job',
    text: 'Off and locked out before work near the antenna. Mount above head height. Nobody in the beam within the maker distance.',
    deferTo: 'device manual; ICNIRP; IEEE C95.1',
    source: 'practice-cautions',
  },
  {
    id: 'vhf-rf',
    hazard: 'VHF radiation',
    showWhen: 'VHF antenna in the job',
    text: '25 W with 3 dBi: keep 1.8 m away while sending; antenna base about 3.8 m above deck or 1.8 m above heads.',
    deferTo: 'device manual',
    source: 'practice-cautions',
  },
  {
    id: 'aloft',
    hazard: 'working aloft',
    showWhen: 'mast work, mast up',
    text: 'Two halyards, a second person, tools tied on, nobody below, never under way.',
    source: 'practice-cautions',
  },
  {
    id: 'hull',
    hazard: 'holes in the hull',
    showWhen: 'through-hull or deck hole',
    text: 'Nothing drilled below the waterline afloat; the blanking plug at hand before the hole. Cored deck: bore large, dig out core, fill with epoxy, re-drill. Transducer work ashore; look for weeping when she is lowered, and again after 24 h afloat.',
    deferTo: 'ISO 9093, ABYC H-27',
    source: 'practice-cautions',
  },
  {
    id: 'panel-cutting',
    hazard: 'cutting into a panel',
    showWhen: 'a hole is cut or a plate is screwed on',
    text: 'Look behind first, then once more: cables, hoses, fuel, gas, a hand. Batteries off. Pilot holes; a blade no longer than the panel is thick and a little; even hand torque. Where the panel has a core, dig it back 10 to 15 mm, fill with thickened epoxy, and re-drill.',
    deferTo: 'manual of the unit',
    source: 'practice-cutting',
  },
  {
    id: 'laminate-dust',
    hazard: 'dust of laminate',
    showWhen: 'a hole is cut or a plate is screwed on',
    text: 'Glass and resin dust harms lungs and eyes: a mask for fine dust that fits, closed goggles, gloves, sleeves taped. Suck it off at the blade, keep others away, wash it off, never blow it off.',
    deferTo: 'safety data sheets; local law at work',
    source: 'memory-caution-texts',
  },
  {
    id: 'stray',
    hazard: 'stray current',
    showWhen: 'negative bus, bonding, screens',
    text: 'One common negative point. No device case grounded twice. Braid to bonding only if its manual says so. No positive-ground system.',
    deferTo: 'ABYC E-2, E-11, ISO 13297',
    source: 'practice-cautions',
  },
  {
    id: 'ac',
    hazard: 'AC aboard',
    showWhen: 'shore power or inverter',
    text: 'AC work only by a competent electrician. Pull the shore cord before opening any shared panel.',
    deferTo: 'ABYC E-11, ISO 13297',
    source: 'practice-cautions',
  },
  {
    id: 'lightning',
    hazard: 'lightning',
    showWhen: 'cables in the mast',
    text: 'Long mast cables carry surges. Keep one handheld VHF and GNSS away from the wiring.',
    deferTo: 'ABYC TE-4, ISO 10134',
    source: 'practice-cautions',
  },
  {
    id: 'pilot-drive',
    hazard: 'helm held by a pilot',
    showWhen: 'a pilot drive aboard',
    text: 'Prove at the berth that every way to disengage frees the helm, before the pilot is first trusted, and again at sea in open water. Switch its breaker off and tag it before hands go near ram, chain or quadrant. A pilot keeps no lookout.',
    deferTo: 'manuals of pilot and steering gear; ISO 10592, ISO 25197; ABYC P-21',
    source: 'memory-caution-texts',
  },
  {
    id: 'navsafe',
    hazard: 'navigation during the job',
    showWhen: 'job lasts longer than the berth',
    text: 'Keep a working VHF and compass through the job; trial in safe water; re-swing the compass; radio and AIS identity are licence matters.',
    deferTo: 'IMO, national licence',
    source: 'practice-cautions',
  },
  {
    id: 'limits',
    hazard: 'limits of the plan',
    showWhen: 'every report',
    text: 'Sizes are a plan, not an approval. Check against the edition in force; surveyor, insurer or class may ask for more.',
    deferTo: 'ABYC, ISO 13297, NMEA 0400',
    source: 'practice-cautions',
  },
];
