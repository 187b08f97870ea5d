import type { ReactNode } from 'react';
import type { Sheet, Turn } from '../../../../../core/boat/sheet.ts';
import { type ReadingId, readingIds } from '../../../../../core/facts/reading-ids.ts';
import { readingWords } from '../../../../../core/facts/reading-words.ts';
import { turnBetween } from '../../../../../core/kit/turn-between.ts';
import { DescribedFields, type FieldOf } from '../../../forms/described.tsx';
import { ChoiceField } from '../../../forms/fields.tsx';
import { words } from './words.ts';

type Carried = Turn['carries'][number];

const carriedFields: readonly FieldOf<Carried>[] = [
  { key: 'instance', label: words.onlyNumber, ask: 'number', step: 1 },
  { key: 'asInstance', label: words.asNumber, ask: 'number', step: 1 },
  { key: 'loses', label: words.loses, ask: 'several', choices: words.lost },
];

const keyOf = ({ reading, instance }: Carried): string => `${reading} ${instance ?? ''}`;

const CarriedRow = ({
  carried,
  onCarried,
  onLeaveOut,
}: {
  carried: Carried;
  onCarried: (carried: Carried) => void;
  onLeaveOut: () => void;
}): ReactNode => (
  <li>
    <details>
      <summary>{readingWords[carried.reading]}</summary>
      <div className="form-fields">
        <DescribedFields of={carried} fields={carriedFields} onOf={onCarried} />
      </div>
    </details>
    <button
      type="button"
      className="press-link"
      aria-label={words.leaveOut(readingWords[carried.reading])}
      onClick={onLeaveOut}
    >
      ×
    </button>
  </li>
);

const OneTurn = ({
  turn,
  sheet,
  onTurn,
  onTakeOut,
}: {
  turn: Turn;
  sheet: Sheet;
  onTurn: (turn: Turn) => void;
  onTakeOut: () => void;
}): ReactNode => {
  const ports = sheet.ports.map(({ id }) => [id, id] as const);
  const { carries } = turn;
  const all = turnBetween(sheet, turn).carries.filter(({ reading }) => !carries.some((one) => one.reading === reading));
  return (
    <fieldset className="sheet-turn">
      <legend>{words.turn(turn.fromPort, turn.toPort)}</legend>
      <div className="form-fields">
        <ChoiceField
          label={words.fromPort}
          value={turn.fromPort}
          choices={ports}
          onValue={(fromPort) => onTurn({ ...turn, fromPort })}
        />
        <ChoiceField
          label={words.toPort}
          value={turn.toPort}
          choices={ports}
          onValue={(toPort) => onTurn({ ...turn, toPort })}
        />
      </div>
      <ul className="sheet-messages">
        {carries.map((carried, at) => (
          <CarriedRow
            // biome-ignore lint/suspicious/noArrayIndexKey: the same reading may be carried by several numbers, and a number is typed here
            key={`${at} ${carried.reading}`}
            carried={carried}
            onCarried={(next) => onTurn({ ...turn, carries: carries.map((one, index) => (index === at ? next : one)) })}
            onLeaveOut={() => onTurn({ ...turn, carries: carries.filter((_, index) => index !== at) })}
          />
        ))}
      </ul>
      <ChoiceField<ReadingId>
        label={words.addCarried}
        value={undefined}
        choices={readingIds.map((reading) => [reading, readingWords[reading]] as const)}
        onValue={(reading) => {
          const isThere = carries.some((one) => keyOf(one) === keyOf({ reading }));
          if (!isThere) onTurn({ ...turn, carries: [...carries, { reading }] });
        }}
      />
      <p className="kit-presses">
        {all.length === 0 ? null : (
          <button
            type="button"
            className="press-link"
            onClick={() => onTurn({ ...turn, carries: [...carries, ...all] })}
          >
            {words.allBetween(all.length)}
          </button>
        )}
        <button type="button" className="press-link" onClick={onTakeOut}>
          {words.takeOut}
        </button>
      </p>
    </fieldset>
  );
};

/** What a converter passes on from one of its ports to another, and what gets lost on the way. */
export const TurnFields = ({ sheet, onTurns }: { sheet: Sheet; onTurns: (turns: Turn[]) => void }): ReactNode => {
  const { turns = [], ports } = sheet;
  const [from, to] = ports.filter(({ protocol }) => protocol !== 'dc');
  return (
    <details className="form-part">
      <summary>{words.turns}</summary>
      {turns.map((turn, at) => (
        <OneTurn
          // biome-ignore lint/suspicious/noArrayIndexKey: a turn is known by its two ports, which are chosen here
          key={at}
          turn={turn}
          sheet={sheet}
          onTurn={(next) => onTurns(turns.map((one, index) => (index === at ? next : one)))}
          onTakeOut={() => onTurns(turns.filter((_, index) => index !== at))}
        />
      ))}
      {from === undefined || to === undefined ? (
        <p className="quiet">{words.onePort}</p>
      ) : (
        <button
          type="button"
          className="press-link"
          onClick={() => onTurns([...turns, turnBetween(sheet, { fromPort: from.id, toPort: to.id })])}
        >
          {words.addTurn}
        </button>
      )}
    </details>
  );
};
