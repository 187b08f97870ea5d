/** Something that is ticked: the id under which the log keeps it, and what it says. */
export interface PhoneTick {
  readonly tick: string;
  readonly says: string;
}

/** One job as it is done on a day. */
export interface PhoneJob extends PhoneTick {
  /** when on the day, by whom, where */
  readonly about: readonly string[];
  readonly steps: readonly PhoneTick[];
  /** by id */
  readonly cautions: readonly string[];
  /** essential functions that are dark while it lasts */
  readonly takes: readonly string[];
}

/** An essential function that is dark on a day, and what is at hand instead. */
export interface PhoneDark {
  readonly name: string;
  readonly when: string;
  readonly fallback: string;
  readonly isTonight: boolean;
}

/** One day of the work. */
export interface PhoneDay {
  readonly key: string;
  readonly date?: string;
  readonly title: string;
  readonly says: string;
  readonly jobs: readonly PhoneJob[];
  readonly bring: readonly string[];
  readonly dark: readonly PhoneDark[];
  /** what is looked to before everybody goes */
  readonly evening: readonly PhoneTick[];
}
