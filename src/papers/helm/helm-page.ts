import { talkingKinds } from '../../core/facts/fallback-kit.ts';
import { helmWords, letGoWords } from '../../core/facts/helm-words.ts';
import type { Plan } from '../../core/plan-shape.ts';
import { printLength } from '../../core/units/print-length.ts';
import type { Block } from '../binder/binder-shape.ts';
import type { CardBoat } from '../cards/card-boat.ts';
import { placeLighting } from '../lists/lighting-text.ts';
import { vitalNames } from '../lists/vital-words.ts';
import type { ListTable } from '../table/list-table.ts';
import { darkScreens } from './dark-screen.ts';
import type { Helm } from './helms.ts';
import { switchOn } from './switch-on.ts';

const mostInstead = 2;

type WhyNot = NonNullable<Plan['steering'][number]['ways'][number]['whyNot']>;

const whyNotWords: Readonly<Record<WhyNot, string>> = {
  'needs-the-network': 'it needs the network',
  'out-of-reach': 'it is out of reach',
  'behind-a-panel': 'it is behind a panel',
  'feeds-no-pilot': 'it feeds no pilot',
  'holds-without-power': 'the drive holds without power',
};

const switchOnTable = (index: CardBoat, plan: Plan, helm: Helm): ListTable => ({
  id: `switch-on-${helm.place}`,
  title: 'Switch on, in this order',
  says: helmWords.switchOn.says,
  columns: [
    { id: 'turn', head: 'turn', kind: 'figure', digits: 0, share: 0.4 },
    { id: 'circuit', head: 'breaker or fuse', kind: 'label', share: 1.2 },
    { id: 'panel', head: 'panel', kind: 'label' },
    { id: 'wakes', head: 'wakes', share: 3.4 },
  ],
  rows: switchOn(index, plan, helm).map(({ panel, circuit, wakes }, at) => [at + 1, circuit, panel, wakes.join(', ')]),
  empty: 'No circuit feeds what is seen here.',
});

const pilotPoints = (index: CardBoat, { steering }: Plan, { place }: Helm): string[] =>
  steering
    .filter((entry) => entry.place === place)
    .flatMap(({ ways }) => ways)
    .toSorted((one, other) => Number(other.counts) - Number(one.counts))
    .map(({ how, at, awayM, whyNot }) => {
      const where = awayM < 0.005 ? 'here' : `${index.places.get(at)?.name ?? at}, ${awayM.toFixed(1)} m away`;
      return `${letGoWords[how]}, ${where}.${whyNot === undefined ? '' : ` Do not rely on it: ${whyNotWords[whyNot]}.`}`;
    });

const radiosOf = ({ boat, sheetOf }: CardBoat, heard: (unit: string) => boolean): string[] =>
  boat.kit
    .filter(({ id, fate }) => fate !== 'goes' && talkingKinds.has(sheetOf.get(id)?.kind ?? '') && heard(id))
    .map(({ name }) => name);

const overboardPoints = (index: CardBoat, { readings }: Plan, { screens }: Helm): string[] => {
  const marks = readings
    .filter(({ reading, arrives, at }) => reading === 'mob' && arrives && screens.includes(at))
    .map(({ at }) => index.kit.get(at)?.name ?? at);
  const radios = radiosOf(index, () => true);
  return [
    helmWords.manOverboard.says,
    marks.length === 0
      ? 'No screen here keeps the spot: write the time and the position down at once.'
      : `Keep the spot: the man overboard key of ${marks.join(' or ')}.`,
    radios.length === 0
      ? 'No radio is aboard that the plan knows of: the distress signals.'
      : `Call on channel 16 by ${radios.join(' or ')}. Where life is in danger, ${helmWords.distress.says}`,
  ];
};

const lightPoints = (index: CardBoat, { lighting }: Plan, { place }: Helm): string[] => {
  const entry = lighting.find((own) => own.place === place);
  if (entry === undefined) return ['Each screen by itself.'];
  return placeLighting(new Map([...index.kit].map(([id, { name }]) => [id, name])), entry).map((words) => `${words}.`);
};

