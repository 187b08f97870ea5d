import type { ReactNode } from 'react';
import type { ReadingEntry } from '../../../core/plan-shape.ts';
import { CureList } from '../margin/cure-list.tsx';
import { useExplained } from '../words/explained.tsx';
import { words } from './words.ts';

/** Why a reading does not arrive, and the cures that were tried on the boat. */
export const WhyNotView = ({
  whyNot,
  currency,
}: {
  whyNot: NonNullable<ReadingEntry['whyNot']>;
  currency: string;
}): ReactNode => {
  const [says] = useExplained([whyNot.says]);
  return (
    <div className="why-not">
      <p>{says}</p>
      {whyNot.cures.length === 0 ? (
        <p className="quiet">{words.noCure}</p>
      ) : (
        <CureList cures={whyNot.cures} currency={currency} />
      )}
    </div>
  );
};
