import { addDays } from "@setfair/engine";
import { driversOf, type HireData, readHireData } from "../../desk/hire-data.ts";
import { checksOf, codeDays, codeKey, driverChecks, hasCode } from "../../desk/licence-checks.ts";
import { instantOf } from "../../desk/local-time.ts";
import { accountNames } from "../../desk/names.ts";
import { requireStage } from "../../desk/require-stage.ts";
import type { Handlers, Signed } from "../call.ts";
import { badField, Refusal } from "../refusal.ts";
import { changeHire } from "./change-hire.ts";
import { OPEN_STAGES } from "./hires.ts";

function driverOf(data: HireData, driverId: string) {
  const driver = driversOf(data).find(({ id }) => id === driverId);
  if (driver === undefined) throw new Refusal("notFound");
  return driver;
}

const answer = async ({ store }: Signed, id: string, now: Date) =>
  driverChecks(await readHireData(store, id, now), await accountNames(store));

export const driverHandlers = {
  readDriverChecks: ({ context, signed, params }) => answer(signed, params.id, context.now()),

  /** A code lives for so many days and serves once: it is sealed, and gone when it is used or dead. */
  async putCheckCode(call) {
    const { context, signed, params, body } = call;
    await changeHire(call, OPEN_STAGES, async (hire) => {
      const { data, store } = hire;
      const driver = driverOf(data, params.driverId);
      if (!hasCode(data, driver))
        throw badField(
          "code",
          "no code: the authority gives none for this licence; record what was seen instead",
        );
      const lastDay = addDays(body.madeOn, codeDays(data));
      if (body.madeOn > data.today) throw badField("madeOn", "expected a day not after today");
      if (lastDay < data.today)
        throw badField("madeOn", `expected a code that still lives; this one died on ${lastDay}`);
      const checks = checksOf(data);
      const waiting = checks.codes[driver.id];
      await hire.refuseOtherEntry(
        // never the code itself
        { path: "code", value: { madeOn: waiting?.madeOn }, sent: { madeOn: body.madeOn } },
        call.query.basedOn,
        waiting,
        waiting?.kept,
      );
      const eraseAt = instantOf(`${addDays(lastDay, 1)}T00:00`, data.depot.timeZone, "madeOn");
      await store.licences.put({
        hireId: data.row.id,
        driverId: codeKey(driver.id),
        number: body.code,
        eraseAt,
      });
      await hire.putPart("licenceChecks", {
        ...checks,
        codes: {
          ...checks.codes,
          [driver.id]: {
            madeOn: body.madeOn,
            kept: { by: hire.by, at: data.now },
            version: hire.nextVersion("licenceChecks"),
          },
        },
      });
      await hire.audit("hire.checkCodeGiven", { driverId: driver.id, madeOn: body.madeOn });
    });
    return answer(signed, params.id, context.now());
  },

  async readCheckCode({ context, signed, params }) {
    const data = await readHireData(signed.store, params.id, context.now());
    requireStage(data, ...OPEN_STAGES);
    const code = await signed.store.licences.read(params.id, codeKey(params.driverId), signed.account.id);
    if (code === null) throw new Refusal("notFound");
    return { code };
  },

  async checkDriver(call) {
    const { context, signed, params, body } = call;
    await changeHire(call, OPEN_STAGES, async (hire) => {
      const { data, store, by } = hire;
      const driver = driverOf(data, params.driverId);
      // what was seen is written to the driver with the whole licence as it was on the screen
      await hire.refuseOtherBase("drivers", call.query.basedOn, {
        drivers: driversOf(data).map((each) =>
          each.id === driver.id ? { ...each, licence: body.licence } : each,
        ),
      });
      if (!body.consent) throw badField("consent", "expected the driver's agreement to the look-up");
      const kept = checksOf(data);
      const code = kept.codes[driver.id];
      if (body.how === "code") {
        if (code === undefined)
          throw badField("how", "expected a code that was not used yet; ask for a new one");
        if (addDays(code.madeOn, codeDays(data)) < data.today)
          throw badField("how", "expected a code that still lives; ask for a new one");
        await store.licences.erase(data.row.id, codeKey(driver.id));
      } else if (body.seen === undefined)
        throw badField("seen", "expected what was looked at instead of a code");
      const { otherEvidence: _, ...licence } = body.licence;
      const seen = body.how === "other" ? (body.seen ?? null) : null;
      const { [driver.id]: __, ...otherCodes } = kept.codes;
      await hire.putPart("licenceChecks", {
        codes: body.how === "code" ? otherCodes : kept.codes,
        checks: [
          ...kept.checks,
          { driverId: driver.id, how: body.how, by, at: data.now, on: data.today, seen, licence },
        ],
      });
      const checked = {
        ...driver,
        licence: {
          ...licence,
          checkedOn: data.today,
          ...(seen === null ? {} : { otherEvidence: { seen, by: signed.account.name } }),
        },
      };
      await hire.putPart("drivers", {
        drivers: driversOf(data).map((each) => (each.id === driver.id ? checked : each)),
      });
      await hire.audit("hire.licenceChecked", { driverId: driver.id, how: body.how });
    });
    return answer(signed, params.id, context.now());
  },
} satisfies Partial<Handlers>;
