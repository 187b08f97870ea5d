import type { ReactNode } from 'react';
import type { Boat } from '../../../../../core/boat/boat-schema.ts';
import type { Plan } from '../../../../../core/plan-shape.ts';
import type { LightStore } from '../../../../drawing/light-store.ts';
import '../../power/power-pages.css';
import { useIsPrinting } from '../../../use-is-printing.ts';
import { AllSourceTables } from './source-tables.tsx';

/** The tables of settings and pairs in full, a box to tick before each line, made only for paper. */
export const SourcePages = (given: { boat: Boat; plan: Plan; lights: LightStore }): ReactNode => {
  const isPrinting = useIsPrinting();
  return isPrinting ? (
    <div className="power-pages">
      <AllSourceTables {...given} />
    </div>
  ) : null;
};
