import type { ReactNode } from 'react';
import type { Boat } from '../../../../core/boat/boat-schema.ts';
import type { Plan } from '../../../../core/plan-shape.ts';
import { oneLine } from '../../../../papers/power/one-line.ts';
import { DrawingView } from '../../../drawing/drawing-view.tsx';
import type { LightStore } from '../../../drawing/light-store.ts';
import { useIsPrinting } from '../../use-is-printing.ts';
import { unitsChoice } from '../../words/units.ts';
import { AllTables } from './power-tables.tsx';
import './power-pages.css';

/** What an A4 sheet lying on its side leaves for a page of the drawing. */
const pageSize = { widthMm: 277, heightMm: 174 };

const nothing = (): void => undefined;

/** The power drawing in pages and the tables in full, made only for paper. */
export const PowerPages = ({ boat, plan, lights }: { boat: Boat; plan: Plan; lights: LightStore }): ReactNode => {
  const chosen = unitsChoice.use();
  const units = chosen === 'both' ? undefined : chosen;
  const isPrinting = useIsPrinting();
  if (!isPrinting) return null;
  return (
    <div className="power-pages">
      {oneLine({ boat, plan, ...pageSize, units }).map((page) => (
        <svg
          key={page.title}
          className="power-page"
          viewBox={`0 0 ${page.widthMm} ${page.heightMm}`}
          role="img"
          aria-label={page.title}
        >
          <DrawingView drawing={page} lights={lights} onPick={nothing} />
        </svg>
      ))}
      <AllTables boat={boat} plan={plan} lights={lights} />
    </div>
  );
};
