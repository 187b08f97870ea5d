import type { Boat } from '../../core/boat/boat-schema.ts';
import type { LightingEntry } from '../../core/lighting-shape.ts';
import type { Plan } from '../../core/plan-shape.ts';
import { textLines } from '../../core/units/text-lines.ts';
import { keepUnits } from './print-figure.ts';

const width = 80;

type Screen = LightingEntry['screens'][number];
type Names = ReadonlyMap<string, string>;

const listed = (words: readonly string[]): string =>
  words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} and ${words.at(-1) ?? ''}`;

const groupWords = (names: Names, screens: readonly Screen[]): string => {
  const list = listed(screens.map(({ kit }) => names.get(kit) ?? kit));
  if (screens.length === 1) return `${list} dims with its group, alone here`;
  const isQuiet = screens.every(({ quietens }) => quietens === true);
  return `${list} dim together${isQuiet ? ' and fall silent together' : ''}`;
};

/** Which screens of one place dim together, and which by themselves, by their names. */
export const placeLighting = (names: Names, { screens }: LightingEntry): string[] => {
  const groups = [...new Set(screens.flatMap(({ group }) => group ?? []))];
  const knobs = screens.filter(({ dims }) => dims === 'own-knob').map(({ kit }) => names.get(kit) ?? kit);
  const open = screens
    .filter(({ dims, group }) => dims === 'with-group' && group === undefined)
    .map(({ kit }) => names.get(kit) ?? kit);
  return [
    ...groups.map((group) =>
      groupWords(
        names,
        screens.filter((screen) => screen.group === group),
      ),
    ),
    ...(knobs.length === 0 ? [] : [`a knob of ${knobs.length === 1 ? 'its' : 'their'} own: ${listed(knobs)}`]),
    ...(open.length === 0
      ? []
      : [`with others of ${open.length === 1 ? 'its maker' : 'their makers'}, not said which: ${listed(open)}`]),
  ];
};

/** What the plan's text says of screens in the dark: at each place which dim and fall silent together, and which have a knob of their own. */
export const lightingText = (boat: Boat, plan: Plan): string[] => {
  if (plan.lighting.length === 0) return [];
  const names = new Map([...boat.kit, ...boat.places].map(({ id, name }) => [id, name]));
  return [
    'SCREENS IN THE DARK',
    ...plan.lighting.flatMap((entry) =>
      textLines(keepUnits(`${names.get(entry.place) ?? entry.place}: ${placeLighting(names, entry).join('; ')}.`), {
        width,
        lead: '- ',
      }),
    ),
  ];
};
