import { type ReactNode, useMemo } from 'react';
import { circuitsTable } from '../../../../papers/tables/circuits-table.ts';
import { banksTable, panelsTable } from '../../../../papers/tables/supply-tables.ts';
import { GridTables } from '../../grid/grid-tables.tsx';
import type { StepTableProps } from '../step.ts';

/** Circuits, panels and banks, to type in. */
export const SupplyTables = ({ boat, lights, onClose }: StepTableProps): ReactNode => {
  const tables = useMemo(() => [circuitsTable(boat), panelsTable(boat), banksTable(boat)], [boat]);
  return <GridTables tables={tables} boat={boat} lights={lights} onClose={onClose} />;
};
