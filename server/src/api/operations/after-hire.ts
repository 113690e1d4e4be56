import { operation } from "../operation.ts";
import * as s from "../schemas/index.ts";
import { byId, may } from "./shared.ts";

export const afterHireOperations = {
  readDifferences: operation({
    method: "GET",
    url: "/hires/:id/differences",
    tag: "after",
    summary: "What is not as it left",
    access: may("hire.see"),
    params: byId,
    answer: s.differencesSchema,
  }),
  setClasses: operation({
    method: "PUT",
    url: "/hires/:id/classes",
    tag: "after",
    summary: "Decide at the desk, on evidence, what each mark is",
    access: may("hire.settle"),
    params: byId,
    body: s.setClassesSchema,
    answer: s.differencesSchema,
  }),
  readSettlement: operation({
    method: "GET",
    url: "/hires/:id/settlement",
    tag: "after",
    summary: "Lines in whole pence, each with its evidence",
    access: may("money.see"),
    params: byId,
    answer: s.settlementStateSchema,
  }),
  settle: operation({
    method: "POST",
    url: "/hires/:id/settlement",
    tag: "after",
    summary: "Freeze the settlement as shown",
    access: may("hire.settle"),
    params: byId,
    answer: s.hirePageSchema,
  }),
  releaseDeposit: operation({
    method: "POST",
    url: "/hires/:id/deposit-release",
    tag: "after",
    summary: "Give back what is left of the deposit",
    access: may("hire.settle"),
    params: byId,
    answer: s.hirePageSchema,
  }),
  close: operation({
    method: "POST",
    url: "/hires/:id/close",
    tag: "after",
    summary: "Nothing is left to do",
    access: may("hire.write"),
    params: byId,
    answer: s.hirePageSchema,
  }),
} as const;
