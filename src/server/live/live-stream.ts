import type { ServerResponse } from 'node:http';

/** Pages that look on while a boat is listened to. */
export interface LiveStream {
  add(response: ServerResponse): boolean;
  send(data: unknown): void;
  count(): number;
  end(): void;
}

const mostPages = 8;
/** A page that has not taken so much is too slow: it is let go, and comes again by itself. */
const mostWaitingBytes = 256_000;

/** Starts with nobody looking on. What is sent goes to each page as one event; a slow page never holds the others up. */
export const liveStream = (headers: Readonly<Record<string, string>>): LiveStream => {
  const pages = new Set<ServerResponse>();
  return {
    add(response) {
      if (pages.size >= mostPages) return false;
      response.writeHead(200, {
        ...headers,
        'content-type': 'text/event-stream; charset=utf-8',
        'cache-control': 'no-store',
      });
      response.flushHeaders();
      pages.add(response);
      response.on('error', () => undefined);
      response.on('close', () => pages.delete(response));
      return true;
    },
    send(data) {
      const text = `data: ${JSON.stringify(data)}\n\n`;
      for (const page of pages) {
        if (page.writableLength > mostWaitingBytes) page.destroy();
        else page.write(text);
      }
    },
    count: () => pages.size,
    end() {
      for (const page of pages) page.end();
      pages.clear();
    },
  };
};
