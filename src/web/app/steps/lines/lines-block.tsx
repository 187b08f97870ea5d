import { type ReactNode, useMemo } from 'react';
import type { Boat } from '../../../../core/boat/boat-schema.ts';
import { fillVerdict } from '../../../../core/facts/cable-work.ts';
import type { Plan } from '../../../../core/plan-shape.ts';
import { cardBoat } from '../../../../papers/cards/card-boat.ts';
import { mastRows } from '../../../../papers/lists/mast-rows.ts';
import { networkRows } from '../../../../papers/lists/network-rows.ts';
import { busRouteRows, type RouteRow, routeRows } from '../../../../papers/lists/route-rows.ts';
import { wayRows } from '../../../../papers/lists/way-rows.ts';
import { useEdit } from '../../edit-context.ts';
import { LitRows, type Row, type RowHand } from '../../margin/lit-rows.tsx';
import './lines-block.css';
import { RouteChoices } from '../../sheet/route-choices.tsx';
import { useWords } from '../../words/units.ts';
import { words } from './words.ts';

/** How full a way is, with the marks of the hard pull and of what goes in no more; the words beside it say the same. */
const FillGauge = ({ fillPct, isOver }: { fillPct: number; isOver: boolean }): ReactNode => (
  <svg
    className={isOver ? 'fill-gauge over' : 'fill-gauge'}
    viewBox="0 0 100 8"
    preserveAspectRatio="none"
    aria-hidden="true"
  >
    <rect className="fill-bore" x="0" y="1" width="100" height="6" />
    <rect className="fill-in" x="0" y="1" width={Math.min(100, fillPct)} height="6" />
    {[fillVerdict.doubtAbovePct, fillVerdict.refuseAbovePct].map((markPct) => (
      <line key={markPct} className="fill-mark" x1={markPct} x2={markPct} y1="0" y2="8" />
    ))}
  </svg>
);

const Acts = ({ boat, plan, row: { key, acts } }: { boat: Boat; plan: Plan; row: RouteRow }): ReactNode => {
  const edit = useEdit();
  const say = useWords();
  const line = plan.lines.find(({ id }) => id === key);
  return (
    <div className="route-acts">
      {acts.map(({ says, title, edits }) => (
        <button key={says} type="button" className="press-link" onClick={() => edit(edits, title)}>
          {say(says)}
        </button>
      ))}
      {line === undefined ? null : <RouteChoices boat={boat} plan={plan} line={line} />}
    </div>
  );
};

/** The networks with their switches, the masts, and how full every pipe is. */
export const LinesBlock = ({ boat, plan, hand }: { boat: Boat; plan: Plan; hand: RowHand }): ReactNode => {
  const names = useMemo(
    () => ({
      kit: new Map(boat.kit.map((unit) => [unit.id, unit])),
      places: new Map(boat.places.map((place) => [place.id, place])),
    }),
    [boat],
  );
  const networks = useMemo(() => networkRows(names, plan), [names, plan]);
  const ways = useMemo(() => wayRows(boat, plan), [boat, plan]);
  const index = useMemo(() => cardBoat(boat), [boat]);
  const routes = useMemo(() => routeRows(index, plan), [index, plan]);
  const busRoutes = useMemo(() => busRouteRows(index, plan), [index, plan]);
  const withActs = (rows: readonly RouteRow[]): Row[] =>
    rows.map((row) => ({
      key: row.key,
      what: row.what,
      fact: row.fact,
      lights: row.lights,
      control: <Acts boat={boat} plan={plan} row={row} />,
    }));
  const masts = useMemo(() => mastRows(names.places, plan), [names, plan]);
  return (
    <>
      {networks.length === 0 ? null : <LitRows heading={words.network} rows={networks} empty="" hand={hand} />}
      {masts.length === 0 ? null : <LitRows heading={words.inMast} rows={masts} empty="" hand={hand} />}
      {routes.length === 0 ? null : (
        <LitRows heading={words.otherRoutes} rows={withActs(routes)} empty="" hand={hand} />
      )}
      {busRoutes.length === 0 ? null : (
        <LitRows heading={words.busRoutes} rows={withActs(busRoutes)} empty="" hand={hand} />
      )}
      {ways.length === 0 ? null : (
        <LitRows
          heading={words.howFull}
          rows={ways.map(({ fillPct, isOver, ...row }) => ({
            ...row,
            control: <FillGauge fillPct={fillPct} isOver={isOver} />,
          }))}
          empty=""
          hand={hand}
        />
      )}
    </>
  );
};
