import type { ReactNode } from 'react';
import type { LineCard } from '../../../papers/cards/line-card.ts';
import { CardFrame, type CardHand, CardPart } from './card-frame.tsx';
import { words } from './words.ts';

/** Everything there is to say of one cable: what the code on its label leads to. */
export const LineCardView = ({ card, hand }: { card: LineCard; hand: CardHand }): ReactNode => (
  <CardFrame title={card.title} hand={hand}>
    {card.facts.map(({ head, says }) => (
      <CardPart key={head} heading={head}>
        <p>{says}</p>
      </CardPart>
    ))}
    {card.labels.length === 0 ? null : (
      <CardPart heading={words.itsLabels}>
        <ul className="line-labels">
          {card.labels.map((where) => (
            <li key={where}>{where}</li>
          ))}
        </ul>
      </CardPart>
    )}
  </CardFrame>
);
