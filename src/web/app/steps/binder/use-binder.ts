import type { Boat } from '../../../../core/boat/boat-schema.ts';
import type { SetBinder } from '../../../../papers/pages/page-shape.ts';
import type { SettingProgress } from '../../../../papers/pages/set-binder.ts';
import type { BinderAsked, BinderReply } from '../../../workers/binder-reply.ts';
import { useOwnWorker } from '../../use-own-worker.ts';

/** A binder in the making: how far it is, its pages as soon as they stand, the file in the end. */
export interface Making {
  readonly state: 'running' | 'done' | 'failed';
  readonly progress?: SettingProgress;
  readonly set?: SetBinder;
  readonly written: number;
  readonly bytes?: Uint8Array<ArrayBuffer>;
}

const after = (was: Making, reply: BinderReply): Making => {
  switch (reply.kind) {
    case 'chapter':
      return { ...was, progress: reply.progress };
    case 'pages':
      return { ...was, set: reply.set };
    case 'written':
      return { ...was, written: reply.done };
    case 'file':
      return { ...was, state: 'done', bytes: reply.bytes };
  }
};

const make = (): Worker =>
  new Worker(new URL('../../../workers/binder-worker.ts', import.meta.url), { type: 'module' });

/** The binder of a boat, made in a worker of its own when somebody asks; forgotten when the boat changes. */
export const useBinder = (
  boat: Boat,
): {
  readonly making: Making | undefined;
  readonly start: (asked: BinderAsked) => void;
  readonly stop: () => void;
} => {
  const { found, ask, stop } = useOwnWorker<BinderAsked, BinderReply, Making>(boat, {
    make,
    after,
    failed: (was) => ({ ...was, state: 'failed' }),
  });
  return {
    making: found,
    start: (asked) => ask(asked, { state: 'running', written: 0 }),
    // pages that stand can still be looked at
    stop: () => stop((was) => (was.set === undefined ? undefined : { ...was, state: 'done' })),
  };
};
