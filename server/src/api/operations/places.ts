import * as z from "zod";
import { operation } from "../operation.ts";
import * as s from "../schemas/index.ts";
import { byId, may } from "./shared.ts";

export const placesOperations = {
  findPlaces: operation({
    method: "GET",
    url: "/places",
    tag: "trip",
    summary: "Places in Europe by name, from a gazetteer that is aboard; with height and time zone",
    access: may("hire.see"),
    query: z.object({
      q: z.string().min(2).max(80),
      country: z
        .string()
        .regex(/^[A-Z]{2}$/)
        .optional(),
    }),
    answer: s.placesSchema,
  }),
  readTripQuestion: operation({
    method: "GET",
    url: "/hires/:id/trip-question",
    tag: "trip",
    summary: "What the trip room is asked for this hire, for a browser that searches the stop plan itself",
    access: may("hire.see"),
    params: byId,
    answer: s.tripQuestionSchema,
  }),
} as const;
