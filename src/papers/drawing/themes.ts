import type { Ink } from './shapes.ts';

/** The colours of the inks by light: `paper` prints and copies in black and white, the others are for screens. */
export const themes = {
  paper: {
    ink: '#000000',
    quiet: '#444444',
    rule: '#C8C8C8',
    data: '#000000',
    ethernet: '#000000',
    power: '#000000',
    accent: '#000000',
    paper: '#FFFFFF',
    margin: '#FFFFFF',
    water: '#F0F0F0',
    none: 'none',
  },
  day: {
    ink: '#17232F',
    quiet: '#5C6672',
    rule: '#E3DDCF',
    data: '#1D4F7C',
    ethernet: '#2E6B52',
    power: '#8A2B1C',
    accent: '#B63C08',
    paper: '#FBF9F3',
    margin: '#F4F0E5',
    water: '#E4ECEC',
    none: 'none',
  },
  dusk: {
    ink: '#D8CBB8',
    quiet: '#A3978A',
    rule: '#37322F',
    data: '#9DB7CC',
    ethernet: '#94BFA8',
    power: '#DFA08C',
    accent: '#FF9A5C',
    paper: '#1C1A1D',
    margin: '#232024',
    water: '#1D2327',
    none: 'none',
  },
  night: {
    ink: '#DC4B32',
    quiet: '#D5472E',
    rule: '#3A120B',
    data: '#DC4B32',
    ethernet: '#DC4B32',
    power: '#DC4B32',
    accent: '#FF7A55',
    paper: '#0E0504',
    margin: '#110604',
    water: '#130605',
    none: 'none',
  },
} as const satisfies Record<string, Record<Ink, string>>;

export type ThemeName = keyof typeof themes;
