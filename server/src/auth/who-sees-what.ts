import type { Act } from "./roles.ts";

/**
 * Who is shown what of a person and of money. An operation's own act says who may call it; this table says which fields
 * of its answer a right opens beyond that. Whoever lacks the right gets the answer without the field: nothing is put in
 * its place. The answers are cut in one place (`api/show-by-right.ts`) and the API document names the rights.
 */
export interface FieldRight {
  /** the act that opens the field */
  readonly may: Act;
  /** this act opens it too, for hires of the day: the keys go or went, and nothing is settled yet */
  readonly onTheDay?: Act;
}

const SUMS: FieldRight = { may: "money.see" };
const PERSON: FieldRight = { may: "customer.see" };
const LICENCE: FieldRight = { may: "licence.read" };

/** By the name of a schema in the API document, then by field. */
export const FIELD_RIGHTS: Readonly<Record<string, Readonly<Record<string, FieldRight>>>> = {
  HireSummary: { owedPence: SUMS },
  HirerOfHire: {
    telephone: { may: "customer.see", onTheDay: "customer.call" },
    email: PERSON,
    address: PERSON,
  },
  HirePage: {
    // with birthday and entitlement; names stand in `driverNames`
    drivers: LICENCE,
    quote: SUMS,
    payments: SUMS,
    money: SUMS,
    settlement: SUMS,
    // acts with their facts: reasons and sums among them
    history: PERSON,
  },
  EndingOfHire: { charge: SUMS },
  // as it was entered: accidents and fines with who drove
  ChangeDone: { change: PERSON },
  HireNotes: { payer: PERSON },
};

/** Findings of these gates tell of licences, claims and sums: who lacks the right sees that something is open, and at which gate. */
export const GATE_RIGHTS: Readonly<Record<string, Act>> = {
  licence: "licence.read",
  insurance: "licence.read",
  money: "money.see",
};

/**
 * What answers give of a person and of money that no schema names: files, PDFs, pictures, free text. The rest is read
 * off the schemas (`api/rights-document.ts`).
 */
export const GIVEN_BESIDE = {
  yardJobs: "photographs of the vehicle",
  readHire: "party, trip, wishes in the hirer's own words; who signed",
  readTripQuestion: "party, trip",
  readAbroad: "countries of the trip",
  readForecast: "trip",
  readLoad: "masses of the party and of what it takes along",
  readDifferences: "photographs of the vehicle",
  readHirerAdditions: "the hirer's own words and photographs about marks",
  readHelp: "what was tried, in the hirer's own words",
  readNotes: "notes in free text",
  reminders: "notes in free text",
  listMessages: "mail with its text",
  previewMessage: "names, mail, sums as in the message",
  exportRecords: "names, signatures, the hirer's own words",
  readCalendar: "names where the link was made with them, else hire numbers",
  readGuidePhoto: "photographs of the link's own hire",
  readOwnPaper: "everything on the paper, to its own hirer",
  readChangePaper: "names, addresses, licence numbers, sums",
  readErasurePaper: "numbers of hires, who erased, tablets; no name of whom",
  readErasure: "what holds it: sums, names of insurers, things left behind",
  readInvoice: "names, addresses, sums",
  exportPostings: "sums, hire numbers",
  exportRows: "names, telephones, mail and postal addresses; no licence numbers",
  writePriceList: "prices of the firm, nobody's",
  readPaper: "by paper, below; whoever may not see the hirer's address gets the paper without it",
  readDisputePack: "names, addresses, sums, photographs, signatures",
  readDaySheet: "names, and what still stops a hire as far as the reader may see it",
  readDayPack: "names, addresses, sums",
  readPhoto: "photographs; of bills, fines and losses only with `customer.see`",
  headPhoto: "whether a photograph is here",
} as const;

/** Papers of a hire as PDF, each with the act that opens it beside `hire.see`. */
export const PAPER_RIGHTS = {
  quote: "money.see",
  agreement: "customer.see",
  countries: "hire.see",
  receipt: "money.see",
  statement: "money.see",
  walkOut: "hire.see",
  walkBack: "hire.see",
  condition: "hire.see",
  dispute: "hire.settle",
  lostProperty: "customer.see",
} as const satisfies Readonly<Record<string, Act>>;
