/** What the workers say of files, in English. */
export const en = {
  otherCurrency: (then: string, now: string) => `Her prices were in ${then} then, and are in ${now} now.`,
  noMessage: 'There is not one message of a bus in this file.',
  chooseAnother:
    'Choose a boat file, or a recording of the bus in any of its forms: candump text, comma-separated lines, pcap, pcapng.',
  tookIn: 'Take in what was changed in the file.',
  putTogether: 'Put together with what was changed in the file.',
  nothingChanged: (mark: string) => `Nothing: she stands as in revision ${mark}.`,
  faultInBinder: (detail: string) => `The papers could not be made, through a fault of the program: ${detail}`,
} as const;
