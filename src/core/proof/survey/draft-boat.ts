import type { Boat, Kit } from '../../boat/boat-schema.ts';
import type { Plug, Sheet } from '../../boat/sheet.ts';
import { lenCurrent } from '../../facts/bus-limits.ts';
import { isOffsetSet, offsetWords, referenceWord } from '../decode/nautical-words.ts';
import type { FieldValues } from '../decode/read-field.ts';
import { draftSends, isAlwaysEmpty } from './draft-sends.ts';
import { senderKind } from './sender-words.ts';
import type { SurveyReport, SurveySender } from './survey-report.ts';

const busId = 'bus';
const placeId = 'not-placed';
const portId = 'n2k';
const plug: Plug = { id: 'bus', connector: 'n2k-micro', gender: 'male' };

interface Unit {
  readonly sender: SurveySender;
  /** its number in the survey, from 1 */
  readonly number: number;
}

/** A sender that lost its address and never showed a NAME is nobody that could be found aboard. */
const unitsOf = ({ senders }: SurveyReport): Unit[] =>
  senders
    .map((sender, at) => ({ sender, number: at + 1 }))
    .filter(({ sender }) => sender.name !== undefined || sender.address !== undefined);

/** The senders that a drafted boat has as units, in the order of its kit. */
export const draftedSenders = (report: SurveyReport): SurveySender[] => unitsOf(report).map(({ sender }) => sender);

const nameOf = ({ sender, number }: Unit): string => {
  const claim = sender.name === undefined ? ` at address ${sender.address}, no claim seen` : '';
  return `${senderKind(sender).words}${claim}, unit ${number}`;
};

const idOf = ({ sender, number }: Unit): string => `${senderKind(sender).kind}-${number}`;
const sheetIdOf = (unit: Unit): string => `recorded-${idOf(unit)}`;

const heading = 127_250;
const depth = 128_267;

/** What a unit was set to, as far as it says so itself: the reference of its heading, the offset of its depth. */
const settingsOf = ({ sends }: SurveySender): string[] => {
  const lastOf = (number: number): FieldValues[] =>
    sends
      .filter(({ pgn }) => pgn === number)
      .flatMap(({ parts }) => parts.flatMap(({ last }) => (last === undefined ? [] : [last])));
  const references = lastOf(heading).flatMap(({ reference }) => referenceWord(reference) ?? []);
  const offsets = lastOf(depth).map(({ offset }) =>
    isOffsetSet(offset) ? `Its depth offset was ${offsetWords(offset)}.` : 'Its depth offset was not set.',
  );
  return [...(references.length === 0 ? [] : [`Its heading was ${references.join(' and ')}.`]), ...offsets];
};

const noteOf = ({ sender }: Unit, { time }: SurveyReport): string => {
  const spent = time === undefined ? 'a recording without times' : `a recording of ${Math.round(time.durationS)} s`;
  const len = sender.product?.len;
  const empty = sender.sends.filter(isAlwaysEmpty).map(({ pgn }) => pgn);
  return [
    `From ${spent}.`,
    len === undefined ? 'It did not tell its LEN.' : `LEN ${len} as it says itself.`,
    ...(empty.length === 0 ? [] : [`Left out because they came without data: ${empty.slice(0, 20).join(', ')}.`]),
    ...settingsOf(sender),
    'What it hears is not seen in a recording.',
  ].join(' ');
};

const sheetOf = (unit: Unit, report: SurveyReport): Sheet => {
  const len = unit.sender.product?.len;
  return {
    id: sheetIdOf(unit),
    name: `${senderKind(unit.sender).words}, as recorded, unit ${unit.number}`,
    kind: senderKind(unit.sender).kind,
    source: 'recording',
    sourceNote: noteOf(unit, report),
    plugs: [plug],
    ports: [
      {
        id: portId,
        onPlug: plug.id,
        protocol: 'nmea2000',
        role: 'both',
        ...(len === undefined ? {} : { len }),
        sends: unit.sender.sends.flatMap(draftSends),
        hears: [],
      },
    ],
  };
};

const kitOf = (unit: Unit): Kit => ({
  id: idOf(unit),
  name: nameOf(unit),
  sheet: sheetIdOf(unit),
  fate: 'stays',
  place: placeId,
  ...(unit.sender.name === undefined ? {} : { identity: unit.sender.name.hex }),
});

/** Amperes a small feed of a bus carries; a fuller bus is drafted on a larger one. */
const smallFeedA = 4;

/** A bus that runs is fed from somewhere: without any feed the plan could only say that none is possible. */
const supplyOf = ({ lenSum }: SurveyReport): Boat['supply'] => ({
  banks: [{ id: 'bank', place: placeId, chemistry: 'flooded', nominalV: 12, capacityAh: 100, for: 'house' }],
  panels: [
    {
      id: 'panel',
      place: placeId,
      from: 'bank',
      circuits: [
        {
          id: 'bus-feed',
          name: 'bus feed, guessed',
          ratingA: (lenSum * lenCurrent.value) / 1000 > smallFeedA ? 10 : 5,
          kind: 'fuse',
          feeds: [busId],
        },
      ],
    },
  ],
  dcdc: [],
});

/**
 * A boat file drafted from a recording: one unit for each NAME, or for each address that showed none, all in one place
 * on one bus. Hull, place and supply are stand-ins until someone measures. Numbers of units are those of the survey.
 */
export const draftBoat = (report: SurveyReport): Boat => {
  const units = unitsOf(report);
  return {
    format: 'fairlead-boat',
    version: 1,
    name: 'Draft from a recording: hull guessed, nothing placed yet',
    hull: {
      kind: 'sloop',
      material: 'grp',
      lengthM: 10,
      beamM: 3.3,
      draftM: 1.6,
      airDraft: { valueM: 14, how: 'guessed' },
    },
    places: [{ id: placeId, name: 'not placed yet', xM: 5, yM: 0, zM: 1, exposure: 'dry', reach: 'open', tees: true }],
    ways: [],
    cables: [],
    sheets: units.map((unit) => sheetOf(unit, report)),
    kit: units.map(kitOf),
    needs: [],
    buses: [{ id: busId, name: 'bus as recorded', protocol: 'nmea2000' }],
    joins:
      units.length === 0
        ? []
        : [
            {
              id: 'bus-as-recorded',
              kind: 'nmea2000',
              bus: busId,
              members: units.map((unit) => ({ kit: idOf(unit), port: portId, as: 'both' })),
              hold: 'fixed',
            },
          ],
    supply: supplyOf(report),
  };
};
