export const en = {
  supply: 'banks, panels, circuits',
} as const;
