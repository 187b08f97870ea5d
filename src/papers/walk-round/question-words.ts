import type { BoatIndex } from '../../core/boat/boat-index.ts';
import type { Way } from '../../core/boat/boat-schema.ts';
import type { Plug } from '../../core/boat/sheet.ts';
import { copiedSettings } from '../../core/facts/copied-settings.ts';
import { printLength } from '../../core/units/print-length.ts';
import type { WalkKind, WalkQuestion } from '../../core/walk-round/walk-question.ts';

/** One question as it is read aboard. */
export interface QuestionWords {
  /** what it is about */
  readonly of: string;
  readonly asks: string;
  /** what the file says so far */
  readonly file?: string;
  /** how the answer is written: a tick, a length, boxes to choose from, or a line of words */
  readonly space: 'tick' | 'length' | 'line' | readonly string[];
}

type Words = Omit<QuestionWords, 'of'>;

const plugWords = ({ connector, gender }: Plug): string => (gender === 'none' ? connector : `${connector}, ${gender}`);

const colourWords = (plugs: readonly Plug[]): string =>
  plugs.flatMap(({ conductors = [] }) => conductors.map(({ label, colour }) => `${label} ${colour}`)).join('; ');

const withFile = (words: Words, file: string): Words => (file === '' ? words : { ...words, file });

const lengthWords = ({ valueM, how }: { valueM: number; how: string }): string =>
  `${printLength({ valueM, as: 'metres' })} (${printLength({ valueM, as: 'feet' })}), ${how}`;

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
      const inIt = index.boat.cables.filter(({ ways }) => ways.includes(way.id)).map(({ id, name = id }) => name);
      return withFile({ asks: 'What is in it: how many cables, how thick, of what', space: 'line' }, inIt.join('; '));
    }
  }
};

const unitWords = (index: BoatIndex, kind: WalkKind, unit: string): Words => {
  const sheet = index.sheetOf.get(unit);
  switch (kind) {
    case 'photos':
      return { asks: 'Photo of', space: ['front', 'back with its plugs', 'label'] };
    case 'serial':
      return { asks: 'Serial number, from the label, for your own papers', space: 'line' };
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
      return {
        asks: `Copy before it is switched off: ${copiedSettings.byKind[sheet?.kind ?? ''] ?? 'what is set in it'}`,
        space: 'tick',
      };
  }
};

const bankWords = (index: BoatIndex, kind: WalkKind, id: string): Words => {
  const bank = index.banks.get(id);
  switch (kind) {
    case 'bank-plate':
      return withFile(
        { asks: 'From its label: kind, Ah, cold-cranking amperes', space: 'line' },
        bank === undefined ? '' : `${bank.chemistry}, ${bank.nominalV} V, ${bank.capacityAh} Ah`,
      );
    case 'bank-fuse':
      return { asks: 'Main fuse on its plus: kind, amperes, how far along the wire; or none', space: 'line' };
    case 'bank-switch':
      return { asks: 'Is there a switch that takes it off?', space: ['yes', 'no'] };
    case 'bank-parted':
      return {
        asks: 'What keeps the house from drawing on it?',
        space: ['switch', 'relay', 'diode', 'converter', 'wholly apart', 'nothing'],
      };
    default:
      return { asks: 'Where is the one bar at which all negatives meet?', space: 'line' };
  }
};

const panelWords = (index: BoatIndex, kind: WalkKind, id: string): Words => {
  const panel = index.panels.get(id);
  if (kind === 'panel-feeder') {
    return withFile(
      { asks: 'Its feed: length by tape, thickness of the wire, main fuse', space: 'line' },
      panel?.feeder === undefined ? '' : lengthWords(panel.feeder.length),
    );
  }
  return withFile(
    { asks: 'Every breaker: amperes and what goes dark with it; how many places are free', space: 'line' },
    (panel?.circuits ?? []).map(({ name, id: circuit, ratingA }) => `${name ?? circuit} ${ratingA} A`).join('; '),
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
      return kind === 'other-boxes'
        ? { of: 'this place', asks: 'Any box, plug or cable here that is not on this list?', space: 'line' }
        : { of: 'this place', asks: 'Is it so aboard: where it is, dry or wet, how one gets at it?', space: 'line' };
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
