import type { ReactNode } from 'react';
import type { BoatIndex } from '../../../../../core/boat/boat-index.ts';
import type { Way } from '../../../../../core/boat/boat-schema.ts';
import { lineKinds } from '../../../../../core/boat/line-kinds.ts';
import { parseBore } from '../../../../../core/units/parse-bore.ts';
import { answerEdit } from '../../../../../core/walk-round/answer-edits.ts';
import { cablesInWay } from '../../../../../core/walk-round/cables-in-way.ts';
import { TapeField } from '../tape-field.tsx';
import { words as boatWords } from '../words.ts';
import { AnswerOptions } from './answer-options.tsx';
import type { AnswerProps } from './answer-props.ts';
import { WalkForm } from './walk-form.tsx';
import { words } from './words.ts';

const mostAtOnce = 20;

/** Cables of the bus that end here: whether a terminator sits on their end. */
const EndsOfTrunk = ({ index, way }: { index: BoatIndex; way: Way }): ReactNode =>
  index.boat.cables
    .filter(({ kind, ways, terminator }) => kind === 'trunk' && ways.includes(way.id) && terminator === undefined)
    .map(({ id, name = id }) => (
      <div key={id} className="walk-also">
        <p>{words.terminatorOn(name)}</p>
        <AnswerOptions
          what={words.terminatorOn(name)}
          options={[
            [words.yes, [{ edit: 'change-cable', params: { cable: id, terminator: true } }]],
            [words.no, [{ edit: 'change-cable', params: { cable: id, terminator: false } }]],
          ]}
        />
      </div>
    ));

const WayHolds = ({ index, way, what }: { index: BoatIndex; way: Way; what: string }): ReactNode => {
  const holds = index.boat.cables.some(({ ways }) => ways.includes(way.id));
  return (
    <>
      <WalkForm
        question={`way-holds ${way.id}`}
        what={what}
        wrong={words.wrongCables}
        put={words.putCables}
        blanks={[
          { name: 'count', says: words.howMany, first: '1', isNumber: true },
          {
            name: 'kind',
            says: words.ofWhat,
            first: 'feed',
            choices: lineKinds.map((kind) => [kind, boatWords.lineKinds[kind]]),
          },
          { name: 'diameter', says: words.thick, hint: words.millimetres, isNumber: true },
        ]}
        read={(typed) => {
          const count = Number(typed('count'));
          const diameterMm = parseBore(typed('diameter'));
          const kind = lineKinds.find((one) => one === typed('kind'));
          const isFew = Number.isInteger(count) && count >= 1 && count <= mostAtOnce;
          if (!isFew || kind === undefined || diameterMm === undefined) return undefined;
          return diameterMm > 0 && diameterMm <= 200
            ? cablesInWay(index.boat, way, { kind, diameterMm, count })
            : undefined;
        }}
      />
      <EndsOfTrunk index={index} way={way} />
      <AnswerOptions
        what={what}
        options={[[holds ? words.thatIsAll : words.nothingInIt, { kind: 'way-holds', way: way.id }]]}
      />
    </>
  );
};

/** What takes the answer to a question about a way. */
export const WayAnswer = ({ index, question: { kind, about }, what }: AnswerProps): ReactNode => {
  const way = index.ways.get(about);
  if (way === undefined) return null;
  switch (kind) {
    case 'way-length':
      return <TapeField way={way} name={what} />;
    case 'way-seen':
      return (
        <AnswerOptions
          what={what}
          options={[
            [words.seen, { kind, way: about, known: 'seen' }],
            [words.pulled, { kind, way: about, known: 'pulled' }],
            [words.noSuchWay, { kind: 'no-such-way', way: about }],
          ]}
        />
      );
    case 'way-bore':
      return (
        <WalkForm
          question={`way-bore ${about}`}
          what={what}
          wrong={words.wrongBore}
          blanks={[{ name: 'bore', says: words.inside, hint: words.millimetres, isNumber: true }]}
          read={(typed) => {
            const mm = parseBore(typed('bore'));
            return mm === undefined || mm <= 0 || mm > 1000
              ? undefined
              : [answerEdit({ kind: 'way-bore', way: about, mm })];
          }}
        />
      );
    default:
      return <WayHolds index={index} way={way} what={what} />;
  }
};
