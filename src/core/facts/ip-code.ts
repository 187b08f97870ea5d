/** What the digits of an IP code keep out. */
export const ipDigits = {
  source: 'iec-60529',
  first: {
    0: 'none',
    1: 'object 50 mm and over',
    2: '12.5 mm and over',
    3: '2.5 mm and over',
    4: '1 mm and over',
    5: 'dust may enter, no harm',
    6: 'dust-tight',
  },
  second: {
    0: 'none',
    1: 'vertical drops',
    2: 'drops, tilted 15 deg',
    3: 'spray up to 60 deg from vertical',
    4: 'splash from all sides',
    5: 'jet, 6.3 mm nozzle, 12.5 l/min',
    6: 'strong jet, 12.5 mm nozzle, 100 l/min, about 3 m, 3 min or more',
    7: 'immersion 1 m, 30 min',
    8: 'deeper or longer, as agreed',
    9: 'hot high-pressure jet',
  },
  /** second digits that say nothing of the lower ones: a double mark such as IPX6/IPX7 is needed */
  alone: [7, 8, 9],
} as const;
