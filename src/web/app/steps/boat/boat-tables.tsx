import { type ReactNode, useMemo } from 'react';
import { placesTable } from '../../../../papers/tables/places-table.ts';
import { waysTable } from '../../../../papers/tables/ways-table.ts';
import { GridTables } from '../../grid/grid-tables.tsx';
import type { StepTableProps } from '../step.ts';

/** Places and ways, to type in. */
export const BoatTables = ({ boat, lights, onClose }: StepTableProps): ReactNode => {
  const tables = useMemo(() => [placesTable, waysTable(boat)], [boat]);
  return <GridTables tables={tables} boat={boat} lights={lights} onClose={onClose} />;
};
