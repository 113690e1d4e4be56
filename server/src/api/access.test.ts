import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { ACTS, may, ROLES } from "../auth/roles.ts";
import { type As, makeDepot, type TestDepot } from "./depot-for-tests.ts";
import type { Operation } from "./operation.ts";
import { type OperationId, operations } from "./operations.ts";
import { CUSTOMER, PARTY, PERIOD } from "./samples-for-tests.ts";

/**
 * Who may call each operation, written out by hand: a wrong act at an operation, or a role too many in the table of
 * acts, shows here. A new operation is to be entered where it belongs.
 */
const WHO = {
  /** anybody at all */
  anybody: ["health", "signIn"],
  /** the holder of the token in the address; the hirer's link opens one hire */
  link: [
    "addGuideRecords",
    "answerStatement",
    "putGuidePhoto",
    "readCalendar",
    "readGuide",
    "readGuidePhoto",
    "readOwnPaper",
    "readStatement",
  ],
  /** the holder of the one-time token, while there is no firm */
  setUpToken: ["findSetUpPlaces", "readSetup", "setUp"],
  /** everybody who is signed in */
  staff: [
    "actOnHireStock",
    "addDefect",
    "addNote",
    "addRecords",
    "addUpkeep",
    "changeOwnPassword",
    "checkTerms",
    "closeDefect",
    "diary",
    "findPlaces",
    "fleetDue",
    "forecastOutcomes",
    "headPhoto",
    "listHires",
    "listRules",
    "listStock",
    "listVehicleDrafts",
    "listVehicles",
    "listVersions",
    "missingRules",
    "putPhoto",
    "readAbroad",
    "readBriefing",
    "readChanges",
    "readCustody",
    "readDaySheet",
    "readDepot",
    "readDepotFigures",
    "readDepotTimes",
    "readDifferences",
    "readFirmPrices",
    "readForecast",
    "readHelp",
    "readHire",
    "readHireStock",
    "readHirerAdditions",
    "readLoad",
    "readNotes",
    "readPaper",
    "readPhoto",
    "readQuestions",
    "readSession",
    "readStockItem",
    "readTerms",
    "readTripQuestion",
    "readUpkeep",
    "readUse",
    "readVehicle",
    "readVersion",
    "readWeatherService",
    "reminders",
    "signOut",
    "termsVersion",
    "termsVersions",
    "tabletKeeps",
    "tickNote",
    "tidyDiary",
    "today",
    "turnarounds",
    "writePriceList",
    "yardJobs",
  ],
  /** not the yard: money, licences, the hirer, what binds the firm */
  desk: [
    "addBlock",
    "addCharge",
    "addCorrection",
    "addLostProperty",
    "addRepairCost",
    "addStockItem",
    "agreeParts",
    "applyTidy",
    "availability",
    "book",
    "bounceMessage",
    "changeStockItem",
    "checkDriver",
    "close",
    "confirmChange",
    "creditInvoice",
    "dropWaiting",
    "endCalendarFeed",
    "endHire",
    "enquiries",
    "exportRecords",
    "fetchWeather",
    "handOver",
    "hireVehicles",
    "holdDeposit",
    "importCalendar",
    "issueInvoice",
    "listCalendarFeeds",
    "listMessages",
    "lookAtChange",
    "makeCalendarFeed",
    "makeHirerLink",
    "moveHire",
    "newHire",
    "noteOnSettlement",
    "override",
    "pay",
    "pinHire",
    "previewEnding",
    "previewMessage",
    "putCheckCode",
    "putWaiting",
    "quote",
    "readChangePaper",
    "readCheckCode",
    "readDayPack",
    "readDisputePack",
    "readDriverChecks",
    "readHireMoney",
    "readInvoice",
    "readLicenceNumber",
    "readMessageSettings",
    "readMoney",
    "readSettlement",
    "refund",
    "releaseDeposit",
    "removeBlock",
    "replyToLine",
    "retryMessage",
    "sendMessage",
    "setAbroad",
    "setClasses",
    "setCustomer",
    "setDriverParticulars",
    "setDrivers",
    "setHireStock",
    "setLoad",
    "setParty",
    "setPayer",
    "setTrip",
    "setVehicle",
    "settle",
    "signSecond",
    "takeBack",
    "takeHire",
    "undoEntry",
    "withdrawMessage",
    "writeUse",
  ],
  /** the manager alone: prices, rules, the fleet, accounts, what leaves the firm */
  manager: [
    "addAccount",
    "addTicket",
    "changeAccount",
    "confirmRule",
    "correctRule",
    "createVehicle",
    "eraseCustomer",
    "exportPostings",
    "exportRows",
    "firstSteps",
    "importRows",
    "listAccounts",
    "previewInsurance",
    "putDepot",
    "putMessageSettings",
    "putDepotFigures",
    "putDepotTimes",
    "putFirmPrices",
    "putTerms",
    "readErasure",
    "readErasurePaper",
    "readPriceList",
    "putVehicle",
    "putWeatherService",
    "removeVehicleDraft",
    "setFirmOnInvoices",
    "setPassword",
    "withdrawErasure",
    "withdrawRule",
    "withdrawTicket",
  ],
} as const satisfies Readonly<Record<string, readonly OperationId[]>>;
type Who = keyof typeof WHO;

