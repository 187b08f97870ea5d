import { type ReactNode, useMemo } from 'react';
import type { Boat } from '../../../../core/boat/boat-schema.ts';
import { type Waters, waters } from '../../../../core/facts/waters.ts';
import type { Plan } from '../../../../core/plan-shape.ts';
import {
  type BusRows,
  type LineRows,
  type MessageRow,
  type SenderRow,
  trafficRows,
  waitCaution,
  watersWords,
} from '../../../../papers/traffic/traffic-rows.ts';
import { useEdit } from '../../edit-context.ts';
import type { RowHand } from '../../margin/lit-rows.tsx';
import { RateField } from './rate-field.tsx';
import './traffic-block.css';
import { useWords } from '../../words/units.ts';
import { WordsHere } from '../../words/words-here.tsx';
import { words } from './words.ts';

interface GaugeProps {
  /** 0 to 100: what is full as a rule, and at the worst */
  readonly filledPct: number;
  readonly worstPct?: number;
  readonly marksPct?: readonly number[];
  readonly isOver?: boolean;
}

/** How full a bus or a line is, or a sender’s share of the largest; the words beside it say the same. */
const Gauge = ({ filledPct, worstPct, marksPct = [], isOver = false }: GaugeProps): ReactNode => (
  <svg
    className={isOver ? 'traffic-gauge over' : 'traffic-gauge'}
    viewBox="0 0 100 8"
    preserveAspectRatio="none"
    aria-hidden="true"
  >
    {marksPct.length === 0 ? null : <rect className="traffic-whole" x="0" y="1" width="100" height="6" />}
    {worstPct === undefined ? null : (
      <rect className="traffic-worst" x="0" y="1" width={Math.min(100, worstPct)} height="6" />
    )}
    <rect className="traffic-filled" x="0" y="1" width={Math.min(100, filledPct)} height="6" />
    {marksPct.map((pct) => (
      <line key={pct} className="traffic-mark" x1={pct} x2={pct} y1="0" y2="8" />
    ))}
  </svg>
);

/** What the marks stand for, under the gauge and where they are. */
const Marks = ({ marksPct }: { marksPct: readonly number[] }): ReactNode => (
  <svg className="traffic-marks" viewBox="0 0 300 12" aria-hidden="true">
    {marksPct.map((pct) => (
      <text key={pct} x={3 * pct} y="10" textAnchor="middle">
        {pct} %
      </text>
    ))}
  </svg>
);

const Message = ({ row, unit }: { row: MessageRow; unit: string }): ReactNode => {
  const say = useWords();
  return (
    <li className="traffic-message">
      <span>{row.code === row.what ? row.what : `${row.what} (${row.code})`}</span>
      <span className="row-fact">
        {' '}
        {say(row.rate.says)}. {row.load}
        {row.wait === undefined ? null : words.waits(row.wait)}
      </span>
      {row.rate.isOwn ? <RateField rate={row.rate} what={row.what} unit={unit} /> : null}
    </li>
  );
};

const Messages = ({ rows, unit }: { rows: readonly MessageRow[]; unit: string }): ReactNode => (
  <ul className="traffic-messages">
    {rows.map((row) => (
      <Message key={row.key} row={row} unit={unit} />
    ))}
  </ul>
);

const Sender = ({ row, hand }: { row: SenderRow; hand: RowHand }): ReactNode => (
  <li onPointerEnter={() => hand.lights.rest([row.kit])} onPointerLeave={() => hand.lights.rest([])}>
    <details className="traffic-sender">
      <summary>
        {row.name} <span className="traffic-load">{row.load}</span>
        {row.isChanged ? <span className="row-fact">{words.ratesChanged}</span> : null}
        <Gauge filledPct={100 * row.share} />
      </summary>
      <Messages rows={row.messages} unit={row.name} />
    </details>
  </li>
);

const Bus = ({ bus, hand }: { bus: BusRows; hand: RowHand }): ReactNode => {
  const say = useWords();
  return (
    <div className="traffic-bus">
      <h3>{bus.name}</h3>
      <p>{say(bus.fact)}</p>
      <Gauge filledPct={bus.averagePct} worstPct={bus.worstPct} marksPct={bus.marksPct} isOver={bus.isOver} />
      <Marks marksPct={bus.marksPct} />
      {bus.says.map((sentence) => (
        <p key={sentence}>{say(sentence)}</p>
      ))}
      <p className="quiet">{words.eachSender}</p>
      <ul>
        {bus.senders.map((row) => (
          <Sender key={row.port} row={row} hand={hand} />
        ))}
      </ul>
    </div>
  );
};

const Line = ({ line, hand }: { line: LineRows; hand: RowHand }): ReactNode => {
  const say = useWords();
  return (
    <li onPointerEnter={() => hand.lights.rest([line.kit])} onPointerLeave={() => hand.lights.rest([])}>
      <details className="traffic-sender">
        <summary>
          {line.name} <span className="row-fact">{say(line.fact)}</span>
          <Gauge filledPct={line.sharePct} marksPct={[line.markPct]} isOver={line.isOver} />
        </summary>
        <Messages rows={line.messages} unit={line.name} />
      </details>
    </li>
  );
};

const WatersChoice = ({ here }: { here: Waters }): ReactNode => {
  const edit = useEdit();
  return (
    <label className="waters-choice">
      {words.otherShips}{' '}
      <select
        value={here}
        onChange={({ currentTarget: { value } }) => {
          const chosen = waters.find((one) => one === value);
          if (chosen !== undefined) edit([{ edit: 'set-waters', params: { waters: chosen } }]);
        }}
      >
        {waters.map((one) => (
          <option key={one} value={one}>
            {watersWords[one]}
          </option>
        ))}
      </select>
    </label>
  );
};

/** Each bus with a bar for every sender, its messages and how long they wait; each 0183 line by sentence. */
export const TrafficBlock = ({ boat, plan, hand }: { boat: Boat; plan: Plan; hand: RowHand }): ReactNode => {
  const rows = useMemo(() => trafficRows(boat, plan), [boat, plan]);
  if (rows.buses.length === 0 && rows.lines.length === 0) return null;
  return (
    <section className="block traffic-block">
      <h2>{words.traffic}</h2>
      <WatersChoice here={rows.waters} />
      {rows.buses.map((bus) => (
        <Bus key={bus.bus} bus={bus} hand={hand} />
      ))}
      {rows.buses.length === 0 ? null : <p className="quiet">{waitCaution}</p>}
      {rows.lines.length === 0 ? null : (
        <div className="traffic-bus">
          <h3>{words.lines0183}</h3>
          <ul>
            {rows.lines.map((line) => (
              <Line key={line.talker} line={line} hand={hand} />
            ))}
          </ul>
        </div>
      )}
      <WordsHere
        texts={[...rows.buses.flatMap(({ fact, says }) => [fact, ...says]), waitCaution]}
        names={rows.lines.map(({ fact }) => fact)}
      />
    </section>
  );
};
