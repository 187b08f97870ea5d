import type { BoatIndex } from '../../core/boat/boat-index.ts';
import type { Way } from '../../core/boat/boat-schema.ts';
import type { Plug } from '../../core/boat/sheet.ts';
import type { Bank, Panel } from '../../core/boat/supply.ts';
import { copiedSettings } from '../../core/facts/copied-settings.ts';
import { notedSettings } from '../../core/facts/noted-settings.ts';
import { printLength } from '../../core/units/print-length.ts';
import { masked, shownSetting } from '../../core/walk-round/masked.ts';
import type { WalkKind, WalkQuestion } from '../../core/walk-round/walk-question.ts';

/** One question as it is read aboard. */
export interface QuestionWords {
  /** what it is about */
  readonly of: string;
  readonly asks: string;
  /** what the file says so far */
  readonly file?: string;
  /** how the answer is written: a length, boxes to choose from, a line of words, or a line for each setting */
  readonly space: 'length' | 'line' | 'settings' | readonly string[];
  /** what each line is for, where there is one for each setting */
  readonly blanks?: readonly string[];
}

type Words = Omit<QuestionWords, 'of'>;

const plugWords = ({ connector, gender }: Plug): string => (gender === 'none' ? connector : `${connector}, ${gender}`);

const colourWords = (plugs: readonly Plug[]): string =>
  plugs.flatMap(({ conductors = [] }) => conductors.map(({ label, colour }) => `${label} ${colour}`)).join('; ');

const withFile = (words: Words, file: string): Words => (file === '' ? words : { ...words, file });

const lengthWords = ({ valueM, how }: { valueM: number; how: string }): string =>
  `${printLength({ valueM, as: 'metres' })} (${printLength({ valueM, as: 'feet' })}), ${how}`;

/** What lies in a way: `2 coax, 6 mm; 1 trunk, 7 mm, terminator in it`. */
const holdWords = ({ boat }: BoatIndex, { id }: Way): string => {
  const counts = new Map<string, number>();
  for (const { ways, kind, diameterMm, terminator } of boat.cables) {
    if (!ways.includes(id)) continue;
    const says = `${kind}, ${diameterMm} mm${terminator === true ? ', terminator in it' : ''}`;
    counts.set(says, (counts.get(says) ?? 0) + 1);
  }
  return [...counts].map(([says, count]) => `${count} ${says}`).join('; ');
};

const wayWords = (index: BoatIndex, kind: WalkKind, way: Way): Words => {
  switch (kind) {
    case 'way-seen':
      return {
        asks: 'Can a cable go here?',
        file: way.known,
        space: ['seen', 'a line was pulled through', 'no such way'],
      };
    case 'way-length':
      return { asks: 'Length along the way, by tape', file: lengthWords(way.length), space: 'length' };
    case 'way-bore':
      return withFile(
        { asks: 'Inside width of the pipe or gland', space: 'line' },
        way.bore === undefined ? '' : `${way.bore.mm} mm, ${way.bore.how}`,
      );
    default: {
      return withFile(
        { asks: 'What is in it: how many cables, how thick, of what', space: 'line' },
        holdWords(index, way),
      );
    }
  }
};

const unitWords = (index: BoatIndex, kind: WalkKind, unit: string): Words => {
  const sheet = index.sheetOf.get(unit);
  const aboard = index.kit.get(unit)?.aboard;
  const usual = notedSettings.byKind[sheet?.kind ?? ''] ?? [];
  switch (kind) {
    case 'photos':
      return { asks: 'Photo of', space: ['front', 'back with its plugs', 'label'] };
    case 'serial':
      return withFile(
        { asks: 'Serial number from the label; software, where a menu tells it', space: 'line' },
        [
          ...(aboard?.serial === undefined ? [] : [masked(aboard.serial)]),
          ...(aboard?.software === undefined ? [] : [`software ${aboard.software}`]),
        ].join('; '),
      );
    case 'plugs':
      return withFile(
        { asks: 'Its plugs: as here, or what else?', space: 'line' },
        (sheet?.plugs ?? []).map(plugWords).join('; '),
      );
    case 'wire-colours':
      return withFile(
        { asks: 'Colour of each wire and where it goes', space: 'line' },
        colourWords(sheet?.plugs ?? []),
      );
    case 'terminator':
      return withFile(
        { asks: 'Does it contain a terminator?', space: ['yes', 'no', 'its manual does not say'] },
        sheet?.terminator === undefined ? '' : sheet.terminator ? 'yes' : 'no',
      );
    case 'breaker': {
      const feeds = index.boat.supply.panels.flatMap((panel) =>
        panel.circuits
          .filter((circuit) => circuit.feeds.some((fed) => fed.startsWith(`${unit}.`)))
          .map((circuit) => `${circuit.name ?? circuit.id} of ${panel.id}, ${circuit.ratingA} A`),
      );
      return withFile({ asks: 'Breaker or fuse that takes its power off', space: 'line' }, feeds.join('; '));
    }
    default:
      return withFile(
        {
          asks: `Copy before it is switched off: ${copiedSettings.byKind[sheet?.kind ?? ''] ?? usual.join(', ')}`,
          space: 'settings',
          blanks: usual,
        },
        (aboard?.settings ?? []).map((setting) => `${setting.name} ${shownSetting(setting)}`).join('; '),
      );
  }
};

