import type { Place } from '../../../core/boat/boat-schema.ts';
import { cautions } from '../../../core/facts/cautions.ts';
import type { LineEntry } from '../../../core/plan-shape.ts';
import { labelsText } from '../../lists/labels-text.ts';
import { wiresWords } from '../../lists/wire-words.ts';
import { codeOf } from '../../sheet/line-code.ts';
import { type KnownBoat, labelOf, lengthText } from '../known-boat.ts';
import { type FlowPart, keyColumnMm } from '../text-flow.ts';
import { type Entry, endBrief, type PlaceBox } from './place-facts.ts';

/** Ids of the cautions that belong to work at a place. */
const cautionsAt = (known: KnownBoat, place: Place): string[] => {
  const { supply } = known.boat;
  const kinds = new Set(
    (known.marksAt.get(place.id) ?? []).map(({ kit }) => known.index.sheetOf.get(kit.id)?.kind ?? ''),
  );
  const hasBank = supply.banks.some((bank) => bank.place === place.id);
  const hasPanel = supply.panels.some((panel) => panel.place === place.id);
  const isThrough = [...known.index.ways.values()].some(
    ({ ends, through }) => ends.includes(place.id) && through !== undefined && through !== 'plain',
  );
  return [
    ...(hasBank || hasPanel ? ['battery-short'] : []),
    ...(hasBank ? ['short-energy'] : []),
    ...(supply.banks.some((bank) => bank.place === place.id && bank.chemistry === 'lifepo4') ? ['lithium'] : []),
    ...(place.exposure === 'engine' || place.exposure === 'bilge' ? ['petrol'] : []),
    ...(kinds.has('radar') ? ['radar'] : []),
    ...(kinds.has('radio-antenna') ? ['vhf-rf'] : []),
    ...(place.reach === 'aloft' ? ['aloft'] : []),
    ...(kinds.has('inverter') || kinds.has('charger') ? ['ac'] : []),
    ...(kinds.has('steering-drive') || kinds.has('pilot-computer') || kinds.has('pilot') ? ['pilot-drive'] : []),
    ...(isThrough || kinds.has('transducer') ? ['hull'] : []),
  ];
};

const cautionParts = (known: KnownBoat, place: Place): FlowPart[] =>
  cautionsAt(known, place).flatMap((id): FlowPart[] => {
    const caution = cautions.find((one) => one.id === id);
    return caution === undefined
      ? []
      : [
          {
            look: 'plain',
            text: `Caution, ${caution.hazard}: ${caution.text}${caution.deferTo === undefined ? '' : ` Decides: ${caution.deferTo}.`}`,
          },
        ];
  });

const lengthWords = (known: KnownBoat, line: LineEntry): string => {
  const about = line.guessed ? 'about ' : '';
  const made = line.kept === undefined ? '' : ', aboard';
  return `${about}${lengthText(known, line.lengthM)}${made}`;
};

const isLoop = (line: LineEntry, place: Place): boolean => (line.dripLoops ?? []).includes(place.id);

const lineParts = (known: KnownBoat, place: Place, lines: readonly LineEntry[]): FlowPart[] => {
  const keyMm = keyColumnMm(lines.map(({ id }) => labelOf(known, id)));
  return lines.map((line): FlowPart => {
    const wires = wiresWords(known.index, line);
    return {
      look: 'plain',
      key: labelOf(known, line.id),
      keyMm,
      text: [
        `${codeOf(line.kind).words}: ${endBrief(known, line.from)} to ${endBrief(known, line.to)}, ${lengthWords(known, line)}`,
        ...(isLoop(line, place) ? ['drip loop here'] : []),
        ...(wires === '' ? [] : [`wires ${wires}`]),
      ].join('; '),
      about: [line.id],
    };
  });
};

const endsAt = (place: Place, { places }: LineEntry): boolean => places[0] === place.id || places.at(-1) === place.id;

/** Units that a bus feeds need no feed of their own: said once for all of a place. */
const busFedParts = (known: KnownBoat, boxes: readonly PlaceBox[]): FlowPart[] => {
  const fed = boxes.flatMap(({ mark }) => {
    const isFed = known.plan.loads.some(
      ({ port, source }) => port.split('.')[0] === mark?.kit.id && source.by === 'bus',
    );
    return mark !== undefined && isFed ? [mark] : [];
  });
  const numbers = fed.map(({ number }) => number).join(', ');
  if (fed.length === 0) return [];
  return [
    {
      look: 'plain',
      text: fed.length === 1 ? `${numbers} is fed by the trunk.` : `${numbers} are fed by the trunk.`,
      about: fed.flatMap(({ about }) => about),
    },
  ];
};

/** What the picture of a place cannot say: every cable that ends here, what passes through, what guards it, cautions. */
export const placeWords = (
  known: KnownBoat,
  place: Place,
  { boxes, entries }: { boxes: readonly PlaceBox[]; entries: readonly Entry[] },
): FlowPart[] => {
  const here = known.plan.lines.filter(({ places }) => places.includes(place.id));
  const ending = here.filter((line) => endsAt(place, line));
  const passing = here.filter((line) => !endsAt(place, line));
  const parts: FlowPart[] = [
    ...cautionParts(known, place),
    ...(ending.length === 0 ? [] : [{ look: 'name', text: 'Ends here', withNext: true } as const]),
    ...lineParts(known, place, ending),
    ...(passing.length === 0
      ? []
      : ([
          { look: 'name', text: 'Passes through', withNext: true },
          { look: 'plain', text: labelsText(passing.map(({ id }) => labelOf(known, id))) },
        ] as const)),
    ...busFedParts(known, boxes),
  ];
  return entries.length === 0 && parts.length === 0
    ? [{ look: 'quiet', text: 'No line of this plan ends here.' }]
    : parts;
};
