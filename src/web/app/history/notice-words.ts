import type { EditState } from '../../workers/protocol.ts';
import { words } from './words.ts';

/** What is said once of a boat that is opened again; undefined where there is nothing to say. */
export const noticeWords = ({ notice }: EditState): string | undefined => {
  if (notice === undefined) return undefined;
  if (notice.kind === 'kept-unread') return words.keptUnread;
  return notice.kind === 'taken-up' ? words.takenUp(notice.changes) : words.stepsGone;
};
