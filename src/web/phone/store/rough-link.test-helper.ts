import { addedLines } from '../../../core/log/added-lines.ts';
import type { LogEntry } from '../../../core/log/log-entry.ts';
import type { BoatLink, Heard, ReadText } from './phone-link.ts';
import type { PictureShelf, Shelf } from './shelf.ts';

/** What becomes of one request: `late` it comes when nobody waits for its answer any more, `slow` its answer does. */
export type Fate = 'whole' | 'lost' | 'answer-lost' | 'doubled' | 'late' | 'slow';

const unheard = { kind: 'unheard' } as const;

/** The laptop: its state is the text of the log, and nothing else outlives it. */
export class Laptop {
  text = '';
  readonly pictures = new Set<string>();
  /** the next writing is cut off in its middle, as by a battery that is flat */
  goesDark: boolean = false;

  add(entries: readonly LogEntry[]): boolean {
    const { text } = addedLines(this.text, entries);
    if (!this.goesDark) this.text += text;
    else this.text += text.slice(0, Math.floor(text.length * 0.6));
    const went = !this.goesDark;
    this.goesDark = false;
    return went;
  }
}

/** A link that loses, doubles, delays and reorders what is sent over it, in both directions. */
export class RoughLink implements BoatLink {
  private readonly late: (() => void)[] = [];
  private readonly slow: (() => void)[] = [];
  private readonly laptop: Laptop;
  private readonly by: string;
  private readonly fate: () => Fate;

  constructor(laptop: Laptop, by: string, fate: () => Fate) {
    this.laptop = laptop;
    this.by = by;
    this.fate = fate;
  }

  /** One of what is under way arrives. */
  arrive(at: number): void {
    const all = [...this.late, ...this.slow];
    const one = all[at % Math.max(all.length, 1)];
    for (const queue of [this.late, this.slow])
      if (one !== undefined && queue.includes(one)) queue.splice(queue.indexOf(one), 1);
    one?.();
  }

  private send<Value>(work: () => Heard<Value>): Promise<Heard<Value>> {
    const fate = this.fate();
    switch (fate) {
      case 'lost':
        return Promise.resolve(unheard);
      case 'answer-lost':
        work();
        return Promise.resolve(unheard);
      case 'doubled':
        work();
        return Promise.resolve(work());
      case 'late':
        this.late.push(work);
        return Promise.resolve(unheard);
      case 'slow': {
        const answer = work();
        return new Promise((resolve) => {
          this.slow.push(() => resolve(answer));
        });
      }
      case 'whole':
        return Promise.resolve(work());
    }
  }

  add(entries: readonly LogEntry[]): Promise<Heard<true>> {
    const signed = entries.map((entry): LogEntry => ({ ...entry, by: this.by }));
    return this.send(() => (this.laptop.add(signed) ? { kind: 'heard', value: true } : unheard));
  }

  log(tag: string | undefined): Promise<Heard<ReadText>> {
    return this.send(() => {
      const { text } = this.laptop;
      return { kind: 'heard', value: tag === text ? 'as before' : { text, tag: text } };
    });
  }

  sheet(): Promise<Heard<ReadText>> {
    return this.send(() => ({ kind: 'heard', value: 'as before' }));
  }

  putPicture(hash: string): Promise<Heard<true>> {
    return this.send(() => {
      this.laptop.pictures.add(hash);
      return { kind: 'heard', value: true };
    });
  }
}

/** What a phone keeps, with room for so many signs; each tab holds it by a hand of its own, which is dead once the tab is. */
export const shelfInMemory = (mostSigns = Number.POSITIVE_INFINITY) => {
  const kept = new Map<string, string>();
  const hand = (): Shelf & { isDead: boolean } => ({
    isDead: false,
    keys: () => [...kept.keys()],
    get: (key) => kept.get(key),
    set(key, text) {
      if (this.isDead) return true;
      const signs = [...kept].reduce((sum, [name, held]) => sum + (name === key ? 0 : name.length + held.length), 0);
      if (signs + key.length + text.length > mostSigns) return false;
      kept.set(key, text);
      return true;
    },
    remove(key) {
      if (!this.isDead) kept.delete(key);
    },
  });
  return { kept, hand };
};

export const picturesInMemory = (): PictureShelf & { readonly held: Map<string, Blob> } => {
  const held = new Map<string, Blob>();
  return {
    held,
    put: async (hash, picture) => {
      held.set(hash, picture);
      return true;
    },
    get: async (hash) => held.get(hash),
    remove: async (hash) => {
      held.delete(hash);
    },
  };
};
