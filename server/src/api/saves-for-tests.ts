/** For tests only: how each operation that is sent keeps two desks from writing over one another. */
import type { TestDepot } from "./depot-for-tests.ts";
import type { OperationId } from "./operations.ts";
import { CUSTOMER, DRIVER, LOAD, PARTY, TRIP } from "./samples-for-tests.ts";
import { must } from "./settlement-for-tests.ts";

/** What a save sends: an address below `/api`, and a body that would be kept. */
interface Save {
  readonly url: string;
  readonly body: unknown;
}
export interface World {
  readonly depot: TestDepot;
  /** an enquiry for the same days, a booked hire, and one that came back with a mark */
  readonly open: string;
  readonly booked: string;
  readonly back: string;
}
const read = ({ depot }: World, path: string) => must(depot.call("manager", "GET", path));
/** a version that nothing ever had */
const FOREIGN = 999_999;

/**
 * Every save of a thing that is kept whole, as it is sent by somebody who began from another version than is kept.
 * Each is to be refused: two desks must not write over one another.
 */
export const FROM_ANOTHER_BASE: Readonly<Partial<Record<OperationId, (world: World) => Promise<Save>>>> = {
  setAbroad: based(async (world) => {
    const { abroad } = await read(world, `/hires/${world.booked}/abroad`);
    return { url: `/hires/${world.booked}/abroad`, body: abroad };
  }),
  changeAccount: based(async (world) => {
    const { accounts } = await read(world, "/accounts");
    const { id } = accounts.find(({ login }: { login: string }) => login === "yard");
    return { url: `/accounts/${id}`, body: { name: "Yo Yard", role: "yard", shut: false } };
  }),
  writeUse: based(async ({ back }) => ({
    url: `/hires/${back}/use`,
    body: { added: [], readings: [], distanceKm: 212 },
  })),
  setCustomer: based(async ({ booked }) => ({ url: `/hires/${booked}/customer`, body: CUSTOMER })),
  setDriverParticulars: based(async ({ booked }) => ({
    url: `/hires/${booked}/drivers/t1/particulars`,
    body: { address: "1 Invented Row", licenceNumber: "SAMPL 850203 IN9XX" },
  })),
  putDepotTimes: based(async (world) => {
    const { times } = await read(world, "/depot/times");
    return { url: "/depot/times", body: times };
  }),
  putDepotFigures: based(async (world) => {
    const { figures } = await read(world, "/depot/figures");
    return { url: "/depot/figures", body: figures };
  }),
  setParty: based(async ({ booked }) => ({ url: `/hires/${booked}/party`, body: PARTY })),
  quote: based(async ({ open }) => ({ url: `/hires/${open}/quote`, body: { extras: [], accept: false } })),
  setDrivers: based(async ({ booked }) => ({ url: `/hires/${booked}/drivers`, body: { drivers: [DRIVER] } })),
  setVehicle: based(async ({ open }) => ({ url: `/hires/${open}/vehicle`, body: { vehicleId: "pv2-b" } })),
  takeHire: based(async ({ open }) => ({ url: `/hires/${open}/take`, body: { vehicleId: "pv2-b" } })),
  putWaiting: based(async ({ open }) => ({
    url: `/hires/${open}/waiting`,
    body: { classes: ["panelVan"], flexDays: 2 },
  })),
  setFirmOnInvoices: based(async () => ({
    url: "/money/firm",
    body: { name: "Invented Hire", address: "1 Invented Row, Nowhere", vatNumber: null },
  })),
  agreeParts: based(async (world) => {
    const { price } = await read(world, `/hires/${world.booked}/money`);
    const agreed = [{ dueOn: "2026-07-02", pence: price.pence }];
    return { url: `/hires/${world.booked}/money/parts`, body: { agreed } };
  }),
  setPayer: based(async ({ booked }) => ({
    url: `/hires/${booked}/payer`,
    body: { payer: { name: "An Invented Firm", email: "office@example.org" } },
  })),
  setHireStock: based(async ({ booked }) => ({ url: `/hires/${booked}/stock`, body: { asks: [] } })),
  putTerms: based(async (world) => {
    const { hire } = await read(world, "/terms");
    return { url: "/terms", body: { hire: { ...hire.terms, validFrom: "2026-08-01", id: "two" } } };
  }),
  putFirmPrices: based(async (world) => {
    const { kit, damage } = (await read(world, "/terms/prices")).written;
    return { url: "/terms/prices", body: { validFrom: "2026-08-01", kit, damage } };
  }),
  setTrip: based(async ({ booked }) => ({ url: `/hires/${booked}/trip`, body: TRIP })),
  setLoad: based(async ({ booked }) => ({ url: `/hires/${booked}/load`, body: LOAD })),
  putVehicle: based(async (world) => {
    const { description, vehicleClass, maxDogs } = await read(world, "/vehicles/pv2");
    return {
      url: "/vehicles/pv2",
      body: { description: { ...description, validFrom: "2026-08-01" }, vehicleClass, maxDogs },
    };
  }),
  putCheckCode: based(async ({ booked }) => ({
    url: `/hires/${booked}/drivers/t1/check-code`,
    body: { code: "aB 3d eF gH", madeOn: "2026-07-01" },
  })),
  checkDriver: based(async ({ booked }) => ({
    url: `/hires/${booked}/drivers/t1/checks`,
    body: { how: "other", consent: true, seen: "the authority's letter", licence: DRIVER.licence },
  })),
  // these name what they began from in the body
  putDepot: async (world) => {
    const { timeZone: _, country: __, ...settings } = await read(world, "/depot");
    return { url: "/depot", body: { ...settings, version: FOREIGN } };
  },
  putMessageSettings: async (world) => ({
    url: "/message-settings",
    body: { ...(await read(world, "/message-settings")), version: FOREIGN },
  }),
  changeStockItem: async (world) => {
    const thing = { kind: "bikeRack", name: "Rack 1", count: 1 };
    const { item } = await must(world.depot.call("manager", "POST", "/stock", thing));
    return { url: `/stock/${item.id}`, body: { ...thing, reason: "painted", version: FOREIGN } };
  },
  moveHire: async ({ booked }) => ({
    url: `/hires/${booked}/move`,
    body: { was: "pv2-b", vehicleId: "pv2-b" },
  }),
  applyTidy: async ({ booked }) => ({
    url: "/diary/tidy",
    body: { moves: [{ hireId: booked, from: "pv2-b", to: "pv2" }] },
  }),
  confirmChange: async ({ booked }) => ({
    url: `/hires/${booked}/changes`,
    body: { change: { kind: "teamIll", skill: "desk" }, seen: "0".repeat(64) },
  }),
  setClasses: async (world) => {
    const { differences } = await read(world, `/hires/${world.back}/differences`);
    const made = { id: differences[0].id, class: "hirer", reason: "new on the way", basedOn: FOREIGN };
    return { url: `/hires/${world.back}/classes`, body: { classes: [made] } };
  },
};

