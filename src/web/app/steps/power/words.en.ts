export const en = {
  supply: 'supply',
} as const;
