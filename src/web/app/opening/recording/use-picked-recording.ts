import { useEffect, useState } from 'react';
import type { Route } from '../../route.ts';

/** The recording that was picked or dropped, until it is put away or one goes to another boat. */
export const usePickedRecording = (route: Route) => {
  const [recording, setRecording] = useState<File | undefined>(undefined);
  const boat = route.page === 'boat' ? route.id : route.page;
  // biome-ignore lint/correctness/useExhaustiveDependencies: another boat puts it away
  useEffect(() => setRecording(undefined), [boat]);
  return { recording, takeRecording: setRecording };
};
