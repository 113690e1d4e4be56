/** One station with its twelve monthly normals (January first); the source columns stay with every row. */
export interface ClimateStation {
  readonly name: string;
  /** ISO 3166-1 */
  readonly country: string;
  readonly latitudeDeg: number;
  readonly longitudeDeg: number;
  readonly elevationM: number;
  /** mean air temperature, °C */
  readonly meanC: readonly (number | null)[];
  /** mean of the daily minima, °C */
  readonly minC: readonly (number | null)[];
  /** mean of the daily maxima, °C */
  readonly maxC: readonly (number | null)[];
  /** global horizontal over extraterrestrial irradiation; null where not known */
  readonly clearness: readonly (number | null)[];
  readonly source: string;
  readonly sourceSolar: string;
  readonly licence: string;
}
