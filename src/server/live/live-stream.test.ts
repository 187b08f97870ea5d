import type { ServerResponse } from 'node:http';
import { expect, test } from 'vitest';
import { liveStream } from './live-stream.ts';

/** A page that takes what it is sent, or does not. */
const page = (writableLength = 0) => {
  const seen = { texts: [] as string[], isDestroyed: false };
  let close = (): void => undefined;
  const response = {
    writableLength,
    writeHead: () => undefined,
    flushHeaders: () => undefined,
    on: (event: string, run: () => void) => {
      if (event === 'close') close = run;
    },
    write: (text: string) => seen.texts.push(text),
    end: () => undefined,
    destroy: () => {
      seen.isDestroyed = true;
      close();
    },
  };
  // reason: only what the stream uses of a response is here
  return { seen, response: response as unknown as ServerResponse };
};

test('what is sent goes to every page, and a page that does not keep up is let go', () => {
  const stream = liveStream({});
  const [quick, slow] = [page(), page(1_000_000)];
  stream.add(quick.response);
  stream.add(slow.response);
  stream.send({ frames: 7 });
  expect(quick.seen).toEqual({ texts: ['data: {"frames":7}\n\n'], isDestroyed: false });
  expect(slow.seen).toEqual({ texts: [], isDestroyed: true });
  expect(stream.count()).toBe(1);
});

test('at most eight pages look on', () => {
  const stream = liveStream({});
  const taken = Array.from({ length: 9 }, () => stream.add(page().response));
  expect(taken.filter(Boolean)).toHaveLength(8);
  expect(taken.at(-1)).toBe(false);
});
