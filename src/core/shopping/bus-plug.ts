import type { GradeId } from '../boat/boat-schema.ts';
import { cableGrades } from '../facts/cable-grades.ts';

/** The family of plugs on a grade of bus cable. */
export const busPlugOf = (grade: GradeId): 'micro' | 'mini' =>
  cableGrades[grade].plug.includes('mini') ? 'mini' : 'micro';

/** The connectors of the bus itself. */
export const ofTheBus: ReadonlySet<string> = new Set(['n2k-micro', 'n2k-mini']);
