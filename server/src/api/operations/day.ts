import { operation } from "../operation.ts";
import * as s from "../schemas/index.ts";
import { may } from "./shared.ts";

export const dayOperations = {
  today: operation({
    method: "GET",
    url: "/today",
    tag: "desk",
    summary: "The day: out, back, on the road, what holds things up",
    access: may("hire.see"),
    query: s.todayQuerySchema,
    answer: s.todaySchema,
  }),
  availability: operation({
    method: "POST",
    url: "/availability",
    tag: "desk",
    summary: "Which vehicles can take it, and why not",
    access: may("money.see"),
    body: s.availabilityQuerySchema,
    answer: s.availabilitySchema,
  }),
  yardJobs: operation({
    method: "GET",
    url: "/yard/jobs",
    tag: "yard",
    summary: "Walk-rounds due out and back",
    access: may("day.see"),
    query: s.yardQuerySchema,
    answer: s.yardJobsSchema,
  }),
} as const;
