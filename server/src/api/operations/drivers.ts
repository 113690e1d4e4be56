import * as z from "zod";
import { operation } from "../operation.ts";
import * as s from "../schemas/index.ts";
import { basedOn, byId, may } from "./shared.ts";

const byDriver = z.object({ id: s.idSchema, driverId: z.string().min(1).max(40) });

export const driversOperations = {
  readDriverChecks: operation({
    method: "GET",
    url: "/hires/:id/driver-checks",
    tag: "drivers",
    summary: "For each driver: from when a check code may be asked for, whether one waits, and what was seen",
    access: may("licence.read"),
    params: byId,
    answer: s.driverChecksSchema,
  }),
  putCheckCode: operation({
    method: "PUT",
    url: "/hires/:id/drivers/:driverId/check-code",
    tag: "drivers",
    summary: "A check code that the driver made; sealed until it is used or dead",
    access: may("hire.write"),
    params: byDriver,
    query: basedOn,
    body: s.newCheckCodeSchema,
    answer: s.driverChecksSchema,
  }),
  readCheckCode: operation({
    method: "POST",
    url: "/hires/:id/drivers/:driverId/check-code/reading",
    tag: "drivers",
    summary: "Show the code to whoever looks the licence up; written to the audit",
    access: may("licence.read"),
    params: byDriver,
    answer: s.checkCodeAnswerSchema,
  }),
  checkDriver: operation({
    method: "POST",
    url: "/hires/:id/drivers/:driverId/checks",
    tag: "drivers",
    summary: "What was seen of a driver's entitlement; a code is used up by it and erased",
    access: may("hire.write"),
    params: byDriver,
    query: basedOn,
    body: s.licenceCheckSchema,
    answer: s.driverChecksSchema,
  }),
} as const;
