import { type ReactNode, useMemo } from 'react';
import { kitTable } from '../../../../papers/tables/kit-table.ts';
import { GridTables } from '../../grid/grid-tables.tsx';
import type { StepTableProps } from '../step.ts';

/** The kit, to type in. */
export const KitTables = ({ boat, lights, onClose }: StepTableProps): ReactNode => {
  const tables = useMemo(() => [kitTable(boat)], [boat]);
  return <GridTables tables={tables} boat={boat} lights={lights} onClose={onClose} />;
};
