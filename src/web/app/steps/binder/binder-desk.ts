import type { Page } from '../../../../papers/pages/page-shape.ts';
import type { SettingProgress } from '../../../../papers/pages/set-binder.ts';
import type {
  BinderAsked,
  BinderFile,
  BinderOrder,
  BinderReply,
  BinderTold,
} from '../../../workers/binder-protocol.ts';

/** A worker that sets one binder, as the desk needs it. */
export interface BinderPort {
  readonly post: (asked: BinderAsked) => void;
  readonly onReply: (listener: (reply: BinderReply) => void) => void;
  readonly onBreak: (listener: () => void) => void;
  readonly end: () => void;
}

/** What binder is wanted. */
export type BinderWanted = BinderOrder;

/** A binder that can be looked at. */
export interface ShownBinder extends BinderTold {
  readonly wanted: BinderWanted;
}

/** What stands on the desk: a binder to look at, another in the making, a file of it being written. */
export interface DeskState {
  readonly shown?: ShownBinder;
  /** what is in the making; `progress` is absent before its first chapter is set */
  readonly making?: { readonly wanted: BinderWanted; readonly progress?: SettingProgress };
  readonly writing?: { readonly done: number; readonly of: number };
  /** why there is none, or no file, in words */
  readonly refused?: string;
  /** the making was called off: what is shown may be of a boat that has changed since */
  readonly isStopped?: true;
}

/** The binder of a boat as the page sees it. */
export interface BinderDesk {
  readonly state: () => DeskState;
  readonly subscribe: (listener: () => void) => () => void;
  /** has a binder made; what is shown stays until it is there */
  readonly make: (wanted: BinderWanted) => void;
  /** calls off what is in the making, the file or else the binder */
  readonly stop: () => void;
  /** one page by number; undefined until it has come */
  readonly page: (at: number) => Page | undefined;
  /** asks for pages; each comes once */
  readonly want: (pages: readonly number[]) => void;
  /** resolves once all of these pages are here */
  readonly whenHere: (pages: readonly number[]) => Promise<void>;
  readonly write: (file: BinderFile) => void;
  readonly close: () => void;
}

/** What was told of a binder, with the worker that keeps its pages and those that have come. */
interface Kept {
  readonly port: BinderPort;
  readonly asked: Set<number>;
  readonly pages: Map<number, Page>;
}

/** A desk on which one binder lies open while the next is made, each in a worker of its own. */
export const binderDesk = (
  makePort: () => BinderPort,
  {
    save,
    brokenWords,
    overtakenWords,
  }: {
    save: (file: BinderFile, bytes: Uint8Array<ArrayBuffer>) => void;
    brokenWords: string;
    /** said where the next binder came before a file of the one before was written */
    overtakenWords: string;
  },
): BinderDesk => {
  let state: DeskState = {};
  let kept: Kept | undefined;
  let maker: BinderPort | undefined;
  const listeners = new Set<() => void>();
  const put = (next: DeskState): void => {
    state = next;
    for (const listener of listeners) listener();
  };
  const shown = (): Pick<DeskState, 'shown'> => (state.shown === undefined ? {} : { shown: state.shown });

  const endMaker = (): void => {
    maker?.end();
    maker = undefined;
  };
  const hear = (port: BinderPort, wanted: BinderWanted, reply: BinderReply): void => {
    switch (reply.kind) {
      case 'setting':
        if (port === maker) put({ ...state, making: { wanted, progress: reply.progress } });
        return;
      case 'set':
        if (port !== maker) return;
        kept?.port.end();
        kept = { port, asked: new Set(), pages: new Map() };
        maker = undefined;
        put({
          shown: { ...reply.told, wanted },
          // the file in the making went with the worker that wrote it
          ...(state.writing === undefined ? {} : { refused: overtakenWords }),
        });
        return;
      case 'pages':
        if (kept?.port !== port) return;
        for (const { at, page } of reply.pages) kept.pages.set(at, page);
        put({ ...state });
        return;
      case 'writing':
        put({ ...state, writing: { done: reply.done, of: reply.of } });
        return;
      case 'file': {
        save(reply.file, reply.bytes);
        const { writing: _, ...rest } = state;
        put(rest);
        return;
      }
      case 'refused':
        if (port === maker) endMaker();
        put({ ...shown(), refused: reply.says });
        return;
      case 'since':
        return;
    }
  };

  return {
    state: () => state,
    subscribe: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    make: (wanted) => {
      endMaker();
      const port = makePort();
      maker = port;
      port.onReply((reply) => hear(port, wanted, reply));
      port.onBreak(() => {
        if (port !== maker && port !== kept?.port) return;
        if (port === maker) endMaker();
        put({ ...shown(), refused: brokenWords });
      });
      const { refused: _, isStopped: __, ...rest } = state;
      put({ ...rest, making: { wanted } });
      port.post({ asks: 'set', ...wanted });
    },
    stop: () => {
      if (state.writing !== undefined) {
        kept?.port.post({ asks: 'stop' });
        const { writing: _, ...rest } = state;
        put(rest);
        return;
      }
      if (state.making === undefined) return;
      endMaker();
      put({ ...shown(), isStopped: true });
    },
    page: (at) => kept?.pages.get(at),
    want: (pages) => {
      if (kept === undefined) return;
      const { asked, port } = kept;
      const fresh = pages.filter((at) => !asked.has(at));
      for (const at of fresh) asked.add(at);
      if (fresh.length > 0) port.post({ asks: 'pages', pages: fresh });
    },
    whenHere: (pages) =>
      new Promise((done) => {
        const of = kept;
        const look = (): void => {
          // a binder that is no longer shown will not come
          if (of !== undefined && of === kept && pages.some((at) => !of.pages.has(at))) return;
          listeners.delete(look);
          done();
        };
        listeners.add(look);
        look();
      }),
    write: (file) => {
      if (kept === undefined) return;
      const { refused: _, ...rest } = state;
      put(file.as === 'pdf' ? { ...rest, writing: { done: 0, of: 0 } } : rest);
      kept.port.post({ asks: 'file', file });
    },
    close: () => {
      endMaker();
      kept?.port.end();
      kept = undefined;
      put({});
    },
  };
};
