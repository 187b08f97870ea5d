import { limitOf } from '../../boat/limit-of.ts';
import type { LetGoEntry, SteeringEntry } from '../../drives-shape.ts';
import type { LaidInput, Observation, Rule } from '../rule.ts';
import { limitPart, metres } from '../rule-words.ts';

const hows = {
  'hard-wired-switch': 'the switch',
  lever: 'the lever',
  breaker: 'the breaker',
  'pilot-head': 'the key on the pilot head',
  remote: 'the remote',
} as const satisfies Record<LetGoEntry['how'], string>;

const why = ({ how, awayM, whyNot }: LetGoEntry): string => {
  const says = {
    'needs-the-network': 'needs the network',
    'out-of-reach': `is ${metres(awayM)} away`,
    'behind-a-panel': 'is behind a panel',
    'feeds-no-pilot': 'does not feed the pilot',
    'holds-without-power': 'takes the power away, and the drive holds without it',
  } as const;
  return `${hows[how]} ${whyNot === undefined ? 'is there' : says[whyNot]}`;
};

const byWords = {
  wheel: 'wheel',
  tiller: 'tiller',
  joystick: 'joystick',
  'emergency-tiller': 'emergency tiller',
} as const satisfies Record<SteeringEntry['by'], string>;

const locked = ({ index }: LaidInput, { place, by, ways }: SteeringEntry): Observation => {
  const where = index.places.get(place)?.name ?? place;
  const lacks = ways.length === 0 ? 'nothing is entered' : ways.map(why).join('; ');
  const far = ways.find(({ whyNot }) => whyNot === 'out-of-reach');
  return {
    about: [place],
    apart: [by],
    says: `At the ${byWords[by]}, ${where}, nothing within reach frees the helm from the pilot by hand: ${lacks}.`,
    ...(far === undefined
      ? {}
      : {
          measured: { value: far.awayM, unit: 'm' },
          limit: limitPart(limitOf(index.boat, 'steering-reach')),
        }),
    cure: 'Fit a hard-wired switch in the clutch or power lead of the pilot, or a lever, within reach of whoever steers there.',
  };
};

export const noWayToLetGo: Rule = {
  id: 'steering/no-way-to-let-go',
  level: 'danger',
  title: 'A steering place has nothing within reach that frees the helm from the pilot.',
  sources: ['choice-let-go', 'choice-steering-reach'],
  check: (input) => {
    const { drives, steering } = input.plan;
    if (drives.length === 0) return [];
    if (steering.length > 0) return steering.filter(({ free }) => !free).map((entry) => locked(input, entry));
    return [
      {
        about: drives.map(({ drive }) => drive),
        level: 'doubt',
        says: 'A pilot is aboard, and the boat file does not say from where she is steered and what frees the helm there.',
        cure: 'Enter every steering place, the emergency tiller too, with its switch, lever or breaker.',
      },
    ];
  },
};
