import { expect, test } from 'vitest';
import { type BoatRole, boatTurn, type TabChannel } from './boat-turn.ts';

const settled = () => new Promise((done) => setTimeout(done, 5));

type Wait = { readonly grant: (lock: unknown) => unknown; readonly fail: (error: Error) => void };

/** The locks of one browser: one holder at a time, the others in a row, as the standard has it. */
const browserLocks = () => {
  let holder: Wait | undefined;
  const row: Wait[] = [];
  const next = (): void => {
    holder = row.shift();
    if (holder !== undefined) run(holder);
  };
  const run = (wait: Wait): void => {
    void Promise.resolve(wait.grant({})).then(() => {
      if (holder === wait) next();
    });
  };
  const request = (_: string, options: LockOptions, grant: (lock: unknown) => unknown): Promise<unknown> =>
    new Promise((resolve, reject) => {
      const wait: Wait = { grant: async (lock) => resolve(await grant(lock)), fail: reject };
      if (options.ifAvailable === true && holder !== undefined) {
        resolve(grant(null));
        return;
      }
      if (options.steal === true) {
        holder?.fail(new Error('stolen'));
        holder = undefined;
        row.unshift(wait);
      } else row.push(wait);
      options.signal?.addEventListener('abort', () => {
        const at = row.indexOf(wait);
        if (at >= 0) row.splice(at, 1);
        reject(new Error('called off'));
      });
      if (holder === undefined) next();
    });
  return { request };
};

const browser = () => {
  const locks = browserLocks();
  const listeners = new Map<object, (said: unknown) => void>();
  const channel = (): TabChannel => {
    const own = {};
    return {
      post: (said) => {
        for (const [of, listen] of listeners) if (of !== own) queueMicrotask(() => listen(said));
      },
      onSaid: (listen) => listeners.set(own, listen),
      close: () => listeners.delete(own),
    };
  };
  const tab = ({ boat = 'as it is', isHung = false } = {}) => {
    const roles: BoatRole[] = [];
    const seen: string[] = [];
    let afterWait: (() => void) | undefined;
    const turn = boatTurn(
      'folder/gannet',
      {
        // reason: as much of the browser’s locks as a turn uses
        locks: locks as never,
        channel,
        later: (run) => {
          afterWait = run;
          return () => {
            afterWait = undefined;
          };
        },
      },
      {
        onRole: (role) => roles.push(role),
        onBoat: (text) => seen.push(text),
        boatNow: () => boat,
        finish: () => (isHung ? new Promise(() => undefined) : Promise.resolve()),
      },
    );
    return { roles, seen, turn, waitLong: () => afterWait?.() };
  };
  return { tab };
};

test('the first tab writes, the second follows, is shown the boat and every change of it', async () => {
  const { tab } = browser();
  const first = tab({ boat: 'with an edit' });
  await settled();
  const second = tab();
  await settled();
  expect([first.roles, second.roles]).toEqual([['writes'], ['follows']]);
  expect(second.seen).toEqual(['with an edit']);
  first.turn.tell('with two');
  second.turn.tell('from one who may not');
  await settled();
  expect(second.seen).toEqual(['with an edit', 'with two']);
  expect(first.seen).toEqual([]);
});

test('when the tab that writes leaves, the next takes over by itself', async () => {
  const { tab } = browser();
  const tabs = [tab(), tab(), tab()];
  await settled();
  tabs[0]?.turn.leave();
  await settled();
  expect(tabs.map(({ roles }) => roles.at(-1))).toEqual(['writes', 'writes', 'follows']);
  tabs[1]?.turn.leave();
  await settled();
  expect(tabs[2]?.roles.at(-1)).toBe('writes');
});

test('a tab that follows takes over when it asks, and the other follows it then', async () => {
  const { tab } = browser();
  const [first, second] = [tab(), tab()];
  await settled();
  second.turn.takeOver();
  await settled();
  expect([first.roles, second.roles]).toEqual([
    ['writes', 'follows'],
    ['follows', 'writes'],
  ]);
  second.turn.tell('mine now');
  await settled();
  expect(first.seen).toContain('mine now');
});

test('a tab that has hung loses its turn', async () => {
  const { tab } = browser();
  const [first, second] = [tab({ isHung: true }), tab()];
  await settled();
  second.turn.takeOver();
  await settled();
  expect(second.roles).toEqual(['follows']);
  second.waitLong();
  await settled();
  expect(second.roles).toEqual(['follows', 'writes']);
  expect(first.roles.at(-1)).toBe('follows');
});

test('a tab that has left is told nothing and waits for nothing', async () => {
  const { tab } = browser();
  const [first, second, third] = [tab(), tab(), tab()];
  await settled();
  second.turn.leave();
  first.turn.leave();
  await settled();
  expect(second.roles).toEqual(['follows']);
  expect(third.roles.at(-1)).toBe('writes');
});
