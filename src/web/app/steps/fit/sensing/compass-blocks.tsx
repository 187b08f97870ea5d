import { type ReactNode, useMemo } from 'react';
import { indexBoat } from '../../../../../core/boat/boat-index.ts';
import { cardBoat } from '../../../../../papers/cards/card-boat.ts';
import { headingPlaceRows, headingRows } from '../../../../../papers/heading/heading-rows.ts';
import { compassRows } from '../../../../../papers/lists/compass-rows.ts';
import { LitRows } from '../../../margin/lit-rows.tsx';
import type { StepMarginProps } from '../../step.ts';
import { HeadingMap } from './heading-map.tsx';
import './sensing.css';
import { SiteForm } from './site-form.tsx';
import { words } from './words.ts';

/** As many of the places are told of, the best; the binder has them all. */
const bestPlaces = 5;

const HeadingBlock = ({ boat, plan, hand }: StepMarginProps): ReactNode => {
  const names = useMemo(() => cardBoat(boat), [boat]);
  const rows = useMemo(() => headingRows(names, plan), [names, plan]);
  return (
    <LitRows
      heading={words.headings}
      rows={rows.map((row) => ({ ...row, control: <SiteForm boat={boat} unit={row.key} of="heading" /> }))}
      empty={words.noHeading}
      hand={hand}
    />
  );
};

const WhereBlock = ({ boat, plan, hand }: StepMarginProps): ReactNode => {
  const unit = plan.sites.find(({ heading }) => heading?.magnetic === true)?.unit;
  const rows = useMemo(
    () =>
      headingPlaceRows(
        cardBoat(boat),
        { index: indexBoat(boat), lines: plan.lines, feeds: plan.feeds },
        { most: bestPlaces, ...(unit === undefined ? {} : { except: unit }) },
      ),
    [boat, plan, unit],
  );
  return (
    <>
      <LitRows heading={words.where} rows={rows} empty={words.noPlace} hand={hand} />
      <div className="block">
        <p>{words.whereSays}</p>
        <HeadingMap boat={boat} plan={plan} hand={hand} unit={unit} />
      </div>
    </>
  );
};

const CompassBlock = ({ boat, plan, hand }: StepMarginProps): ReactNode => {
  const rows = useMemo(() => compassRows(cardBoat(boat), plan), [boat, plan]);
  const compasses = new Set(plan.compass.map(({ compass }) => compass));
  return (
    <LitRows
      heading={words.compasses}
      rows={rows.map((row) =>
        compasses.has(row.key) ? { ...row, control: <SiteForm boat={boat} unit={row.key} of="compass" /> } : row,
      )}
      empty={words.noCompass}
      hand={hand}
    />
  );
};

/** Heading sensors and where one may go, then what turns the compasses. */
export const CompassBlocks = (given: StepMarginProps): ReactNode => (
  <>
    <HeadingBlock {...given} />
    <WhereBlock {...given} />
    <CompassBlock {...given} />
  </>
);
