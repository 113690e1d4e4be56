/** Where a figure, formula or rule comes from. */
export interface Source {
  readonly title: string;
  /** number of a standard, report, regulation or journal place */
  readonly number?: string;
  readonly edition?: string;
  readonly year?: number;
  readonly address?: string;
  /** read: in the source or a faithful copy · from memory: not read for this project · practice: common practice, no source */
  readonly how: "read" | "from memory" | "practice";
}
