import { readCountedText } from './counted-text.ts';

/** What whoever fitted a device wrote into it (PGN 126998). Texts are private: never shown unless asked for. */
export interface ConfigurationInformation {
  readonly installation1?: string;
  readonly installation2?: string;
  readonly maker?: string;
}

const names = ['installation1', 'installation2', 'maker'] as const;

/** Reads configuration information (source: pgn-database); a text that is cut off, and those behind it, are absent. */
export const readConfigurationInformation = (payload: Uint8Array): ConfigurationInformation => {
  const found: { -readonly [Key in keyof ConfigurationInformation]: ConfigurationInformation[Key] } = {};
  let at = 0;
  for (const name of names) {
    const one = readCountedText(payload, at);
    if (one === undefined) break;
    if (one.text !== undefined) found[name] = one.text;
    at = one.end;
  }
  return found;
};
