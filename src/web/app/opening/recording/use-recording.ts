import { useCallback, useEffect, useState } from 'react';
import type { Heard } from '../../../../core/proof/survey/heard.ts';
import type { Refusal } from '../../../workers/protocol.ts';
import type { StartingReply } from '../../../workers/starting-protocol.ts';
import { useStarting } from '../new-boat/use-starting.ts';
import { words } from './words.ts';

/** How far a recording has come: being read, heard, or turned away. */
export type Reading =
  | { readonly state: 'reading'; readonly readBytes: number }
  | { readonly state: 'heard'; readonly heard: Heard }
  | { readonly state: 'refused'; readonly refusal: Refusal };

const begun: Reading = { state: 'reading', readBytes: 0 };

const after = (was: Reading, reply: StartingReply): Reading => {
  if (reply.kind === 'progress') return { state: 'reading', readBytes: reply.readBytes };
  if (reply.kind === 'heard') return { state: 'heard', heard: reply.heard };
  if (was.state !== 'reading') return was;
  if (reply.kind === 'refused') return { state: 'refused', refusal: reply.refusal };
  if (reply.kind === 'fault')
    return { state: 'refused', refusal: { says: words.broke, whatToDo: words.tryAgain, more: [reply.detail] } };
  return was;
};

/** Reads a recording in a worker of its own, which keeps it for what is asked next; `onReply` hears what is answered to that. */
export const useRecording = (recording: Blob, onReply: (reply: StartingReply) => void) => {
  const [reading, setReading] = useState<Reading>(begun);
  const take = useCallback(
    (reply: StartingReply): void => {
      setReading((was) => after(was, reply));
      if (reply.kind !== 'progress' && reply.kind !== 'heard') onReply(reply);
    },
    [onReply],
  );
  const { ask } = useStarting(take);
  useEffect(() => {
    setReading(begun);
    ask({ kind: 'read', recording });
  }, [recording, ask]);
  return { reading, ask };
};
