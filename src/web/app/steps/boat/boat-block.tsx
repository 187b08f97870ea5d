import type { ReactNode } from 'react';
import type { Way } from '../../../../core/boat/boat-schema.ts';
import { printLength } from '../../../../core/units/print-length.ts';
import { LitRows, type Row } from '../../margin/lit-rows.tsx';
import type { StepMarginProps } from '../step.ts';
import { TapeField } from './tape-field.tsx';
import { WalkRoundBlock } from './walk-round/walk-round-block.tsx';

const howWords = { guessed: 'about ', taped: '', papers: 'by papers ' } as const;

const lengthWords = ({ length }: Way): string =>
  `${howWords[length.how]}${printLength({ valueM: length.valueM, as: 'metres' })}`;

/** What is still to tape or to look at, and the lengths that are known. */
export const BoatBlock = ({ boat, hand }: Pick<StepMarginProps, 'boat' | 'hand'>): ReactNode => {
  const names = new Map(boat.places.map((place) => [place.id, place.name]));
  const nameOf = (way: Way): string => way.ends.map((end) => names.get(end) ?? end).join(' to ');
  const rowOf = (way: Way, fact: string): Row => ({
    key: way.id,
    what: nameOf(way),
    fact,
    lights: [way.id, ...way.ends],
  });
  const lengthRowOf = (way: Way): Row => ({
    ...rowOf(way, lengthWords(way)),
    control: <TapeField way={way} name={nameOf(way)} />,
  });
  const guessed = boat.ways.filter((way) => way.length.how === 'guessed');
  const known = boat.ways.filter((way) => way.length.how !== 'guessed');
  const assumed = boat.ways.filter((way) => way.known === 'assumed');
  return (
    <>
      <LitRows
        heading="Lengths to tape"
        rows={guessed.map(lengthRowOf)}
        empty="Every length was taped or comes from papers."
        hand={hand}
      />
      <LitRows
        heading="Ways nobody has looked at"
        rows={assumed.map((way) => rowOf(way, way.kind))}
        empty="Every way was seen or had a line pulled through."
        hand={hand}
      />
      <details className="block known-lengths">
        <summary>Lengths that are known ({known.length})</summary>
        <LitRows heading="Taped, or from papers" rows={known.map(lengthRowOf)} empty="None yet." hand={hand} />
      </details>
      <WalkRoundBlock boat={boat} />
    </>
  );
};
