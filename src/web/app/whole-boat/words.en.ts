/** What is said of a boat with all that lies beside her in one file, in English. */
export const en = {
  chooseZip: 'Choose a zip that was exported here, or one of a single boat with her log and pictures.',
  zipTooLarge: 'This zip unpacks to more than a boat may be.',
  zipBroken: 'This zip is damaged and cannot be unpacked.',
  zipWithout: 'This zip holds no boat file.',
  zipOfMany: (count: number) => `This zip holds ${count} boat files; one at a time is read.`,
  notAll: (count: number) => `${count === 1 ? 'One picture' : `${count} pictures`} of her could not be kept here.`,
  logNotKept: 'Her log could not be kept here.',
} as const;
