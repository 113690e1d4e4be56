import * as z from "zod";
import { operation } from "../operation.ts";
import * as s from "../schemas/index.ts";
import { byId, may } from "./shared.ts";

const byRule = z.object({ ruleId: z.string().min(3).max(80) });

export const rulesOperations = {
  listRules: operation({
    method: "GET",
    url: "/rules",
    tag: "rules",
    summary: "Every dated rule with its source, what the depot changed, and what falls due for checking",
    access: may("terms.see"),
    query: s.rulesQuerySchema,
    answer: s.rulesAnswerSchema,
  }),
  correctRule: operation({
    method: "PUT",
    url: "/rules/:ruleId",
    tag: "rules",
    summary: "The depot's own version of a rule from its day on; the one that ships stays visible",
    access: may("terms.write"),
    params: byRule,
    body: s.correctRuleSchema,
    answer: s.ruleLineSchema,
  }),
  confirmRule: operation({
    method: "POST",
    url: "/rules/:ruleId/readings",
    tag: "rules",
    summary: "The rule was read again, on this day in this source, and stands",
    access: may("terms.write"),
    params: byRule,
    body: s.confirmRuleSchema,
    answer: s.ruleLineSchema,
  }),
  withdrawRule: operation({
    method: "POST",
    url: "/rules/:ruleId/withdrawals",
    tag: "rules",
    summary: "Take the depot's own version of a day back; the one below holds again",
    access: may("terms.write"),
    params: byRule,
    body: s.withdrawRuleSchema,
    answer: s.ruleLineSchema,
  }),
  missingRules: operation({
    method: "GET",
    url: "/hires/:id/missing-rules",
    tag: "rules",
    summary: "What was not checked for this hire, or rests on nothing firm",
    access: may("hire.see"),
    params: byId,
    answer: s.missingRulesSchema,
  }),
  previewInsurance: operation({
    method: "POST",
    url: "/insurance/preview",
    tag: "rules",
    summary: "Which of the booked drivers these criteria would refer or refuse",
    access: may("terms.write"),
    body: s.insurancePreviewSchema,
    answer: s.insurancePreviewAnswerSchema,
  }),
} as const;
