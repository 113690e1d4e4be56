import type {
  Driver,
  DueDate,
  GlassState,
  LoadPlan,
  MarkClass,
  Party,
  Quote,
  RoomAnswer,
  Settlement,
  Trip,
  TripForecast,
  VehicleDescription,
} from "@setfair/engine";
import type { HirePartName, JsonObject } from "../store/types.ts";
import type { AbroadDocument } from "./abroad.ts";

/** One dated version of a vehicle as this server keeps it. */
export interface VehicleDocument {
  readonly description: VehicleDescription;
  readonly dueDates: readonly DueDate[];
  readonly maxDogs: number;
  readonly vehicleClass: string;
}
export interface CustomerDocument {
  readonly telephone: string;
  readonly email: string;
  readonly address?: string;
}
export interface DepotDocument {
  readonly telephone: string;
  readonly country: string;
  readonly latitudeDeg: number;
  readonly longitudeDeg: number;
  readonly elevationM?: number;
  readonly opens: string;
  readonly closes: string;
  readonly turnaroundMinutes: number;
  /** first and last days, as the depot entered them; they differ from place to place */
  readonly schoolHolidays?: readonly { readonly from: string; readonly to: string }[];
}
export interface QuoteDocument {
  readonly at: string;
  readonly acceptedAt: string | null;
  readonly termsVersionId: string;
  readonly extras: readonly { readonly id: string; readonly count: number }[];
  readonly answer: RoomAnswer<Quote>;
  readonly frozenId: string | null;
}
export interface ForecastDocument {
  readonly inputHash: string;
  readonly engineVersion: string;
  readonly at: string;
  readonly answer: RoomAnswer<TripForecast>;
}
export interface ReadinessDocument {
  readonly checks: Readonly<
    Record<string, { readonly by: string; readonly at: string; readonly note: string }>
  >;
  /** the glass as it stood after the last change, and before it */
  readonly glass: { readonly state: GlassState; readonly at: string } | null;
  readonly glassBefore: { readonly state: GlassState; readonly at: string } | null;
  readonly keysOutAt: string | null;
  readonly keysBackAt: string | null;
}
export interface SettlementDocument {
  readonly classes: Readonly<
    Record<
      string,
      { readonly class: MarkClass; readonly reason: string; readonly by: string; readonly at: string }
    >
  >;
  readonly frozenId: string | null;
  readonly frozenAt: string | null;
  readonly frozenBy: string | null;
  readonly answer: RoomAnswer<Settlement> | null;
  readonly releasedAt: string | null;
}

/** The documents of a hire by the part of the store that holds them. */
export interface PartDocuments {
  readonly party: Party;
  readonly drivers: { readonly drivers: readonly Driver[] };
  readonly trip: Trip;
  readonly load: LoadPlan;
  readonly abroad: AbroadDocument;
  readonly contact: { readonly wishes: string | null };
  readonly quote: QuoteDocument;
  readonly forecast: ForecastDocument;
  readonly readiness: ReadinessDocument;
  readonly settlement: SettlementDocument;
  /** stays on its vehicle when the diary is tidied */
  readonly diary: { readonly pinned: boolean };
}
export type PartName = keyof PartDocuments & HirePartName;

export const NO_READINESS: ReadinessDocument = {
  checks: {},
  glass: null,
  glassBefore: null,
  keysOutAt: null,
  keysBackAt: null,
};
export const NO_SETTLEMENT: SettlementDocument = {
  classes: {},
  frozenId: null,
  frozenAt: null,
  frozenBy: null,
  answer: null,
  releasedAt: null,
};

/** A stored document with its type: only this server writes them, each checked by its room when it came in. */
export function asDocument<T>(document: JsonObject): T {
  return document as T;
}
/** A document as the store takes it. */
export function toJson(document: object): JsonObject {
  return document as JsonObject;
}
