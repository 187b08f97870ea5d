import type { Join } from '../boat/boat-schema.ts';

/** Whether a join was proposed and does not stand in the file: a join of a file cannot be named with a colon. */
export const isProposed = ({ id }: Pick<Join, 'id'>): boolean => id.includes(':');
