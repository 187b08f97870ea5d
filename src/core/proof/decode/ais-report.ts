/** What one ship says by AIS. Numbers and names of ships are private: masked in everything shown. Absent = not said. */
export interface AisReport {
  /** message type of ITU-R M.1371, 1 to 27 */
  readonly type: number;
  readonly mmsi: number;
  /** the own ship’s, which is no target */
  readonly own: boolean;
  /** degrees */
  readonly latitude?: number;
  readonly longitude?: number;
  /** over ground, rad true */
  readonly course?: number;
  /** over ground, m/s */
  readonly speed?: number;
  /** rad true */
  readonly heading?: number;
  /** rad/s, to starboard positive */
  readonly rateOfTurn?: number;
  /** 0 = under way using engine … */
  readonly status?: number;
  readonly name?: string;
  readonly callSign?: string;
  readonly imo?: number;
  readonly shipType?: number;
  /** m */
  readonly length?: number;
  readonly beam?: number;
  readonly fromBow?: number;
  readonly fromStarboard?: number;
  readonly draught?: number;
  readonly destination?: string;
}

/** The report with what has a value. */
export const reportOf = (
  head: Pick<AisReport, 'type' | 'mmsi' | 'own'>,
  said: { readonly [Key in keyof AisReport]?: AisReport[Key] | undefined },
): AisReport => ({
  ...head,
  ...Object.fromEntries(Object.entries(said).filter(([, value]) => value !== undefined)),
});
