import { type ReactNode, useMemo } from 'react';
import type { Boat } from '../../../../core/boat/boat-schema.ts';
import type { Plan } from '../../../../core/plan-shape.ts';
import { cardBoat } from '../../../../papers/cards/card-boat.ts';
import { bankRows } from '../../../../papers/lists/bank-rows.ts';
import { feedRows } from '../../../../papers/lists/feed-rows.ts';
import { loadRows } from '../../../../papers/lists/load-rows.ts';
import { panelRows } from '../../../../papers/lists/panel-rows.ts';
import { bankCautions, wiringCautions } from '../../../../papers/power/caution-words.ts';
import { whatIsMissing } from '../../../../papers/power/what-is-missing.ts';
import { LitRows, type RowHand } from '../../margin/lit-rows.tsx';
import { useWords } from '../../words/units.ts';
import { StepPart } from '../step-parts.tsx';
import { CautionList } from './caution-list.tsx';
import './power-block.css';
import { words } from './words.ts';

/** Why a feed has its wire and its fuse, a sentence each, opened when somebody asks. */
const Why = ({ name, why }: { name: string; why: readonly string[] }): ReactNode => {
  const say = useWords();
  return (
    <details className="why">
      <summary>
        {words.whySize}
        <span className="unseen">{words.ofWhat(name)}</span>
      </summary>
      <ul>
        {why.map((sentence) => (
          <li key={sentence}>{say(sentence)}</li>
        ))}
      </ul>
    </details>
  );
};

/** The power of the boat under the notes: what is missing, banks, panels, feeds with why they are so, and what everything draws. */
export const PowerBlock = ({ boat, plan, hand }: { boat: Boat; plan: Plan; hand: RowHand }): ReactNode => {
  const index = useMemo(() => cardBoat(boat), [boat]);
  const { fed, unfed } = useMemo(() => feedRows(index, plan), [index, plan]);
  const banks = useMemo(() => bankRows(index, plan), [index, plan]);
  const loads = useMemo(() => loadRows(index, plan), [index, plan]);
  const panels = useMemo(() => panelRows(index, plan), [index, plan]);
  const say = useWords();
  const missing = whatIsMissing(boat);
  return (
    <>
      {missing === undefined ? null : <p className="block next-thing">{missing}</p>}
      {banks.length === 0 ? null : (
        <>
          <LitRows heading={words.banks} rows={banks} empty="" hand={hand} />
          <CautionList cautions={bankCautions(plan)} where="bank" />
        </>
      )}
      {panels.map(({ key, what, facts, circuits }) => (
        <details key={key} className="block folded on-screen">
          <summary>{words.panelFold(what, circuits.length)}</summary>
          {facts.map((fact) => (
            <p key={fact} className="quiet">
              {say(fact)}
            </p>
          ))}
          <LitRows
            heading={words.circuitsOf(what)}
            rows={circuits.map(({ circuit, name, ...row }) => ({
              ...row,
              what: name === undefined ? circuit : `${circuit}, ${name}`,
            }))}
            empty={words.noCircuit}
            hand={hand}
          />
        </details>
      ))}
      <StepPart id="power-feeds">
        <LitRows
          heading={words.notFed}
          rows={unfed}
          empty={boat.kit.length === 0 ? words.nothingAboard : words.allFed}
          hand={hand}
        />
      </StepPart>
      <div className="on-screen">
        <LitRows
          heading={words.feeds}
          rows={fed.map(({ isOpen, why, ...row }) => ({
            ...row,
            fact: isOpen && row.feed !== undefined ? words.factToLookAt(row.fact) : row.fact,
            control: why.length === 0 ? null : <Why name={row.what} why={why} />,
          }))}
          empty={words.noFeed}
          hand={hand}
        />
        {fed.length === 0 ? null : <CautionList cautions={wiringCautions()} where="wiring" />}
      </div>
      {loads.length === 0 ? null : (
        <details className="block folded on-screen">
          <summary>{words.whatAllDraws(loads.length)}</summary>
          <LitRows
            heading={words.beforeAndAfter}
            rows={loads.map(({ isShort, ...row }) => ({
              ...row,
              fact: isShort ? words.tooFewFor(row.fact, row.needs) : row.fact,
            }))}
            empty=""
            hand={hand}
          />
        </details>
      )}
    </>
  );
};
