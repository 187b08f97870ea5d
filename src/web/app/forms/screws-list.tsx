import type { ReactNode } from 'react';
import type { Opening } from '../../../core/boat/opening.ts';
import type { FieldOf } from './described.tsx';
import { ListOfParts } from './list-of-parts.tsx';
import { words } from './words.ts';

type Screw = NonNullable<Opening['screws']>[number];

const fields: readonly FieldOf<Screw>[] = [
  { key: 'xMm', label: words.screwX, ask: 'number', must: true, least: -5000 },
  { key: 'yMm', label: words.screwY, ask: 'number', must: true, least: -5000 },
  { key: 'holeMm', label: words.screwHole, ask: 'number', must: true },
];

/** The screw holes round a hole in a panel, or round what a unit is cut in with: each from the middle. */
export const ScrewsList = ({
  heading,
  all,
  onAll,
}: {
  heading: string;
  all: readonly Screw[] | undefined;
  onAll: (all: Screw[] | undefined) => void;
}): ReactNode => (
  <ListOfParts
    heading={heading}
    add={words.addScrew}
    nameOf={words.screw}
    first={{ xMm: 0, yMm: 0, holeMm: 4 }}
    all={all}
    fields={fields}
    onAll={onAll}
  />
);
