/** What was typed and not yet put in, by the question it answers; kept so that nothing is lost when the page goes. */
interface KeptTyping {
  readonly read: () => Readonly<Record<string, string>>;
  readonly keep: (typed: Readonly<Record<string, string>>) => void;
  readonly forget: () => void;
}

/** The boat that is open, as the address names it. */
const boatInAddress = (): string => window.location.hash.split('/')[2] ?? '';

/** Storage may be closed to the page: then typing is kept no longer than the page. */
const trying = <Value>(attempt: () => Value, otherwise: Value): Value => {
  try {
    return attempt();
  } catch {
    return otherwise;
  }
};

const textsIn = (value: unknown): Readonly<Record<string, string>> =>
  typeof value === 'object' && value !== null
    ? Object.fromEntries(
        Object.entries(value).filter((entry): entry is [string, string] => typeof entry[1] === 'string'),
      )
    : {};

export const keptTyping = (question: string): KeptTyping => {
  const key = `fairlead-walk ${boatInAddress()} ${question}`;
  return {
    read: () => trying(() => textsIn(JSON.parse(window.localStorage.getItem(key) ?? '{}')), {}),
    keep: (typed) => trying(() => window.localStorage.setItem(key, JSON.stringify(typed)), undefined),
    forget: () => trying(() => window.localStorage.removeItem(key), undefined),
  };
};
