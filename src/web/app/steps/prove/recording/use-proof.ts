import { useCallback, useEffect, useRef, useState } from 'react';
import type { Boat } from '../../../../../core/boat/boat-schema.ts';
import type { Plan } from '../../../../../core/plan-shape.ts';
import type { ProofReport } from '../../../../../core/proof/compare/proof-report.ts';
import type { ProofReply, ProofRequest } from '../../../../workers/proof-protocol.ts';
import type { Refusal } from '../../../../workers/protocol.ts';
import { useEdit } from '../../../edit-context.ts';
import { keepProof } from '../../../log/last-proof.ts';
import { words } from './words.ts';

/** How far recordings have come. */
export type Proving =
  | { readonly state: 'none' }
  | { readonly state: 'reading'; readonly names: string; readonly readBytes: number; readonly allBytes: number }
  | { readonly state: 'proved'; readonly report: ProofReport; readonly tookNothing: boolean }
  | { readonly state: 'refused'; readonly refusal: Refusal };

const after = (was: Proving, reply: ProofReply): Proving => {
  switch (reply.kind) {
    case 'progress':
      return was.state === 'reading' ? { ...was, readBytes: reply.readBytes } : was;
    case 'proved':
      return { state: 'proved', report: reply.report, tookNothing: false };
    case 'edits':
      return was.state === 'proved' && reply.of === 'take-over'
        ? { ...was, tookNothing: reply.edits.length === 0 }
        : was;
    case 'refused':
      return { state: 'refused', refusal: reply.refusal };
    case 'fault':
      return { state: 'refused', refusal: { says: words.broke, whatToDo: words.tryAgain, more: [reply.detail] } };
  }
};

/** Recordings held against the plan in a worker of their own, which ends with this part or when reading is stopped. */
export const useProof = ({ boat, plan }: { boat: Boat; plan: Plan }) => {
  const [proving, setProving] = useState<Proving>({ state: 'none' });
  const worker = useRef<Worker | undefined>(undefined);
  const edit = useEdit();
  const end = useCallback((): void => {
    worker.current?.terminate();
    worker.current = undefined;
    setProving({ state: 'none' });
  }, []);
  useEffect(() => () => worker.current?.terminate(), []);
  const hear = useRef<(reply: ProofReply) => void>(() => undefined);
  useEffect(() => {
    hear.current = (reply) => {
      setProving((was) => after(was, reply));
      if (reply.kind === 'proved') keepProof(boat.name, reply.report);
      if (reply.kind === 'edits' && reply.edits.length > 0) edit(reply.edits);
    };
  }, [edit, boat.name]);
  const ask = useCallback((request: ProofRequest): void => {
    if (worker.current === undefined) {
      const own = new Worker(new URL('../../../../workers/proof-worker.ts', import.meta.url), { type: 'module' });
      // the worker is built from the same protocol, so what comes back is a reply
      own.addEventListener('message', ({ data }: MessageEvent<ProofReply>) => hear.current(data));
      own.addEventListener('error', ({ message }) => hear.current({ kind: 'fault', detail: message }));
      worker.current = own;
    }
    worker.current.postMessage(request);
  }, []);
  const prove = useCallback(
    (files: readonly File[]): void => {
      if (files.length === 0) return;
      const allBytes = files.reduce((sum, { size }) => sum + size, 0);
      setProving({ state: 'reading', names: files.map(({ name }) => name).join(', '), readBytes: 0, allBytes });
      ask({ kind: 'prove', recordings: files, boat, plan });
    },
    [ask, boat, plan],
  );
  return { proving, prove, ask, end };
};
