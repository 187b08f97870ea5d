import type { ReactNode } from 'react';
import { currencyOf } from '../../../papers/lists/cure-words.ts';
import type { LightStore } from '../../drawing/light-store.ts';
import type { Note } from '../margin/notes.ts';
import type { UnitRow } from '../sheet/unit-rows.ts';
import type { CardChoice, CardContent, CardMaker } from './card-choice.ts';
import { LineCardView } from './line-card-view.tsx';
import { ReadingCardView } from './reading-card-view.tsx';
import { UnitCardView } from './unit-card-view.tsx';

/** The card that is open in the margin: of a unit, a cable or a reading. */
export const CardView = ({
  content,
  maker,
  rows,
  titles,
  lights,
  goBack,
  onGoOn,
  onClose,
  onNote,
}: {
  content: CardContent;
  maker: CardMaker;
  rows: readonly UnitRow[];
  titles: ReadonlyMap<string, string>;
  lights: LightStore;
  goBack: (() => void) | undefined;
  onGoOn: (choice: CardChoice) => void;
  onClose: () => void;
  onNote: (note: Note) => void;
}): ReactNode => {
  const hand = { onClose, onBack: goBack };
  if (content.kind === 'line') return <LineCardView key={content.key} card={content.card} hand={hand} />;
  if (content.kind === 'reading') {
    return (
      <ReadingCardView
        key={content.key}
        card={content.card}
        currency={currencyOf(maker.index.boat)}
        lights={lights}
        hand={hand}
        onGoOn={onGoOn}
      />
    );
  }
  const row = rows.find(({ id }) => id === content.card.id);
  return (
    <UnitCardView
      key={content.key}
      card={content.card}
      unit={maker.index.kit.get(content.card.id)}
      balloon={row?.balloon}
      notes={row?.notes ?? []}
      titles={titles}
      lights={lights}
      hand={hand}
      onGoOn={onGoOn}
      onNote={onNote}
    />
  );
};
