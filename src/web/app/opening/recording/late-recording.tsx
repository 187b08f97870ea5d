import type { ReactNode } from 'react';
import { usePart } from '../../use-part.ts';
import type { RecordingView } from './recording-view.tsx';

const bringView = () => import('./recording-view.tsx');

/** A recording over the boat that is open, or in place of the list of boats. */
export const LateRecording = (given: Parameters<typeof RecordingView>[0]): ReactNode => {
  const part = usePart(bringView);
  if (part === undefined) return null;
  const view = <part.RecordingView {...given} />;
  return given.boat === undefined ? (
    <main className="boats-page">{view}</main>
  ) : (
    <aside className="over-boat">{view}</aside>
  );
};
