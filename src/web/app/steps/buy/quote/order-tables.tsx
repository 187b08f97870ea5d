import { type ReactNode, useMemo } from 'react';
import { orderTable } from '../../../../../papers/tables/order-table.ts';
import { GridTables } from '../../../grid/grid-tables.tsx';
import type { StepTableProps } from '../../step.ts';

/** The order, to type in. */
export const OrderTables = ({ boat, plan, lights, onClose }: StepTableProps): ReactNode => {
  const tables = useMemo(() => [orderTable(boat, plan)], [boat, plan]);
  return <GridTables tables={tables} boat={boat} lights={lights} onClose={onClose} />;
};