const plateWords = ({ chemistry, nominalV, capacityAh, coldCrankingA }: Bank): string =>
  `${chemistry}, ${nominalV} V, ${capacityAh} Ah${coldCrankingA === undefined ? '' : `, ${coldCrankingA} A cold cranking`}`;

const guardWords = (main: Bank['main']): string => {
  if (main === undefined || main.kind === 'none') return main?.kind ?? '';
  const rating = main.ratingA === undefined ? '' : ` of ${main.ratingA} A`;
  return `${main.kind}${rating}${main.distance === undefined ? '' : `, ${lengthWords(main.distance)}`}`;
};

const bankWords = (index: BoatIndex, kind: WalkKind, id: string): Words => {
  const bank = index.banks.get(id);
  switch (kind) {
    case 'bank-plate':
      return withFile(
        { asks: 'From its label: kind, Ah, cold-cranking amperes', space: 'line' },
        bank === undefined ? '' : plateWords(bank),
      );
    case 'bank-fuse':
      return withFile(
        { asks: 'Main fuse on its plus: kind, amperes, how far along the wire; or none', space: 'line' },
        guardWords(bank?.main),
      );
    case 'bank-switch':
      return withFile(
        { asks: 'Is there a switch that takes it off?', space: ['yes', 'no'] },
        bank?.isolator === undefined ? '' : bank.isolator ? 'yes' : 'no',
      );
    case 'bank-parted':
      return withFile(
        {
          asks: 'What keeps the house from drawing on it?',
          space: ['switch', 'relay', 'diode', 'converter', 'wholly apart', 'nothing'],
        },
        bank?.partedBy ?? '',
      );
    default:
      return withFile(
        { asks: 'Where is the one bar at which all negatives meet?', space: 'line' },
        index.places.get(index.boat.supply.negativeAt ?? '')?.name ?? '',
      );
  }
};

const feederWords = ({ feeder, mainA }: Panel): string =>
  [
    ...(feeder === undefined ? [] : [lengthWords(feeder.length)]),
    ...(feeder?.areaMm2 === undefined ? [] : [`${feeder.areaMm2} mm²`]),
    ...(mainA === undefined ? [] : [`main of ${mainA} A`]),
  ].join('; ');

const panelWords = (index: BoatIndex, kind: WalkKind, id: string): Words => {
  const panel = index.panels.get(id);
  if (kind === 'panel-feeder') {
    return withFile(
      { asks: 'Its feed: length by tape, thickness of the wire, main fuse', space: 'line' },
      panel === undefined ? '' : feederWords(panel),
    );
  }
  return withFile(
    { asks: 'Every breaker: amperes and what goes dark with it; how many places are free', space: 'line' },
    (panel?.circuits ?? []).map(({ name, id: circuit, ratingA }) => `${name ?? circuit} ${ratingA} A`).join('; '),
  );
};

const reachWords = { open: 'open', panel: 'behind a panel', hard: 'hard to reach', aloft: 'aloft' } as const;

const placeWords = ({ places }: BoatIndex, kind: WalkKind, id: string): Words => {
  const place = places.get(id);
  if (kind === 'other-boxes') {
    return withFile(
      { asks: 'Any box, plug or cable here that is not on this list?', space: 'line' },
      place?.counted === true ? 'nothing else is there' : '',
    );
  }
  const said =
    place === undefined
      ? ''
      : `${place.exposure}, ${reachWords[place.reach]}, ${place.tees ? 'tees may stand there' : 'no tees stand there'}`;
  return withFile(
    {
      asks: 'Is it so aboard: where it is, dry or wet, how one gets at it, room for tees?',
      space: ['it is so', 'there is no such place'],
    },
    said,
  );
};

/** A way as one stands at one of its ends: the way to the other. */
const wayFrom = (index: BoatIndex, { ends }: Way, place: string): string => {
  const other = ends.find((end) => end !== place) ?? place;
  return `the way to ${index.places.get(other)?.name ?? other}`;
};

/** A question in words as one stands at a place: what it is about, what is asked, what the file says so far, how the answer is written. */
export const questionWords = (
  index: BoatIndex,
  { subject, kind, about }: WalkQuestion,
  place: string,
): QuestionWords => {
  switch (subject) {
    case 'place':
      return { of: 'this place', ...placeWords(index, kind, about) };
    case 'way': {
      const way = index.ways.get(about);
      return way === undefined
        ? { of: about, asks: '', space: 'line' }
        : { of: wayFrom(index, way, place), ...wayWords(index, kind, way) };
    }
    case 'unit':
      return { of: index.kit.get(about)?.name ?? about, ...unitWords(index, kind, about) };
    case 'bank':
      return { of: `bank ${about}`, ...bankWords(index, kind, about) };
    case 'panel':
      return { of: `panel ${about}`, ...panelWords(index, kind, about) };
  }
};
