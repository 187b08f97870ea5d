import type { SourceKey } from './sources.ts';

interface PlugPin {
  readonly pin: number;
  readonly signal: string;
  readonly colour: string;
}

interface PinTable {
  readonly source: SourceKey;
  readonly pins: readonly PlugPin[];
}

/** Pins of the five-pole bus plugs; micro (M12) and mini (7/8 in) have the same numbers in another pattern. */
export const busPins = {
  source: 'practice-bus-pins',
  pins: [
    { pin: 1, signal: 'shield', colour: 'bare' },
    { pin: 2, signal: '+12 V', colour: 'red' },
    { pin: 3, signal: '0 V', colour: 'black' },
    { pin: 4, signal: 'CAN high', colour: 'white' },
    { pin: 5, signal: 'CAN low', colour: 'blue' },
  ],
} as const satisfies PinTable;

/** Plugs of the bus as boat files name them; bare leads take a plug that is fitted aboard. Any other is a maker’s own. */
export const busConnectors = {
  source: 'practice-bus-pins',
  connectors: ['n2k-micro', 'n2k-mini', 'leads'],
} as const satisfies { readonly source: SourceKey; readonly connectors: readonly string[] };

/** The industrial five-way screw terminal counts otherwise: its numbers must never be carried over to a plug. */
export const screwTerminalPins = {
  source: 'ge-devicenet',
  pins: [
    { pin: 1, signal: '0 V', colour: 'black' },
    { pin: 2, signal: 'CAN low', colour: 'blue' },
    { pin: 3, signal: 'shield', colour: 'bare' },
    { pin: 4, signal: 'CAN high', colour: 'white' },
    { pin: 5, signal: '+12 V', colour: 'red' },
  ],
} as const satisfies PinTable;

/**
 * Generic A-coded sensor leads fit the plug, each pin in another colour: not two twisted pairs, so never a trunk.
 */
export const genericLeadColours = {
  source: 'beckhoff-ep6001',
  pins: [
    { pin: 1, signal: 'shield', colour: 'brown' },
    { pin: 2, signal: '+12 V', colour: 'white' },
    { pin: 3, signal: '0 V', colour: 'blue' },
    { pin: 4, signal: 'CAN high', colour: 'black' },
    { pin: 5, signal: 'CAN low', colour: 'grey' },
  ],
} as const satisfies PinTable;

/** What to know of plugs before a cable is cut. */
export const plugNotes = [
  {
    about: 'moulded power leads',
    says: 'Some have brown and white for +12 V and blue, grey and black for 0 V: meter, never trust a colour.',
    source: 'practice-moulded-leads',
  },
  {
    about: 'gender',
    says: 'A cordset is male at one end and female at the other, so a trunk takes one male and one female terminator.',
    source: 'practice-bus-pins',
  },
  {
    about: 'terminator in line',
    says: 'A terminator in line takes the place of the male one only.',
    source: 'practice-bus-pins',
  },
  {
    about: 'own plug',
    says: 'A maker’s own plug may hide the same bus: two data wires, 12 V pair, shield, 250 kbit/s, 120 ohm ends. A passive adapter joins it.',
    source: 'practice-own-plugs',
  },
  {
    about: 'own-plug device on a standard trunk',
    says: 'The adapter lead counts as drop.',
    source: 'practice-own-plugs',
  },
  {
    about: 'standard trunk to own-plug trunk',
    says: 'Take out the terminator at each joined end: two in all remain. One feed, or the positive cut at the joint.',
    source: 'practice-own-plugs',
  },
  {
    about: 'own-plug trunk ports',
    says: 'Some tell trunk and drop ports apart by colour and forbid power on a trunk port.',
    source: 'practice-own-plugs',
  },
  {
    about: 'small own-plug networks',
    says: 'A network of few products with one terminator in its power lead is no longer right once joined to a standard trunk.',
    source: 'practice-own-plugs',
  },
  {
    about: 'hidden terminators',
    says: 'They sit in power leads, blanking plugs, masthead units and displays: look in every kept unit.',
    source: 'practice-own-plugs',
  },
  {
    about: 'unit with two bus ports in line',
    says: 'It is a piece of the trunk: take it out and the bus is cut.',
    source: 'practice-own-plugs',
  },
  {
    about: 'unused tee',
    says: 'Leave it or cap it with a dust cap, never with a terminator.',
    source: 'practice-bus-pins',
  },
] as const satisfies readonly { readonly about: string; readonly says: string; readonly source: SourceKey }[];