function based(save: (world: World) => Promise<Save>) {
  return async (world: World): Promise<Save> => {
    const { url, body } = await save(world);
    return { url: `${url}?basedOn=${FOREIGN}`, body };
  };
}

/** Saves that replace and need no base, each with the reason. */
export const REPLACE_ALL_THE_SAME: Readonly<Partial<Record<OperationId, string>>> = {
  pinHire: "a switch: both ways are seen, nothing is typed",
  tickNote: "a switch, and whoever ticked first stays named",
  putWeatherService: "a switch",
  setPassword: "a secret that nobody reads first",
  changeOwnPassword: "names the password that held so far",
  putPhoto: "kept under its hash: twice is the same",
  putGuidePhoto: "kept under its hash: twice is the same",
  tabletKeeps: "a tablet says what it keeps itself; nobody else says it",
  correctRule: "added to a list with name and day; the one before stays",
};

/** Whatever else is sent: adds to what is there, or is an act that the state of a thing lets through once. */
export const ADD_OR_ACT: readonly OperationId[] = [
  "actOnHireStock",
  "addAccount",
  "addBlock",
  "addCharge",
  "addCorrection",
  "addDefect",
  "addGuideRecords",
  "addLostProperty",
  "addNote",
  "addRecords",
  "addRepairCost",
  "addStockItem",
  "addTicket",
  "addUpkeep",
  "answerStatement",
  "book",
  "bounceMessage",
  "close",
  "closeDefect",
  "confirmRule",
  "createVehicle",
  "creditInvoice",
  "dropWaiting",
  "endCalendarFeed",
  "endHire",
  "eraseCustomer",
  "fetchWeather",
  "handOver",
  "holdDeposit",
  "importCalendar",
  "importRows",
  "issueInvoice",
  "makeCalendarFeed",
  "makeHirerLink",
  "newHire",
  "noteOnSettlement",
  "override",
  "pay",
  "readCheckCode",
  "readLicenceNumber",
  "refund",
  "releaseDeposit",
  "removeBlock",
  "removeVehicleDraft",
  "replyToLine",
  "retryMessage",
  "sendMessage",
  "setUp",
  "settle",
  "signIn",
  "signOut",
  "signSecond",
  "takeBack",
  "undoEntry",
  "withdrawErasure",
  "withdrawMessage",
  "withdrawRule",
  "withdrawTicket",
];

/** Sent with a body, but only looks. */
export const ONLY_LOOK: readonly OperationId[] = [
  "availability",
  "checkTerms",
  "lookAtChange",
  "previewInsurance",
  "readPriceList",
];
