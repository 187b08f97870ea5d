import type { ReactNode } from 'react';
import type { Boat } from '../../../../core/boat/boat-schema.ts';
import type { BusEntry, Plan } from '../../../../core/plan-shape.ts';
import { type BackboneFigure, backboneFigures } from '../../../../papers/lists/backbone-figures.ts';
import { usePart } from '../../use-part.ts';
import { Explained, useExplainedNames, Word } from '../../words/explained.tsx';
import { words } from './words.ts';

const Figures = ({ figures }: { figures: readonly BackboneFigure[] }): ReactNode => {
  const names = useExplainedNames(figures.map(({ name }) => name));
  return (
    <dl className="figures">
      {figures.map((figure, at) => (
        <div key={figure.name} className={figure.over ? 'over' : undefined}>
          <dt>{names[at]}</dt>
          <dd>
            <Explained text={figure.value} />
            {figure.over ? <span className="unseen">{words.pastLimit}</span> : null}
          </dd>
        </div>
      ))}
    </dl>
  );
};

const Sources = ({ figures }: { figures: readonly BackboneFigure[] }): ReactNode => (
  <details className="sources">
    <summary>{words.whereLimits}</summary>
    <dl>
      {figures.map((figure) =>
        figure.source === undefined ? null : (
          <div key={figure.name}>
            <dt>{figure.name}</dt>
            <dd>{figure.source}</dd>
          </div>
        ),
      )}
    </dl>
  </details>
);

// brought once the page stands: no part of the way to the first picture
const bringChoices = () => import('./backbone-choices.tsx');

const BusFigures = ({ boat, bus, heading }: { boat: Boat; bus: BusEntry; heading: string }): ReactNode => {
  const choices = usePart(bringChoices);
  const name = boat.buses.find(({ id }) => id === bus.id)?.name ?? bus.id;
  const figures = backboneFigures({ boat, bus });
  return (
    <section className="block">
      <h2>
        <Word of={heading.toLowerCase()}>{heading}</Word>
      </h2>
      <Figures figures={figures} />
      {choices === undefined ? null : <choices.BackboneChoices boat={boat} bus={bus} name={name} />}
      <Sources figures={figures} />
    </section>
  );
};

/** Each backbone's figures beside their limits. */
export const BackboneBlock = ({ boat, plan }: { boat: Boat; plan: Plan }): ReactNode => {
  const names = new Map(boat.buses.map((bus) => [bus.id, bus.name]));
  return plan.buses.map((bus) => (
    <BusFigures
      key={bus.id}
      boat={boat}
      bus={bus}
      heading={plan.buses.length === 1 ? words.backbone : (names.get(bus.id) ?? bus.id)}
    />
  ));
};
