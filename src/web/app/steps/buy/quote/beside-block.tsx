import { type ReactNode, useMemo, useState } from 'react';
import type { Boat } from '../../../../../core/boat/boat-schema.ts';
import type { SavedState } from '../../../../../core/boat-store-shape.ts';
import { useCommands } from '../../../commands/use-commands.ts';
import { routeOf } from '../../../route.ts';
import { whenWords } from '../../../saving/when-words.ts';
import { store } from '../../../store/the-store.ts';
import { QuoteLines } from './quote-lines.tsx';
import { type Beside, useBeside } from './use-beside.ts';
import { words } from './words.ts';

const idOfPage = (): string | undefined => {
  const route = routeOf(window.location.hash);
  return route.page === 'boat' ? route.id : undefined;
};

interface StatesOf {
  readonly id: string;
  readonly states: readonly SavedState[];
}

/** The earlier states of the boat that the folder keeps, looked for when somebody wants them. */
const useStates = (): { readonly known: StatesOf | undefined; readonly look: () => void } => {
  const [known, setKnown] = useState<StatesOf | undefined>(undefined);
  const look = (): void => {
    const id = idOfPage();
    if (id === undefined) return;
    void store.states(id).then((found) => setKnown({ id, states: 'states' in found ? found.states : [] }));
  };
  return { known, look };
};

/** The earlier states to choose from; each is read from the folder when it is chosen. */
const StateChoice = ({ id, states, onText }: StatesOf & { readonly onText: (text: string) => void }): ReactNode =>
  states.length === 0 ? (
    <p className="quiet">{words.noStates}</p>
  ) : (
    <label className="quote-field">
      {words.chooseState}{' '}
      <select
        value=""
        onChange={(event) => {
          void store.state(id, event.currentTarget.value).then((earlier) => {
            if ('text' in earlier) onText(earlier.text);
          });
        }}
      >
        <option value="" disabled={true} />
        {states.map((state) => (
          <option key={state.id} value={state.id}>
            {whenWords(state.untilMs, Date.now())}
          </option>
        ))}
      </select>
    </label>
  );

const Found = ({ found }: { found: Beside }): ReactNode => {
  const { change, options, of = 0, refused, state } = found;
  const isEmpty = change !== undefined && change.says.length + change.items.length + change.hours.length === 0;
  return (
    <div aria-live="polite">
      {state === 'running' ? <p className="quiet">{words.reckoning}</p> : null}
      {state === 'failed' ? <p role="alert">{words.reckoningFailed}</p> : null}
      {refused === undefined ? null : <p role="alert">{refused}</p>}
      {found.asks === 'options' && state === 'done' && of === 0 ? <p>{words.noOptions}</p> : null}
      {options.length === 0 ? null : <QuoteLines rows={options} />}
      {isEmpty ? <p>{words.nothingChanged}</p> : null}
      {change === undefined || isEmpty ? null : (
        <>
          <p className="quote-change">{words.comesTo(change.total)}</p>
          <ul>
            {change.says.map((one) => (
              <li key={one}>{one}</li>
            ))}
          </ul>
          <QuoteLines rows={[...change.items, ...change.hours, ...change.sums]} />
        </>
      )}
    </div>
  );
};

/** Other quotes beside this one: the ways to wire her, and what changed since an earlier state with its price. */
export const BesideBlock = ({ boat }: { boat: Boat }): ReactNode => {
  const { found, ask, stop } = useBeside(boat);
  const { known, look } = useStates();
  const compare = (): void => ask({ asks: 'options', boat, says: words.asPlanned });
  useCommands(
    // biome-ignore lint/correctness/useExhaustiveDependencies: what is asked hangs on the boat alone
    useMemo(
      () => [{ id: 'quote-each-way', group: 'boat', says: words.compare, foundBy: words.compareFoundBy, run: compare }],
      [boat],
    ),
  );
  return (
    <div className="quote-beside">
      <button type="button" className="quote-page" onClick={compare}>
        {words.compare}
      </button>
      {idOfPage() === undefined ? null : (
        <button type="button" className="quote-page" onClick={look}>
          {words.since}
        </button>
      )}
      {known === undefined ? null : (
        <StateChoice {...known} onText={(before) => ask({ asks: 'since', boat, before })} />
      )}
      {found === undefined ? null : (
        <>
          <Found found={found} />
          <button type="button" className="quote-page" onClick={stop}>
            {found.state === 'running' ? words.stop : words.putAway}
          </button>
        </>
      )}
    </div>
  );
};
