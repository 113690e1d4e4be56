/** Every row of a depot names its firm and its depot. */
export interface Scoped {
  firm_id: string;
  depot_id: string;
}
