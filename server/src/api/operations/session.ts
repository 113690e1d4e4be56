import * as z from "zod";
import { operation } from "../operation.ts";
import * as s from "../schemas/index.ts";
import { byToken, may } from "./shared.ts";

export const sessionOperations = {
  health: operation({
    method: "GET",
    url: "/health",
    tag: "service",
    summary: "Is it up?",
    access: "open",
    answer: z.object({ ok: z.literal(true), version: z.string() }),
  }),
  signIn: operation({
    method: "POST",
    url: "/session",
    tag: "session",
    summary: "Sign in",
    access: "open",
    body: s.signInSchema,
    answer: s.sessionSchema,
    perMinute: 10,
  }),
  readSession: operation({
    method: "GET",
    url: "/session",
    tag: "session",
    summary: "Who am I?",
    access: may("day.see"),
    answer: s.sessionSchema,
  }),
  signOut: operation({
    method: "DELETE",
    url: "/session",
    tag: "session",
    summary: "Sign out",
    access: may("day.see"),
    answer: s.doneSchema,
  }),
  readSetup: operation({
    method: "GET",
    url: "/setup/:token",
    tag: "setup",
    summary: "Is this set-up link still open?",
    access: "setup",
    params: byToken,
    answer: s.setupStateSchema,
    perMinute: 20,
  }),
  findSetUpPlaces: operation({
    method: "GET",
    url: "/setup/:token/places",
    tag: "setup",
    summary: "Places by name while there is no firm yet, so that the depot is found without knowing degrees",
    access: "setup",
    params: byToken,
    query: z.object({ q: z.string().min(2).max(80) }),
    answer: s.placesSchema,
    perMinute: 200,
  }),
  setUp: operation({
    method: "POST",
    url: "/setup/:token",
    tag: "setup",
    summary: "Make the firm, its depot, its terms and the first manager",
    access: "setup",
    params: byToken,
    body: s.setupSchema,
    answer: s.doneSchema,
    perMinute: 20,
  }),
} as const;
