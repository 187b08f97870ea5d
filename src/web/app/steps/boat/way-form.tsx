import type { ReactNode } from 'react';
import type { Boat, Way } from '../../../../core/boat/boat-schema.ts';
import type { EditCall } from '../../../../core/boat/history.ts';
import { straightLineM } from '../../../../core/boat/straight-line.ts';
import { inchM } from '../../../../core/units/foot.ts';
import { parseBore } from '../../../../core/units/parse-bore.ts';
import { useEdit } from '../../edit-context.ts';
import { parseAmount, wrongNumber } from '../../forms/parse-typed.ts';
import { ChosenField, TickedField, TypedField } from '../../forms/typed-field.tsx';
import { parseTyped, shownLength } from '../../forms/typed-length.ts';
import { unitsChoice, useWords } from '../../words/units.ts';
import { CablesInWay } from './cables-in-way.tsx';
import { words } from './words.ts';

type WayChange = Omit<Extract<EditCall, { edit: 'change-way' }>['params'], 'way'>;
type Change = (to: WayChange) => void;

/** A field that may be left unsaid: chosen it is said, else forgotten. */
const sayOrForget =
  <Field extends 'through' | 'exposure'>(change: Change, field: Field) =>
  (value: Way[Field] | undefined): void =>
    change(value === undefined ? { forget: [field] } : { [field]: value });

const LengthFields = ({ boat, way }: { boat: Boat; way: Way }): ReactNode => {
  const edit = useEdit();
  const units = unitsChoice.use();
  const say = useWords();
  const { valueM, how } = way.length;
  const [one, other] = way.ends.map((end) => boat.places.find(({ id }) => id === end));
  return (
    <>
      <TypedField
        label={words.length}
        name="length"
        shown={shownLength(valueM, units)}
        wrong={words.wrongLength}
        parse={parseTyped}
        // whoever types a length has taped it, until they say otherwise
        onPut={(typedM) =>
          edit([{ edit: 'tape-length', params: { way: way.id, length: { valueM: typedM, how: 'taped' } } }])
        }
      />
      <ChosenField
        label={words.how}
        value={how}
        options={words.hows}
        onChoose={(chosen) =>
          chosen !== undefined &&
          edit([{ edit: 'tape-length', params: { way: way.id, length: { valueM, how: chosen } } }])
        }
      />
      {one === undefined || other === undefined ? null : (
        <p className="quiet">{say(words.straightIs(straightLineM(one, other)))}</p>
      )}
    </>
  );
};

const BoreFields = ({ way, change }: { way: Way; change: Change }): ReactNode => {
  const inInches = unitsChoice.use() === 'feet';
  const shownBore = (mm: number): string => (inInches ? `${(mm / 1000 / inchM).toFixed(2)} in` : `${mm} mm`);
  return (
    <>
      <TypedField
        label={words.bore}
        name="bore"
        shown={way.bore === undefined ? '' : shownBore(way.bore.mm)}
        wrong={words.wrongBore}
        parse={(text) => (text.trim() === '' ? 0 : parseBore(text))}
        onPut={(mm) => change(mm === 0 ? { forget: ['bore'] } : { bore: { mm, how: way.bore?.how ?? 'taped' } })}
      />
      {way.bore === undefined ? null : (
        <ChosenField
          label={words.boreHow}
          value={way.bore.how}
          options={words.hows}
          onChoose={(how) => how !== undefined && way.bore !== undefined && change({ bore: { mm: way.bore.mm, how } })}
        />
      )}
    </>
  );
};

const nearIds = Object.keys(words.nears);

const NearFields = ({ way, change }: { way: Way; change: Change }): ReactNode => {
  const near = way.near ?? [];
  const all = [...new Set([...nearIds, ...near])];
  const wordOf = (id: string): string => new Map(Object.entries(words.nears)).get(id) ?? id;
  const set = (id: string, isNear: boolean): void => {
    const next = isNear ? [...near, id] : near.filter((one) => one !== id);
    change(next.length === 0 ? { forget: ['near'] } : { near: next });
  };
  return (
    <fieldset className="boat-ticks">
      <legend>{words.near}</legend>
      {all.map((id) => (
        <TickedField key={id} label={wordOf(id)} isTicked={near.includes(id)} onTick={(isNear) => set(id, isNear)} />
      ))}
    </fieldset>
  );
};

/** Which lines a way takes: all of them until one is said no to. */
const AllowFields = ({ way, change }: { way: Way; change: Change }): ReactNode => {
  // reason: the keys of the words are the kinds of line, as the schema has them
  const kinds = Object.keys(words.lineKinds) as (keyof typeof words.lineKinds)[];
  const allowed = way.allows ?? kinds;
  const set = (kind: (typeof kinds)[number], isAllowed: boolean): void => {
    const next = isAllowed ? [...allowed, kind] : allowed.filter((one) => one !== kind);
    change(next.length === kinds.length ? { forget: ['allows'] } : { allows: next });
  };
  return (
    <details className="boat-ticks">
      <summary>{words.allows}</summary>
      {kinds.map((kind) => (
        <TickedField
          key={kind}
          label={words.lineKinds[kind]}
          isTicked={allowed.includes(kind)}
          onTick={(isAllowed) => set(kind, isAllowed)}
        />
      ))}
    </details>
  );
};

/** What is known of one way, to be changed. */
export const WayForm = ({ boat, way, name }: { boat: Boat; way: Way; name: string }): ReactNode => {
  const edit = useEdit();
  const change: Change = (to) => edit([{ edit: 'change-way', params: { way: way.id, ...to } }]);
  return (
    <section className="boat-form" data-form={way.id} aria-label={words.way(name)}>
      <h3>{words.way(name)}</h3>
      <LengthFields boat={boat} way={way} />
      <ChosenField
        label={words.kind}
        value={way.kind}
        options={words.kinds}
        onChoose={(kind) => kind !== undefined && change({ kind })}
      />
      <ChosenField
        label={words.known}
        value={way.known}
        options={words.knowns}
        onChoose={(known) => known !== undefined && change({ known })}
      />
      <BoreFields way={way} change={change} />
      <ChosenField
        label={words.through}
        value={way.through}
        options={words.throughs}
        none={words.notSaid}
        onChoose={sayOrForget(change, 'through')}
      />
      <ChosenField
        label={words.wayExposure}
        value={way.exposure}
        options={words.exposures}
        none={words.notSaid}
        onChoose={sayOrForget(change, 'exposure')}
      />
      <TypedField
        label={words.hours}
        name="hours"
        shown={way.hours === undefined ? '' : String(way.hours)}
        wrong={wrongNumber}
        parse={(text) => (text.trim() === '' ? -1 : parseAmount(text))}
        onPut={(hours) => change(hours < 0 ? { forget: ['hours'] } : { hours })}
      />
      <NearFields way={way} change={change} />
      <AllowFields way={way} change={change} />
      <CablesInWay boat={boat} way={way} />
    </section>
  );
};
