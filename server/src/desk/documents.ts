import type {
  AbroadPapers,
  CrossingKind,
  Discount,
  Driver,
  DueDate,
  EndingCharge,
  GlassState,
  LeadTimes,
  LoadPlan,
  MarkClass,
  Mending,
  OpeningHours,
  Party,
  Quote,
  RoomAnswer,
  Settlement,
  StockAsk,
  Trip,
  TripForecast,
  VehicleDescription,
} from "@setfair/engine";
import type { LostReason } from "../api/schemas/enquiries.ts";
import type { HirePartName, JsonObject } from "../store/types.ts";

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
/** People of each skill on a usual day. */
export type Crew = Readonly<Record<"desk" | "cleaner" | "yard" | "technician", number>>;
export interface DepotDocument {
  readonly telephone: string;
  readonly country: string;
  readonly latitudeDeg: number;
  readonly longitudeDeg: number;
  readonly elevationM?: number;
  /** civil times of the depot */
  readonly hours: OpeningHours;
  readonly turnaroundMinutes: number;
  /** what distances are read, written and typed in; km where left out. They are kept in km */
  readonly distances?: "km" | "mi";
  /** people of each skill on a usual day, as the depot entered them */
  readonly crew?: Partial<Crew>;
  /** first and last days, as the depot entered them; they differ from place to place */
  readonly schoolHolidays?: readonly { readonly from: string; readonly to: string }[];
  /** forecasts are fetched from the server's weather service when somebody asks; off to begin with */
  readonly fetchesWeather?: boolean;
  /** how long things take here and when gates fall due, as the depot entered them */
  readonly times?: DepotTimes;
  /** when messages go, how long a hirer's link serves, how far a hire goes in a day, as the depot entered them */
  readonly figures?: DepotFigures;
}
/** What else a depot decides about time and distance. */
export interface DepotFigures {
  /** whole days before the keys or the return, or after the settlement, on which a message goes at 9:00 */
  readonly messageDays: Readonly<Record<"preHire" | "dayBefore" | "returnReminder" | "statement", number>>;
  /** days after the return for which a hirer's link serves */
  readonly linkDays: number;
  /** km that a vehicle on hire goes in a day, by which the odometer at the end of a hire is foreseen */
  readonly kmADay: number;
}
/** How long things take at a depot, minutes for one person, and from when each gate counts, hours before the keys. */
export interface DepotTimes {
  readonly handOverMinutes: number;
  readonly takeBackMinutes: number;
  /** for the demonstration, by what the hirer has done before */
  readonly demonstrationMinutes: Readonly<Record<Party["experience"], number>>;
  /** by the code of a turnaround job */
  readonly jobMinutes: Readonly<Record<string, number>>;
  readonly leadHours: LeadTimes;
}
export interface QuoteDocument {
  readonly at: string;
  readonly acceptedAt: string | null;
  readonly termsVersionId: string;
  readonly extras: readonly { readonly id: string; readonly count: number }[];
  /** what somebody took off, within what the terms let their role give */
  readonly discount?: (Discount & { readonly role: string; readonly by: string }) | null;
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
  /** the glass as it stood after the last change, and before it */
  readonly glass: { readonly state: GlassState; readonly at: string } | null;
  readonly glassBefore: { readonly state: GlassState; readonly at: string } | null;
  readonly keysOutAt: string | null;
  readonly keysBackAt: string | null;
}
/**
 * One of many that are kept in one part, with a version of its own, so that a save of one does not meet a save of
 * another. It is the part's version at that save, hence never comes again; left out in what was kept before.
 */
export interface VersionedEntry {
  readonly version?: number;
}
/** Who, and when. */
interface Kept {
  readonly by: string;
  readonly at: string;
}
/** Version of an entry as answers name it: 0 where nothing is kept. */
export const versionOfEntry = (entry: VersionedEntry | undefined): number =>
  entry === undefined ? 0 : (entry.version ?? 1);

