import { operation } from "../operation.ts";
import * as s from "../schemas/index.ts";
import { byId, may } from "./shared.ts";

export const moneyOperations = {
  pay: operation({
    method: "POST",
    url: "/hires/:id/payments",
    tag: "money",
    summary: "Record a payment by hand",
    access: may("payment.write"),
    params: byId,
    body: s.newPaymentSchema,
    answer: s.hirePageSchema,
  }),
} as const;
