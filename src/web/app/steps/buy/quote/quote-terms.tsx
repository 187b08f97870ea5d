import type { ReactNode } from 'react';
import type { Boat } from '../../../../../core/boat/boat-schema.ts';
import type { QuoteTerms } from '../../../../../core/boat/quote.ts';
import type { Quote } from '../../../../../core/quote/quote-shape.ts';
import { printMoney } from '../../../../../papers/lists/order-words.ts';
import { useEdit } from '../../../edit-context.ts';
import { NumberField } from './number-field.tsx';
import { words } from './words.ts';

/** The terms with some of them put in or, where nothing is said of them, left out. */
export const withTerms = (
  quote: QuoteTerms | undefined,
  change: { [Key in keyof QuoteTerms]: QuoteTerms[Key] | undefined },
): QuoteTerms => Object.fromEntries(Object.entries({ ...quote, ...change }).filter(([, value]) => value !== undefined));

interface ChoiceProps<Value extends string> {
  readonly label: string;
  readonly value: Value;
  readonly says: Readonly<Record<Value, string>>;
  readonly order: readonly Value[];
  readonly onChoose: (value: Value) => void;
}

const Choice = <Value extends string>({ label, value, says, order, onChoose }: ChoiceProps<Value>): ReactNode => (
  <label className="quote-field">
    {label}{' '}
    <select
      value={value}
      onChange={(event) => {
        const chosen = order.find((own) => own === event.currentTarget.value);
        if (chosen !== undefined) onChoose(chosen);
      }}
    >
      {order.map((own) => (
        <option key={own} value={own}>
          {says[own]}
        </option>
      ))}
    </select>
  </label>
);

const professions = ['professional', 'owner'] as const;
const masts = ['up', 'down'] as const;

/** What the quote is reckoned at: the hour, what is put on top, who does the work, how the mast stands. */
export const QuoteTermsFields = ({ boat, quote }: { boat: Boat; quote: Quote }): ReactNode => {
  const edit = useEdit();
  const set = (change: Parameters<typeof withTerms>[1], says: string): void =>
    edit([{ edit: 'set-quote', params: withTerms(boat.quote, change) }], says);
  const { contingencyPct, currency, by, rate } = quote;
  return (
    <div className="quote-terms">
      <Choice
        label={words.by}
        value={by}
        says={words.byWhom}
        order={professions}
        onChoose={(who) => set({ by: who }, words.byWhomSet(words.byWhom[who]))}
      />
      {by === 'owner' ? null : (
        <NumberField
          label={words.rate}
          shown={printMoney(rate)}
          unit={words.perHour(currency)}
          least={0}
          most={10_000}
          onPut={(value) =>
            value === undefined
              ? undefined
              : edit([{ edit: 'set-price', params: { of: 'hour', each: Math.round(value * 100) } }])
          }
        />
      )}
      <NumberField
        label={words.contingency}
        shown={contingencyPct.isSet ? String(contingencyPct.least) : ''}
        usual={words.usual}
        unit={words.percent}
        least={0}
        most={200}
        onPut={(value) =>
          set(
            { contingencyPct: value },
            value === undefined ? words.contingencyUsual : words.contingencySet(String(value)),
          )
        }
      />
      <Choice
        label={words.mast}
        value={boat.quote?.mast ?? 'up'}
        says={words.mastIs}
        order={masts}
        onChoose={(mast) => set({ mast }, words.mastSet(words.mastIs[mast]))}
      />
    </div>
  );
};
