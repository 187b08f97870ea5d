import { type ReactNode, useMemo } from 'react';
import type { Way } from '../../../../core/boat/boat-schema.ts';
import { printLength } from '../../../../core/units/print-length.ts';
import { currencyOf } from '../../../../papers/lists/cure-words.ts';
import { printMoney } from '../../../../papers/lists/order-words.ts';
import { LitRows, type Row } from '../../margin/lit-rows.tsx';
import type { StepMarginProps } from '../step.ts';
import { StepPart } from '../step-parts.tsx';
import { FromPhonesBlock } from './from-phones/from-phones-block.tsx';
import { TapeField } from './tape-field.tsx';
import { WalkRoundBlock } from './walk-round/walk-round-block.tsx';
import { byStake, stakesOf } from './ways-by-stake.ts';
import { words } from './words.ts';

const lengthWords = ({ length }: Way): string =>
  `${words.byHow[length.how]}${printLength({ valueM: length.valueM, as: 'metres' })}`;

/** What is still to tape or to look at, and the lengths that are known. */
export const BoatBlock = ({ boat, plan, hand }: Pick<StepMarginProps, 'boat' | 'plan' | 'hand'>): ReactNode => {
  const names = new Map(boat.places.map((place) => [place.id, place.name]));
  const nameOf = (way: Way): string => way.ends.map((end) => names.get(end) ?? end).join(words.fromTo);
  const rowOf = (way: Way, fact: string): Row => ({
    key: way.id,
    what: nameOf(way),
    fact,
    lights: [way.id, ...way.ends],
  });
  const lengthRowOf = (way: Way): Row => ({
    ...rowOf(way, withStake(way, lengthWords(way))),
    control: <TapeField way={way} name={nameOf(way)} />,
  });
  const stakes = useMemo(() => stakesOf(plan), [plan]);
  const guessed = byStake(
    boat.ways.filter((way) => way.length.how === 'guessed'),
    stakes,
  );
  const known = boat.ways.filter((way) => way.length.how !== 'guessed');
  const assumed = byStake(
    boat.ways.filter((way) => way.known === 'assumed'),
    stakes,
  );
  const withStake = (way: Way, fact: string): string => {
    const atStake = stakes.get(way.id) ?? 0;
    return atStake === 0 ? fact : words.hangsOnIt(fact, `${printMoney(atStake)} ${currencyOf(boat)}`);
  };
  return (
    <>
      <FromPhonesBlock boat={boat} />
      <StepPart id="boat-tape">
        <LitRows heading={words.toTape} rows={guessed.map(lengthRowOf)} empty={words.allTaped} hand={hand} />
      </StepPart>
      <StepPart id="boat-ways">
        <LitRows
          heading={words.unseenWays}
          rows={assumed.map((way) => rowOf(way, withStake(way, words.kinds[way.kind])))}
          empty={words.allSeen}
          hand={hand}
        />
      </StepPart>
      <details className="block known-lengths">
        <summary>{words.knownLengths(known.length)}</summary>
        <LitRows heading={words.tapedOrPapers} rows={known.map(lengthRowOf)} empty={words.noneYet} hand={hand} />
      </details>
      <StepPart id="boat-walk">
        <WalkRoundBlock boat={boat} />
      </StepPart>
    </>
  );
};
