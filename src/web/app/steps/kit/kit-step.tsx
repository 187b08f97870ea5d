import type { ReactNode } from 'react';
import type { Step, StepMarginProps } from '../step.ts';
import { AddUnit } from './add-unit.tsx';
import { KitBlock } from './kit-block.tsx';
import { KitOnSheet } from './kit-on-sheet.tsx';
import { KitTables } from './kit-tables.tsx';
import { SecurityBlock } from './security-block.tsx';
import { WireHer } from './wire-her.tsx';
import { words } from './words.ts';

const KitBegin = ({ boat, plan }: StepMarginProps): ReactNode => (
  <>
    <AddUnit boat={boat} />
    <WireHer boat={boat} plan={plan} />
  </>
);

const KitMargin = (given: StepMarginProps): ReactNode => (
  <>
    <KitBlock {...given} />
    <SecurityBlock {...given} />
  </>
);

/** The step Kit: what stays, goes and comes. */
export const kitStep: Step = {
  Begin: KitBegin,
  Margin: KitMargin,
  tables: [{ words: words.table, Table: KitTables }],
  OnSheet: KitOnSheet,
};
