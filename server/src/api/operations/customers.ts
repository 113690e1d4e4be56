import * as z from "zod";
import { operation } from "../operation.ts";
import * as s from "../schemas/index.ts";
import { basedOn, byId, may } from "./shared.ts";

const byDriver = z.object({ id: s.idSchema, driverId: z.string().min(1).max(40) });

export const customersOperations = {
  setCustomer: operation({
    method: "PUT",
    url: "/hires/:id/customer",
    tag: "hires",
    summary: "Name, telephone, mail and postal address of the hirer; what was signed keeps what it named",
    access: may("customer.write"),
    params: byId,
    query: basedOn,
    body: s.customerSchema,
    answer: s.hirePageSchema,
  }),
  setDriverParticulars: operation({
    method: "PUT",
    url: "/hires/:id/drivers/:driverId/particulars",
    tag: "drivers",
    summary: "Address and licence number of a driver, which a notice of a fine asks for",
    access: may("hire.write"),
    params: byDriver,
    query: basedOn,
    body: s.driverParticularsSchema,
    answer: s.driverChecksSchema,
  }),
  readLicenceNumber: operation({
    method: "POST",
    url: "/hires/:id/drivers/:driverId/licence-number/reading",
    tag: "drivers",
    summary: "Show a driver's licence number; written to the audit",
    access: may("licence.read"),
    params: byDriver,
    answer: s.licenceNumberSchema,
  }),
} as const;
