import type { ReactNode } from 'react';
import type { BoatIndex } from '../../../../../core/boat/boat-index.ts';
import type { Place } from '../../../../../core/boat/boat-schema.ts';
import { standingAt } from '../../../../../core/boat/edits/standing-at.ts';
import { typicalSheets } from '../../../../../core/facts/sheets/index.ts';
import { placeUnit } from '../../../../../core/kit/place-unit.ts';
import { answerEdit } from '../../../../../core/walk-round/answer-edits.ts';
import { words as boatWords } from '../words.ts';
import { AnswerOptions, AnswerPick } from './answer-options.tsx';
import { WalkForm } from './walk-form.tsx';
import { words } from './words.ts';

const exposures = [
  'dry',
  'damp',
  'spray',
  'weather',
  'engine',
  'bilge',
] as const satisfies readonly Place['exposure'][];
const reaches = ['open', 'panel', 'hard', 'aloft'] as const satisfies readonly Place['reach'][];

/** Whether a place is as the file says, put right on the spot, or not there at all. */
export const PlaceIsSo = ({ index, about, what }: { index: BoatIndex; about: string; what: string }): ReactNode => {
  const place = index.places.get(about);
  if (place === undefined) return null;
  const canGo = standingAt(index.boat, about).length === 0;
  return (
    <>
      <WalkForm
        question={`place-is-so ${about}`}
        what={what}
        put={words.itIsSo}
        wrong=""
        blanks={[
          {
            name: 'exposure',
            says: words.exposure,
            first: place.exposure,
            choices: exposures.map((one) => [one, boatWords.exposures[one]]),
          },
          {
            name: 'reach',
            says: words.reach,
            first: place.reach,
            choices: reaches.map((one) => [one, boatWords.reaches[one]]),
          },
          {
            name: 'tees',
            says: words.tees,
            first: place.tees ? 'yes' : 'no',
            choices: [
              ['yes', words.yes],
              ['no', words.no],
            ],
          },
        ]}
        read={(typed) => [
          answerEdit({
            kind: 'place-is-so',
            place: about,
            exposure: exposures.find((one) => one === typed('exposure')) ?? place.exposure,
            reach: reaches.find((one) => one === typed('reach')) ?? place.reach,
            tees: typed('tees') === 'yes',
          }),
        ]}
      />
      {canGo ? (
        <AnswerOptions what={what} options={[[words.noSuchPlace, { kind: 'no-such-place', place: about }]]} />
      ) : null}
    </>
  );
};

const sheetPicks = typicalSheets
  .map(({ id, name }) => [id, name.replace(/, typical$/, '')] as const)
  .sort(([, one], [, other]) => one.localeCompare(other, 'en'));

/** What else is there: put aboard as one of the typical units, or nothing. */
export const OtherBoxes = ({ index, about, what }: { index: BoatIndex; about: string; what: string }): ReactNode => (
  <>
    <AnswerPick
      what={words.anotherBox(what)}
      first={words.anotherBoxIs}
      picks={sheetPicks}
      editsOf={(id) =>
        typicalSheets
          .filter((sheet) => sheet.id === id)
          .flatMap((sheet) => placeUnit(index.boat, { sheet, place: about, fate: 'stays', withNeeds: false }).edits)
      }
    />
    <AnswerOptions what={what} options={[[words.nothingElse, { kind: 'other-boxes', place: about }]]} />
  </>
);
