export const en = {
  accept: 'accept this',
  acceptAbout: (title: string) => `accept: ${title}`,
  because: 'Accepted because',
  put: 'accept',
  leave: 'leave it open',
  reasonWanted: 'Say why in a few words; whoever reads the papers will want to know.',
  stepTitle: (title: string, reason: string) => `Accept “${title}”: ${reason}`,
  accepted: (count: number) => `Accepted, with a reason (${count})`,
  acceptedNothing: 'Nothing was accepted.',
  reopen: 'open it again',
  reopenAbout: (says: string) => `open again: ${says}`,
  reopenTitle: (title: string) => `Open “${title}” again`,
} as const;
