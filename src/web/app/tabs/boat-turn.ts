/** What a tab does with a boat: it writes, or it follows another tab that does. */
export type BoatRole = 'writes' | 'follows';

/** What tabs on one boat say to each other. */
type Said =
  /** the boat as it is now in the tab that writes */
  | { readonly says: 'boat'; readonly text: string }
  /** a tab that follows asks how the boat is */
  | { readonly says: 'hello' }
  /** a tab that follows asks to write */
  | { readonly says: 'may-i' };

/** As much of a channel between tabs as is needed. */
export interface TabChannel {
  readonly post: (said: unknown) => void;
  readonly onSaid: (listener: (said: unknown) => void) => void;
  readonly close: () => void;
}

/** What the browser lends to tabs: a lock that dies with its tab, and a channel. */
export interface TurnTools {
  readonly locks: Pick<LockManager, 'request'>;
  readonly channel: (name: string) => TabChannel;
  /** runs something after a time; gives what calls it off */
  readonly later: (run: () => void, ms: number) => () => void;
}

export interface TurnHooks {
  /** this tab now writes, or follows */
  readonly onRole: (role: BoatRole) => void;
  /** the tab that writes shows the boat so; called only where this one follows */
  readonly onBoat: (text: string) => void;
  /** the boat as it is here, for a tab that begins to follow */
  readonly boatNow: () => string | undefined;
  /** brings what is under way to an end before another tab writes */
  readonly finish: () => Promise<void>;
}

/** This tab’s turn at one boat. */
export interface BoatTurn {
  /** tells the tabs that follow how the boat is now */
  readonly tell: (text: string) => void;
  /** asks the tab that writes to let this one */
  readonly takeOver: () => void;
  /** leaves the boat; the next tab in the row then writes */
  readonly leave: () => void;
}

/** A tab that does not answer for so long has hung; its turn is taken. */
const hungAfterMs = 4000;

// reason: only pages of this very program speak on the channel
const heard = (said: unknown): Said => said as Said;

/**
 * Takes a turn at a boat: the first tab writes, every other follows and sees each change, until the first leaves, dies or
 * is asked to let another write. The lock is the browser’s, so that two tabs never write at once.
 */
export const boatTurn = (key: string, { locks, channel, later }: TurnTools, hooks: TurnHooks): BoatTurn => {
  const name = `fairlead boat ${key}`;
  const line = channel(name);
  let role: BoatRole | undefined;
  let isGone = false;
  let letGo = (): void => undefined;
  let callOff = (): void => undefined;
  const waiting = new AbortController();

  const become = (next: BoatRole): void => {
    role = next;
    if (!isGone) hooks.onRole(next);
  };

  const hold = (): Promise<void> => {
    if (isGone) return Promise.resolve();
    callOff();
    become('writes');
    return new Promise((resolve) => {
      letGo = resolve;
    });
  };

  /** Stands in the row; gives nothing back, for it is over only when the turn is. */
  const queue = (options: LockOptions): void => {
    locks.request(name, options, hold).then(
      () => undefined,
      () => {
        // the turn was taken from a tab that did not answer, or the wait was called off
        if (role === 'writes' && !isGone) follow();
      },
    );
  };

  const follow = (): void => {
    become('follows');
    line.post({ says: 'hello' });
    queue({ signal: waiting.signal });
  };

  const yieldTurn = async (): Promise<void> => {
    await hooks.finish();
    const done = letGo;
    follow();
    done();
  };

  line.onSaid((said) => {
    const { says, ...rest } = heard(said);
    if (role === 'follows' && says === 'boat' && 'text' in rest) hooks.onBoat(rest.text);
    if (role !== 'writes') return;
    if (says === 'may-i') void yieldTurn();
    const text = says === 'hello' ? hooks.boatNow() : undefined;
    if (text !== undefined) line.post({ says: 'boat', text });
  });

  void locks
    .request(name, { ifAvailable: true }, (lock) => {
      if (lock !== null) return hold();
      if (!isGone) follow();
      return undefined;
    })
    .catch(() => {
      if (role === 'writes' && !isGone) follow();
    });

  return {
    tell: (text) => {
      if (role === 'writes') line.post({ says: 'boat', text });
    },
    takeOver: () => {
      if (role !== 'follows') return;
      line.post({ says: 'may-i' });
      callOff();
      callOff = later(() => queue({ steal: true }), hungAfterMs);
    },
    leave: () => {
      isGone = true;
      callOff();
      waiting.abort();
      letGo();
      line.close();
    },
  };
};