const ROLES_OF: Readonly<Record<Who, readonly As[]>> = {
  anybody: [null, "yard", "desk", "manager"],
  link: [null, "yard", "desk", "manager"],
  setUpToken: [null, "yard", "desk", "manager"],
  staff: ["yard", "desk", "manager"],
  desk: ["desk", "manager"],
  manager: ["manager"],
};
/** Ends the session that the other calls need; the test of signing out has it. */
const NOT_CALLED: readonly OperationId[] = ["signOut"];

const callers = ["yard", "desk", "manager"] as const;
const listed = (Object.keys(WHO) as Who[]).flatMap((who) => WHO[who].map((id) => [id, who] as const));

describe("who may call each operation", () => {
  let depot: TestDepot;
  beforeAll(async () => {
    depot = await makeDepot("sqlite");
  });
  afterAll(() => depot.close());

  it("is written out for every one, once", () => {
    expect(listed.map(([id]) => id).toSorted()).toEqual(Object.keys(operations).toSorted());
  });

  it.each(listed)("%s: %s", async (id, who) => {
    const { method, url, access }: Operation = operations[id];
    const filled = url.replace(":sha256", "0".repeat(64)).replaceAll(/:\w+/g, "0000000000000000");
    if (NOT_CALLED.includes(id)) {
      expect(typeof access === "string" ? [] : callers.filter((role) => may(role, access.act))).toEqual(
        ROLES_OF[who],
      );
      return;
    }
    for (const as of [null, ...callers]) {
      const { statusCode, body } = await depot.app.inject({
        method: method as "GET",
        url: `/api${filled}`,
        // an address for each, so that none is refused for calling too often
        remoteAddress: `192.0.2.${1 + [null, ...callers].indexOf(as)}`,
        ...(as === null ? {} : { headers: { cookie: depot.cookie(as) } }),
        ...(method === "GET" || method === "HEAD" ? {} : { payload: {} }),
      });
      const isLetIn = ![401, 403].includes(statusCode) || body.includes('"wrongSignIn"');
      expect([as, isLetIn, statusCode]).toEqual([as, ROLES_OF[who].includes(as), statusCode]);
      if (!isLetIn) expect(statusCode).toBe(as === null ? 401 : 403);
      // nobody is let in without the right token
      if (id === "readSetup") expect(JSON.parse(body)).toMatchObject({ open: false });
      else if (who === "link" || who === "setUpToken") expect([400, 404]).toContain(statusCode);
    }
  });
});

describe("papers of a hire", () => {
  it("of a dispute are for whoever may settle; the yard prints what goes with the vehicle", async () => {
    const depot = await makeDepot("sqlite");
    const asked = { customer: CUSTOMER, party: PARTY, ...PERIOD, vehicleId: "pv2" };
    const { id } = (await depot.call("desk", "POST", "/hires", asked)).body.hire;
    const code = async (as: As, paper: string) => {
      const { statusCode } = await depot.app.inject({
        method: "GET",
        url: `/api/hires/${id}/papers/${paper}`,
        headers: { cookie: depot.cookie(as ?? "yard") },
      });
      return statusCode;
    };
    expect([await code("yard", "dispute"), await code("yard", "walkOut")]).toEqual([403, 200]);
    for (const as of ["desk", "manager"] as const) expect(await code(as, "dispute")).not.toBe(403);
    await depot.close();
  });
});

describe("the table of acts", () => {
  it("holds no act that nothing asks for", () => {
    const asked = new Set<string>(
      Object.values(operations).flatMap(({ access }: Operation) =>
        typeof access === "string" ? [] : [access.act],
      ),
    );
    // asked within `override`, by what the finding rests on
    asked.add("override.policy");
    // a field, on the day of its hire
    asked.add("customer.call");
    const unasked = Object.keys(ACTS).filter((act) => !asked.has(act) && !act.startsWith("own."));
    expect(unasked).toEqual([]);
  });

  it("gives the manager whatever any other of the staff may do", () => {
    for (const act of Object.keys(ACTS) as (keyof typeof ACTS)[])
      if (ROLES.some((role) => role !== "hirer" && may(role, act)))
        expect(may("manager", act), act).toBe(true);
  });
});
