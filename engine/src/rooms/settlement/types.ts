import * as z from "zod/mini";
import type { Figure } from "../../base/figure.ts";
import type { RoomAnswer } from "../../base/finding.ts";
import type { Money } from "../../base/money.ts";
import { VIEWS } from "../../systems/contract.ts";
import { MARK_KINDS } from "../condition/types.ts";
import { termsSchema } from "../quote/types.ts";
import { isoLocalSchema } from "../situation.ts";

const text = (max: number) => z.string().check(z.minLength(1), z.maxLength(max));
const pence = z.int().check(z.minimum(0), z.maximum(100_000_000));

/** Decided at the desk on evidence. Only `hirer` is chargeable; unknown is not. */
export const MARK_CLASSES = ["existing", "fairWear", "ours", "hirer", "unknown"] as const;
export type MarkClass = (typeof MARK_CLASSES)[number];

const figureSchema = z.looseObject({
  value: z.number(),
  unit: z.string(),
  formula: z.string(),
  inputs: z.record(z.string(), z.union([z.number(), z.string(), z.boolean(), z.null()])),
  basis: z.enum(["measured", "declared", "default", "from memory", "computed"]),
});
const evidence = {
  id: text(200),
  checkId: z.nullable(z.string()),
  systemKind: z.nullable(z.string()),
  charge: z.nullable(z.string()),
  outRecords: z.array(z.string()),
  backRecords: z.array(z.string()),
  photographs: z.array(z.string()),
};
/** A difference as the condition room gives it. */
export const differenceSchema = z.discriminatedUnion("kind", [
  z.strictObject({
    ...evidence,
    kind: z.literal("reading"),
    out: figureSchema,
    back: figureSchema,
    change: figureSchema,
    tolerance: figureSchema,
  }),
  z.strictObject({
    ...evidence,
    kind: z.literal("count"),
    expected: z.int(),
    counted: z.int(),
    short: z.int(),
  }),
  z.strictObject({ ...evidence, kind: z.literal("look"), view: z.enum(VIEWS) }),
  z.strictObject({
    ...evidence,
    kind: z.literal("mark"),
    part: z.string(),
    view: z.enum(VIEWS),
    markKind: z.enum(MARK_KINDS),
    sizeMm: z.nullable(z.number()),
    xShare: z.number(),
    yShare: z.number(),
  }),
]);

/** What a repair costs: parts lose value with age, work is charged by the labour policy of the terms. */
export const repairCostSchema = z.strictObject({ partsPence: pence, labourPence: pence });
export type RepairCost = z.infer<typeof repairCostSchema>;
const costs = z.record(z.string(), z.union([pence, repairCostSchema]));

/** Damage that came to light after the settlement was shown: charged only with its evidence and a second signature. */
export const lateClaimSchema = z.strictObject({
  /** id of its line */
  id: text(80),
  /** what it is, in words */
  about: text(200),
  cost: repairCostSchema,
  /** age of the part and the life that is usual for it, years: it loses its value evenly */
  ageYears: z.number().check(z.minimum(0), z.maximum(60)),
  lifeYears: z.number().check(z.positive(), z.maximum(60)),
  incident: z.nullable(text(80)),
  photographs: z.array(z.string()),
  /** photographs that show how the place left */
  departure: z.array(z.string()),
  secondSigned: z.boolean(),
});
export type LateClaim = z.infer<typeof lateClaimSchema>;

/** What a late return can really cost the firm: something given back to the next hirer, work outside the hours, a day's hire that was lost. */
export const LOSS_KINDS = ["nextHirer", "overtime", "lostDay"] as const;
/** One loss by a late return, whole pence, with what shows it. */
export const lateLossSchema = z.strictObject({
  kind: z.enum(LOSS_KINDS),
  pence,
  /** what it was, in words */
  about: text(500),
  records: z.array(z.string()),
  photographs: z.array(z.string()),
});
export type LateLoss = z.infer<typeof lateLossSchema>;

