import { type ReactNode, useSyncExternalStore } from 'react';
import type { Boat, Way } from '../../../../core/boat/boat-schema.ts';
import { shortName } from '../../../../core/boat/short-name.ts';
import type { LightStore } from '../../../drawing/light-store.ts';
import { CommandButton } from '../../commands/command-button.tsx';
import type { StepMarginProps } from '../step.ts';
import { StepParts } from '../step-parts.tsx';
import './boat-above.css';
import { TickedField } from '../../forms/typed-field.tsx';
import { PlaceForm } from './place-form.tsx';
import { takeTool, useTool } from './place-hand.ts';
import { UnderlayBlock } from './underlay-block.tsx';
import { WayForm } from './way-form.tsx';
import { words } from './words.ts';

const shownTools = ['move', 'place', 'way', 'split'] as const;

const Tools = (): ReactNode => {
  const tool = useTool();
  return (
    <>
      <fieldset className="boat-tools">
        <legend className="unseen">{words.tools}</legend>
        {shownTools.map((one) => (
          <button key={one} type="button" aria-pressed={one === tool} onClick={() => takeTool(one)}>
            {words.tool[one]}
          </button>
        ))}
      </fieldset>
      <p className="quiet boat-help">{words.toolSays[tool]}</p>
    </>
  );
};

const wayName = ({ places }: Boat, { ends }: Way): string =>
  ends.map((end) => shortName(places.find(({ id }) => id === end)?.name ?? end)).join(' – ');

const Picked = ({ boat, picked }: { boat: Boat; picked: ReadonlySet<string> }): ReactNode => {
  const places = boat.places.filter(({ id }) => picked.has(id));
  const ways = boat.ways.filter(({ id }) => picked.has(id));
  const [place] = places;
  const [way] = ways;
  if (places.length > 1) {
    return (
      <section className="boat-form" aria-label={words.picked(places.length)}>
        <h3>{words.picked(places.length)}</h3>
        <p>{places.map(({ name }) => shortName(name)).join(', ')}</p>
        <p className="quiet">{words.pickedHelp}</p>
      </section>
    );
  }
  if (place !== undefined) return <PlaceForm key={place.id} place={place} />;
  if (way !== undefined) return <WayForm key={way.id} boat={boat} way={way} name={wayName(boat, way)} />;
  return <p className="quiet">{words.nothingPicked}</p>;
};

/** Every place and way with a tick: what is picked on the drawing, for those who do not point. */
const TickList = ({
  boat,
  lights,
  picked,
}: {
  boat: Boat;
  lights: LightStore;
  picked: ReadonlySet<string>;
}): ReactNode => {
  const tick = (id: string, isPicked: boolean): void =>
    lights.pick(isPicked ? [...picked, id] : [...picked].filter((one) => one !== id));
  const ticks = (things: readonly { readonly id: string; readonly name: string }[]): ReactNode =>
    things.map(({ id, name }) => (
      <TickedField key={id} label={name} isTicked={picked.has(id)} onTick={(isPicked) => tick(id, isPicked)} />
    ));
  return (
    <details className="boat-ticks boat-list">
      <summary>{words.list}</summary>
      <fieldset>
        <legend>{words.listPlaces(boat.places.length)}</legend>
        {ticks(boat.places.map(({ id, name }) => ({ id, name: shortName(name) })))}
      </fieldset>
      <fieldset>
        <legend>{words.listWays(boat.ways.length)}</legend>
        {ticks(boat.ways.map((way) => ({ id: way.id, name: wayName(boat, way) })))}
      </fieldset>
    </details>
  );
};

/** What can be done while nothing is picked. */
const alwaysCommands = ['add-place-amidships'] as const;

const pickedCommands = [
  'add-place-amidships',
  'join-picked-places',
  'split-picked-way',
  'one-way-of-two',
  'remove-picked',
  'let-go-of-picked',
] as const;

/** What one works with at the step Boat: what a press does, what is picked, and all there is to pick. */
export const BoatAbove = ({ boat, hand }: StepMarginProps): ReactNode => {
  const { lights } = hand;
  const picked = useSyncExternalStore(lights.subscribe, lights.picked);
  return (
    <section className="block boat-above">
      <StepParts label={words.partsAre} parts={words.parts} goToWords={words.goTo} />
      <Tools />
      <Picked boat={boat} picked={picked} />
      <div className="boat-actions">
        {(picked.size === 0 ? alwaysCommands : pickedCommands).map((id) => (
          <CommandButton key={id} id={id} className="edit-link" />
        ))}
      </div>
      <TickList boat={boat} lights={lights} picked={picked} />
      <UnderlayBlock boat={boat} />
    </section>
  );
};