export interface SettlementDocument {
  readonly classes: Readonly<
    Record<
      string,
      VersionedEntry & {
        readonly class: MarkClass;
        readonly reason: string;
        readonly by: string;
        readonly at: string;
        /** which incident it came of, where the desk says so */
        readonly incident?: string | null | undefined;
        /** what is to be done about it before the next hire */
        readonly todo?: Mending | null | undefined;
      }
    >
  >;
  readonly frozenId: string | null;
  readonly frozenAt: string | null;
  readonly frozenBy: string | null;
  readonly answer: RoomAnswer<Settlement> | null;
  /** as it stands after everything that was said and paid since it was frozen; `answer` where left out */
  readonly standing?: Settlement | null;
  /** day by which the depot has promised an answer on what it holds */
  readonly promisedOn?: string | null;
  /** ids of charges in the ledger for fines and tolls that the hirer disputes */
  readonly disputedCharges?: readonly string[];
  readonly releasedAt: string | null;
}

/** What the desk and the yard have said and got together for a journey abroad. */
export interface AbroadDocument {
  /** countries driven through without a stop */
  readonly through: readonly string[];
  readonly crossings: readonly {
    readonly kind: CrossingKind;
    readonly on: string;
    /** civil time at which it leaves, in `zone`, the depot's own where left out */
    readonly at?: string | undefined;
    readonly zone?: string | undefined;
  }[];
  readonly noCrossing: boolean;
  readonly papers: AbroadPapers;
  readonly kitAboard: readonly string[];
  readonly got: readonly string[];
  /** rules of zones or motorways that the route keeps out of */
  readonly avoided?: readonly string[] | undefined;
  readonly overhang: boolean;
  readonly plateShowsUk: boolean;
  readonly gaugeWorks?: boolean | undefined;
  readonly fillShare?: number | undefined;
}
export const NOTHING_ABROAD: AbroadDocument = {
  through: [],
  crossings: [],
  noCrossing: false,
  papers: {},
  kitAboard: [],
  got: [],
  overhang: false,
  plateShowsUk: false,
};

/** Of drivers, by id: where they live, and whether a licence number was given; the number itself lies sealed elsewhere. */
export interface ParticularsDocument {
  readonly drivers: Readonly<
    Record<
      string,
      VersionedEntry & {
        readonly address?: string;
        readonly hasNumber: boolean;
        /** the last save of either, and of the number */
        readonly kept?: Kept;
        readonly numberGiven?: Kept;
      }
    >
  >;
}

export interface PayerDocument {
  readonly name: string;
  readonly email: string;
  readonly address?: string | undefined;
}
/** How drivers of a hire were looked up. The codes themselves lie sealed, apart from this. */
export interface LicenceChecksDocument {
  readonly codes: Readonly<
    Record<string, VersionedEntry & { readonly madeOn: string; readonly kept?: Kept }>
  >;
  readonly checks: readonly {
    readonly driverId: string;
    readonly how: "code" | "other";
    readonly by: string;
    readonly at: string;
    readonly on: string;
    readonly seen: string | null;
    readonly licence: Driver["licence"];
  }[];
}

/** What the caller asked for beside party and dates. */
export interface AskedDocument {
  readonly countries: readonly string[];
  readonly extras: readonly { readonly id: string; readonly count: number }[];
  readonly drivers: number;
}
/** `since` null: not on the list any more. */
export interface WaitingDocument {
  readonly since: string | null;
  readonly classes: readonly string[];
  readonly flexDays: number;
}
/** How a hire ended, with the scale that it was accepted under as it was applied that day. */
export interface EndingDocument {
  readonly as: "lost" | "cancelled" | "noShow";
  readonly code: LostReason | null;
  readonly at: string;
  readonly charge: EndingCharge | null;
  readonly termsId: string | null;
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
  readonly asked: AskedDocument;
  readonly waiting: WaitingDocument;
  readonly ending: EndingDocument;
  /** things that travel with it beside the extras of the quote */
  readonly stock: { readonly asks: readonly StockAsk[] };
  /** part-payments agreed with the hirer; empty: the booking deposit and the balance of the terms */
  readonly money: { readonly agreed: readonly { readonly dueOn: string; readonly pence: number }[] };
  /** who pays, where it is not the hirer */
  readonly payer: { readonly payer: PayerDocument | null };
  readonly licenceChecks: LicenceChecksDocument;
  readonly particulars: ParticularsDocument;
}
export type PartName = keyof PartDocuments & HirePartName;

export const NO_READINESS: ReadinessDocument = {
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
