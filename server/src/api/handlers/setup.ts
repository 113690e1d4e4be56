import { hashPassword } from "../../auth/passwords.ts";
import { hashToken } from "../../auth/tokens.ts";
import { type DepotDocument, toJson } from "../../desk/documents.ts";
import { dateOf, localOf } from "../../desk/local-time.ts";
import { gazetteer } from "../../places/load-gazetteer.ts";
import type { Handlers } from "../call.ts";
import { badField, Refusal } from "../refusal.ts";
import { checkWeek } from "./check-week.ts";

/** Minutes between a return and the next departure until the depot says otherwise (practice). */
const TURNAROUND_MINUTES = 240;

const MOST_PLACES = 8;
/** places of the country that set-up begins with stand first */
const HOME = "GB";

export const setUpHandlers = {
  async readSetup({ context }) {
    return { open: (await context.database.system.firmCount()) === 0 };
  },

  async findSetUpPlaces({ context, query }) {
    if ((await context.database.system.firmCount()) > 0) throw new Refusal("linkUnusable");
    return { places: [...(await gazetteer()).search(query.q, MOST_PLACES, HOME)] };
  },

  /** The link serves once; firm, depot, terms and manager are made together or not at all. */
  async setUp({ context, params, body }) {
    const { system } = context.database;
    const { firm, depot, terms, insurance, manager } = body;
    const { name, timeZone, distances = "km" as const, ...rest } = depot;
    let today: string;
    try {
      today = dateOf(localOf(context.now().toISOString(), timeZone));
    } catch {
      throw badField("depot.timeZone", "expected the name of a time zone, e.g. Europe/London");
    }
    checkWeek(depot.hours, "depot.hours");
    if ((await system.accountByLogin(manager.login)) !== null)
      throw badField("manager.login", "expected a login that nobody else has");
    const document: DepotDocument = {
      ...rest,
      distances,
      turnaroundMinutes: TURNAROUND_MINUTES,
    };
    const answer = await system.setUp(hashToken(params.token), {
      firm: { name: firm.name },
      depot: { name, timeZone, document: toJson(document) },
      terms: [
        ...(terms === undefined ? [] : [{ of: "hire", validFrom: today, document: toJson(terms) }]),
        ...(insurance === undefined
          ? []
          : [{ of: "insurance", validFrom: today, document: toJson(insurance) }]),
      ],
      manager: {
        login: manager.login,
        name: manager.name,
        passwordHash: await hashPassword(manager.password),
      },
    });
    if (!answer.ok) throw new Refusal("linkUnusable");
    return { done: true as const };
  },
} satisfies Partial<Handlers>;
