/** One job as it is done on a day. */
export interface PhoneJob {
  readonly id: string;
  readonly says: string;
  /** when on the day, by whom, where, which cables */
  readonly about: readonly string[];
  /** by id: what each says stands once in the sheet */
  readonly steps: readonly string[];
  /** by id */
  readonly cautions: readonly string[];
  /** essential functions that are dark while it lasts */
  readonly takes: readonly string[];
}

/** An essential function that is dark on a day. */
export interface PhoneDark {
  readonly name: string;
  readonly when: string;
  readonly isTonight: boolean;
}

/** One day of the work. */
export interface PhoneDay {
  readonly phase: number;
  /** of the phase, from 0 */
  readonly day: number;
  readonly date?: string;
  readonly title: string;
  readonly says: string;
  readonly jobs: readonly PhoneJob[];
  readonly bring: readonly string[];
  readonly dark: readonly PhoneDark[];
  /** what is looked to before everybody goes, by id */
  readonly evening: readonly string[];
}

/** The days of the work, and what is said in many of them, each once. */
export interface PhoneWork {
  readonly days: readonly PhoneDay[];
  /** steps of jobs by id */
  readonly steps: Readonly<Record<string, string>>;
  /** what is looked to at the end of a day, by id */
  readonly evening: Readonly<Record<string, string>>;
  /** what is at hand instead of an essential function, by its name */
  readonly fallbacks: Readonly<Record<string, string>>;
}