const alarmPoints = (index: CardBoat, { lighting }: Plan, { place, screens }: Helm): string[] => {
  const quiet = lighting.find((own) => own.place === place)?.screens.filter(({ quietens }) => quietens === true) ?? [];
  const name = (id: string): string => index.kit.get(id)?.name ?? id;
  const together =
    quiet.length > 1
      ? [`Silenced on one it falls silent on all of: ${quiet.map(({ kit }) => name(kit)).join(', ')}.`]
      : [];
  const alone = screens.filter((id) => !quiet.some(({ kit }) => kit === id));
  return [
    ...together,
    ...(alone.length === 0
      ? []
      : [`Silence each by itself, and read what it says first: ${alone.map(name).join(', ')}.`]),
  ];
};

const darkTable = (index: CardBoat, plan: Plan, helm: Helm): ListTable => ({
  id: `dark-${helm.place}`,
  title: 'Something is dark',
  says: helmWords.darkScreen.says,
  columns: [
    { id: 'screen', head: 'unit', share: 1.2 },
    { id: 'guard', head: 'breaker or fuse', share: 2 },
    { id: 'instead', head: 'look meanwhile at', share: 2 },
  ],
  rows: darkScreens(index, plan, helm).map(({ screen, guard, instead }) => [
    screen,
    guard,
    instead.length === 0 ? 'no other screen shows any of it' : instead.slice(0, mostInstead).join(', '),
  ]),
  empty: 'No screen is here.',
});

const fallbackTable = (index: CardBoat, { vitals }: Plan, { place }: Helm): ListTable => ({
  id: `fallback-${place}`,
  title: 'When it is gone from every screen',
  says: helmWords.fallback.says,
  columns: [
    { id: 'of', head: 'gone', share: 0.7 },
    { id: 'left', head: 'what needs nothing and is left', share: 1.6 },
    { id: 'carry', head: 'at hand', share: 2 },
  ],
  rows: vitals.map(({ of, leftWith, carry }) => [
    vitalNames[of].name,
    leftWith.length === 0 ? 'nothing aboard' : leftWith.map((id) => index.kit.get(id)?.name ?? id).join(', '),
    carry,
  ]),
  empty: 'Nothing vital is asked for.',
});

const inBoth = (valueM: number): string =>
  `${printLength({ valueM, as: 'metres' })} (${printLength({ valueM, as: 'feet' })})`;

/** How tall and how deep she is, and the water she wants, in both units. */
const sizePoints = ({ boat }: CardBoat, { airDraft, typed }: Plan): string[] => {
  const safe = typed.find(({ what }) => what === 'safety-depth')?.is;
  return [
    `Air draft ${inBoth(airDraft.mostM)} at its most. No credit for heel; read off the chart which level its bridges are counted from.`,
    `Draft ${inBoth(boat.hull.draftM)}.${safe === undefined ? '' : ` Safe depth from the surface ${inBoth(safe)}.`}`,
  ];
};

const points = (text: string, own: readonly string[]): Block[] =>
  own.length === 0
    ? []
    : [
        { kind: 'heading', text },
        { kind: 'points', points: own },
      ];

/** What is laminated and hangs at one helm: on its face what to do when something is wrong, on its back how to switch on, dim and silence. Everything on it is of this boat, what is common practice says so. */
export const helmPage = (index: CardBoat, plan: Plan, helm: Helm): Block[] => [
  ...points('Get the helm back from the pilot', pilotPoints(index, plan, helm)),
  ...points('Man overboard', overboardPoints(index, plan, helm)),
  { kind: 'table', table: darkTable(index, plan, helm) },
  { kind: 'table', table: fallbackTable(index, plan, helm) },
  {
    kind: 'words',
    text: 'Orders of the hand are common practice. The skipper’s own drill and the manual of each unit come before this page.',
    isQuiet: true,
  },
  { kind: 'page' },
  { kind: 'table', table: switchOnTable(index, plan, helm) },
  ...points('How tall, how deep', sizePoints(index, plan)),
  ...points('Dim everything', lightPoints(index, plan, helm)),
  ...points('Silence an alarm', alarmPoints(index, plan, helm)),
];