/** What the settlement is asked. Published as the schema of `setfair settle`. */
export const settlementInputSchema = z.strictObject({
  /** the version that the hire was booked under */
  terms: termsSchema,
  hire: z.strictObject({
    id: text(60),
    from: isoLocalSchema,
    to: isoLocalSchema,
    returnedAt: isoLocalSchema,
    timeZone: text(60),
    /** records that show when it came back */
    returnRecords: z.optional(z.array(z.string())),
    allowanceKm: z.number().check(z.minimum(0), z.maximum(200_000)),
    fuel: z.enum(["diesel", "petrol", "electric", "hydrogen"]),
    /** tank of the vehicle, for a fuel reading given as a share */
    fuelTankLitres: z.optional(z.number().check(z.positive(), z.maximum(200))),
    /** for a DEF reading given as a range */
    defLitresPer1000Km: z.optional(z.number().check(z.positive(), z.maximum(20))),
    /** age of the part or thing in whole or part years, by the same id as the line of the terms; without it the full life is taken as used, to the hirer's good */
    ageYears: z.record(z.string(), z.number().check(z.minimum(0), z.maximum(60))),
  }),
  differences: z.array(differenceSchema),
  /**
   * by the id of the difference; a mark, count or look left out is unknown, hence not charged. Metered
   * readings (distance, fuel, gas, DEF) need no class and are charged unless one says otherwise.
   */
  classes: z.record(z.string(), z.enum(MARK_CLASSES)),
  /** cleaning beyond the included standard, hours, with its evidence */
  cleaning: z.optional(
    z.strictObject({
      hours: z.number().check(z.minimum(0), z.maximum(40)),
      records: z.array(z.string()),
      photographs: z.array(z.string()),
    }),
  ),
  /** cost of repair by the id of the difference, from an estimate; as one sum in pence or as parts and labour. The lower of this and the matrix is charged */
  estimates: z.optional(costs),
  /** what the repair did cost, by the id of the difference; where lower than the estimate, the rest goes back */
  invoices: z.optional(costs),
  /** photographs that show how each marked place left, by the id of the difference; where given, a mark that has none is not charged */
  departure: z.optional(z.record(z.string(), z.array(z.string()))),
  /** age of the part in years by the id of the difference, where the depot has shown it; else the age by the terms' own line */
  partAges: z.optional(z.record(z.string(), z.number().check(z.minimum(0), z.maximum(60)))),
  /** what a repair whose cost is not known yet may cost at most, pence, by the id of the mark: held and not charged until the cost is there */
  awaiting: z.optional(z.record(z.string(), pence)),
  /** ids of differences that were found too late to be charged: after the return was signed and outside its second look */
  foundLate: z.optional(z.array(z.string())),
  /** what a late return really cost the firm; what is charged for it is at most the hourly rate of the terms, and nothing without these */
  lateLosses: z.optional(z.array(lateLossSchema)),
  /** true of a settlement that was shown before losses had to be told: the hourly rate stands as it was shown */
  lateAtRate: z.optional(z.boolean()),
  /** what came to light after the settlement was shown */
  claims: z.optional(z.array(lateClaimSchema)),
  /** lines as they were shown to the hirer, pence by line id: a line never costs more later */
  atMost: z.optional(z.record(z.string(), pence)),
  /** which marks came of which incident, by the id of the difference; the excess caps each incident. Unnamed ones count as one */
  incidents: z.optional(z.record(z.string(), text(80))),
  /** day on which a mark, count or look was put down to the hirer, by the id of the difference */
  decidedOn: z.optional(z.record(z.string(), z.iso.date())),
  /** differences that a second person signed for */
  secondSigned: z.optional(z.array(z.string())),
  /** line ids whose charge the depot has taken back */
  withdrawn: z.optional(z.array(z.string())),
  /** held as security, pence */
  depositPence: pence,
  /** line ids that the hirer disputes */
  disputed: z.array(z.string()),
  /** marks already charged to another hire, by record id of the mark: never charged again */
  chargedElsewhere: z.array(z.string()),
});
export type SettlementInput = z.infer<typeof settlementInputSchema>;

export interface SettlementLine {
  /** stable within the settlement */
  readonly id: string;
  /** text `settlement.<code>` */
  readonly code:
    | "mileage"
    | "fuel"
    | "fuelService"
    | "def"
    | "lpg"
    | "cleaning"
    | "waste"
    | "cassette"
    | "late"
    | "kit"
    | "damage"
    | "claim"
    | "notCharged";
  readonly about: string;
  readonly quantity: Figure | null;
  readonly amount: Money<"GBP">;
  /** why nothing is charged: the class, or charged elsewhere, or no line in the terms */
  readonly because:
    | MarkClass
    | "chargedElsewhere"
    | "noTariff"
    | "withinAllowance"
    | "noDeparturePhotograph"
    | "needsSecondSignature"
    | "awaitsCost"
    | "noEvidence"
    | "noLoss"
    | "afterWindow"
    | "withdrawn"
    | null;
  /** held for a cost that is not known yet; never part of `amount` */
  readonly awaiting: Money<"GBP">;
  /** counted under the excess, so capped with the others of that kind */
  readonly capped: boolean;
  /** the incident whose excess caps it; null where none was named */
  readonly incident: string | null;
  readonly disputed: boolean;
  readonly evidence: {
    readonly records: readonly string[];
    readonly photographs: readonly string[];
    readonly differenceId: string | null;
  };
  /** how the amount came about: new value, share of life left, matrix line */
  readonly working: readonly Figure[];
}
export interface Settlement {
  readonly hireId: string;
  readonly termsId: string;
  readonly lines: readonly SettlementLine[];
  /** taken off so that damage stays at the excess; zero or negative */
  readonly overExcess: Money<"GBP">;
  /** sum of lines and overExcess; never negative */
  readonly total: Money<"GBP">;
  /** part of the total that is disputed */
  readonly disputed: Money<"GBP">;
  /** the most that costs not known yet may add, within the excess */
  readonly awaiting: Money<"GBP">;
  readonly depositHeld: Money<"GBP">;
  /** kept now: undisputed charges, at most the deposit */
  readonly depositKept: Money<"GBP">;
  /** held back for disputed lines and for costs not known yet, at most what is left */
  readonly depositWithheld: Money<"GBP">;
  readonly depositReturned: Money<"GBP">;
  /** undisputed charges above the deposit */
  readonly stillOwed: Money<"GBP">;
  /** day by which the deposit goes back */
  readonly releaseBy: string;
}
export type SettleHire = (input: SettlementInput) => RoomAnswer<Settlement>;
