import type { Refusal } from '../workers/protocol.ts';

/** One boat as the server lists it. */
export interface BoatOnList {
  readonly id: string;
  readonly name: string;
  readonly says: string;
}

const noServer: Refusal = {
  says: 'The boats cannot be read, because the program that serves this page does not answer.',
  whatToDo: 'Start it again in the terminal with npm start, then load this page again.',
};

const noSuchBoat = (id: string): Refusal => ({
  says: `There is no boat called "${id}" in this folder.`,
  whatToDo: 'Go back to all boats and choose one from the list.',
});

/** The boats of the folder, or why they cannot be read. */
export const fetchBoats = async (): Promise<{ boats: readonly BoatOnList[] } | { refusal: Refusal }> => {
  try {
    const response = await fetch('/api/boats');
    if (!response.ok) return { refusal: noServer };
    return { boats: (await response.json()) as BoatOnList[] }; // the server and this page are built together
  } catch {
    return { refusal: noServer };
  }
};

/** The text of one boat file, or why it cannot be read. */
export const fetchBoatText = async (id: string): Promise<{ text: string } | { refusal: Refusal }> => {
  try {
    const response = await fetch(`/api/boats/${encodeURIComponent(id)}`);
    if (response.status === 404) return { refusal: noSuchBoat(id) };
    if (!response.ok) return { refusal: noServer };
    return { text: await response.text() };
  } catch {
    return { refusal: noServer };
  }
};
