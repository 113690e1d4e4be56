import { createWords } from "@setfair/words";
import { asDocument, type CustomerDocument, type ParticularsDocument, toJson } from "../../desk/documents.ts";
import { driversOf, readHireData } from "../../desk/hire-data.ts";
import { driverChecks } from "../../desk/licence-checks.ts";
import { instantOf } from "../../desk/local-time.ts";
import { accountNames } from "../../desk/names.ts";
import { numbersGoneOn, particularsOf } from "../../desk/particulars.ts";
import { refuseOtherBase } from "../based-on.ts";
import type { Handlers } from "../call.ts";
import { Refusal } from "../refusal.ts";
import { changeHire } from "./change-hire.ts";

const words = createWords();

export const customerHandlers = {
  setCustomer: (call) =>
    changeHire(call, [], async ({ store, data, audit }) => {
      const { customer } = data;
      if (customer === null || customer.erasedAt !== null) throw new Refusal("notFound");
      const { name, ...contact } = call.body;
      const kept = { ...asDocument<CustomerDocument>(customer.document), name: customer.name };
      const now = { path: "customer", version: customer.version, value: kept };
      refuseOtherBase(call.query.basedOn, now, call.body);
      const before = { ...asDocument<Record<string, unknown>>(customer.document), name: customer.name };
      const { address: _, ...rest } = asDocument<Record<string, unknown>>(customer.document);
      const document = toJson({ ...rest, ...contact });
      const answer = await store.customers.update(customer.id, { name, document }, customer.version);
      if (!answer.ok) throw new Refusal("stale");
      const after: Record<string, unknown> = call.body;
      const fields = ["name", "telephone", "email", "address"].filter(
        (field) => (before as Record<string, unknown>)[field] !== after[field],
      );
      // which, never what: the audit outlives an erasure
      await audit("hire.customerChanged", { fields });
    }),

  async setDriverParticulars(call) {
    const { context, signed, params, body } = call;
    await changeHire(call, [], async (hire) => {
      const { data, store } = hire;
      if (!driversOf(data).some(({ id }) => id === params.driverId)) throw new Refusal("notFound");
      const { drivers } = particularsOf(data);
      const before: ParticularsDocument["drivers"][string] = drivers[params.driverId] ?? { hasNumber: false };
      const kept = { by: hire.by, at: data.now };
      const noted = (given: boolean) => words.t("meanwhile.licenceNumber", { given: given ? "yes" : "no" });
      await hire.refuseOtherEntry(
        {
          path: "particulars",
          value: { address: before.address, licenceNumber: noted(before.hasNumber) },
          sent: {
            address: body.address ?? before.address,
            // never the number itself
            licenceNumber: body.licenceNumber === undefined ? noted(before.hasNumber) : "",
          },
        },
        call.query.basedOn,
        drivers[params.driverId],
        before.kept,
      );
      if (body.licenceNumber !== undefined) {
        await store.licences.put({
          hireId: data.row.id,
          driverId: params.driverId,
          number: body.licenceNumber.toUpperCase(),
          eraseAt: instantOf(`${numbersGoneOn(data)}T00:00`, data.depot.timeZone, "licenceNumber"),
        });
      }
      await hire.putPart("particulars", {
        drivers: {
          ...drivers,
          [params.driverId]: {
            ...before,
            ...(body.address === undefined ? {} : { address: body.address }),
            hasNumber: before.hasNumber || body.licenceNumber !== undefined,
            ...(body.licenceNumber === undefined ? {} : { numberGiven: kept }),
            kept,
            version: hire.nextVersion("particulars"),
          },
        },
      });
      await hire.audit("hire.driverParticulars", { driverId: params.driverId });
    });
    const data = await readHireData(signed.store, params.id, context.now());
    return driverChecks(data, await accountNames(signed.store));
  },

  async readLicenceNumber({ context, signed, params }) {
    const data = await readHireData(signed.store, params.id, context.now());
    const licenceNumber = await signed.store.licences.read(data.row.id, params.driverId, signed.account.id);
    if (licenceNumber === null) throw new Refusal("notFound");
    return { licenceNumber };
  },
} satisfies Partial<Handlers>;
