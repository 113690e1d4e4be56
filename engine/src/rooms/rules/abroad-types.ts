import * as z from "zod/mini";
import type { Figure } from "../../base/figure.ts";
import type { RoomAnswer } from "../../base/finding.ts";
import type { FactNotDescribed } from "../../rules/rule.ts";
import { vehicleDescriptionSchema } from "../../vehicle/description.ts";
import { isoDateSchema } from "../situation.ts";
import type { WinterThing } from "./winter-duties.ts";

const country = z.string().check(z.regex(/^[A-Z]{2}$/, "expected a two-letter country code (ISO 3166-1)"));

/** What the depot has got together for a journey abroad, as somebody saw it. */
export const abroadPapersSchema = z.strictObject({
  /** vehicle-on-hire certificate (VE103) */
  certificate: z.optional(z.strictObject({ validFrom: isoDateSchema, validTo: isoDateSchema })),
  /** the original registration document travels with the vehicle */
  originalDocument: z.optional(z.boolean()),
});

export type AbroadPapers = z.infer<typeof abroadPapersSchema>;

export const countriesInputSchema = z.strictObject({
  vehicle: vehicleDescriptionSchema,
  /** country of the depot */
  home: country,
  /** every country of the route in its order, with the first and last day there */
  route: z
    .array(z.strictObject({ country, enter: isoDateSchema, leave: isoDateSchema }))
    .check(z.maxLength(60)),
  today: isoDateSchema,
  papers: abroadPapersSchema,
  /** things of the country kit seen aboard, by their name in the rules (vest, triangle …) */
  kitAboard: z.array(z.string().check(z.maxLength(40))).check(z.maxLength(60)),
  /** ids of rules whose paper, sticker, tag or registration has been got */
  got: z.array(z.string().check(z.maxLength(80))).check(z.maxLength(200)),
  /** ids of rules of zones or motorways that the route keeps out of, as somebody said */
  avoided: z.optional(z.array(z.string().check(z.maxLength(80))).check(z.maxLength(60))),
  /** bicycles, a rack or a box stand out behind */
  overhang: z.boolean(),
  plateShowsUk: z.optional(z.boolean()),
});
export type CountriesInput = z.infer<typeof countriesInputSchema>;

export const ROADS = ["town", "rural", "dual", "motorway"] as const;
export type Road = (typeof ROADS)[number];

/** One line of a country card: the rule it rests on, and whether that rule is settled. */
export interface CardLine {
  readonly ruleId: string;
  readonly value: string;
  readonly unsettled: boolean;
  /** from memory: to be checked before travel */
  readonly fromMemory: boolean;
  /** what the rule says besides: where it is otherwise, from which sizes, by which paper */
  readonly note: string | null;
  /** day of the stay from which the rule is another, begins or is gone; null where it holds throughout */
  readonly changesOn: string | null;
  /** what it turns on and no description says, so that nobody checked it */
  readonly notChecked: readonly NotChecked[];
}
export type NotChecked = FactNotDescribed | "unladenMass";

/** A winter rule that is for this vehicle on days of the stay; its value is the yearly span. */
export interface WinterLine extends CardLine {
  readonly thing: WinterThing;
  /** only while ice, snow, slush or frost lies on the road */
  readonly wintryOnly: boolean;
  readonly roads: "signed" | "signedMountains" | null;
}
export interface CountryCard {
  readonly country: string;
  readonly enter: string;
  readonly leave: string;
  /** false: the data hold no rules of this country */
  readonly known: boolean;
  /** km/h, in Great Britain mph; as signed where a road is missing */
  readonly speeds: readonly { readonly road: Road; readonly limit: Figure; readonly line: CardLine }[];
  readonly kit: readonly (CardLine & { readonly thing: string; readonly aboard: boolean })[];
  /** winter tyres and chains, where days of the stay may ask for them */
  readonly winter: readonly WinterLine[];
  readonly zone: CardLine | null;
  readonly tolls: readonly CardLine[];
  readonly night: CardLine | null;
  /** adaptors for a refillable vehicle; null where none is fitted */
  readonly lpgFiller: (CardLine & { readonly adaptors: readonly string[] }) | null;
  /** g of alcohol in a litre of blood */
  readonly alcohol: {
    readonly limit: Figure;
    readonly novice: Figure | null;
    readonly line: CardLine;
  } | null;
}
/** Something to get before the hire, and by when. */
export interface AbroadTask {
  readonly ruleId: string;
  readonly country: string;
  readonly doBy: string;
  readonly leadDays: number;
  readonly done: boolean;
  /** what a route may keep out of instead; null where every road there asks for it */
  readonly avoidable: "zones" | "motorways" | null;
  /** the route keeps out of it, as somebody said */
  readonly avoided: boolean;
  /** the lead time no longer fits before the day of entry */
  readonly late: boolean;
}
export interface CountriesResult {
  readonly cards: readonly CountryCard[];
  readonly tasks: readonly AbroadTask[];
}
export type CheckCountries = (input: CountriesInput) => RoomAnswer<CountriesResult>;

export const CROSSINGS = ["tunnel", "ferry", "shortSeaFerry"] as const;
export type CrossingKind = (typeof CROSSINGS)[number];
/** A ferry or a tunnel of the route. */
export const crossingSchema = z.strictObject({
  kind: z.enum(CROSSINGS),
  on: isoDateSchema,
  /** civil time at which it leaves, in `zone`; left out where nobody said */
  at: z.optional(z.string().check(z.regex(/^([01]\d|2[0-3]):[0-5]\d$/, "expected a time HH:MM"))),
  /** IANA time zone of the port; the depot's own where left out */
  zone: z.optional(z.string().check(z.minLength(1), z.maxLength(60))),
});
export type Crossing = z.infer<typeof crossingSchema>;
export const crossingInputSchema = z.strictObject({
  vehicle: vehicleDescriptionSchema,
  /** leaves the country of the depot */
  abroad: z.boolean(),
  /** `none` says that the route crosses no water and no tunnel for vehicles with gas */
  crossings: z.array(crossingSchema).check(z.maxLength(20)),
  /** somebody said that there is no crossing */
  noCrossing: z.boolean(),
  /** as read at the vehicle; left out where nobody looked */
  fillShare: z.optional(z.number().check(z.minimum(0), z.maximum(1))),
  gaugeWorks: z.optional(z.boolean()),
});
export type CrossingInput = z.infer<typeof crossingInputSchema>;
export interface CrossingResult {
  /** gas aboard when full, kg */
  readonly gas: Figure;
  /** of those that state a limit */
  readonly limits: readonly { readonly kind: (typeof CROSSINGS)[number]; readonly all: Figure }[];
}
export type CheckCrossing = (input: CrossingInput) => RoomAnswer<CrossingResult>;
