import { operation } from "../operation.ts";
import * as s from "../schemas/index.ts";
import { basedOn, byId, may } from "./shared.ts";

export const accountsOperations = {
  listAccounts: operation({
    method: "GET",
    url: "/accounts",
    tag: "accounts",
    summary: "Everybody who signs in at this depot, those that are shut too",
    access: may("account.manage"),
    answer: s.accountsSchema,
  }),
  addAccount: operation({
    method: "POST",
    url: "/accounts",
    tag: "accounts",
    summary: "One more who signs in, with a first password that they change themselves",
    access: may("account.manage"),
    body: s.newAccountSchema,
    answer: s.accountSchema,
  }),
  changeAccount: operation({
    method: "PUT",
    url: "/accounts/:id",
    tag: "accounts",
    summary: "Name, role, or shut; they are signed out everywhere. One manager always stays",
    access: may("account.manage"),
    params: byId,
    query: basedOn,
    body: s.changeAccountSchema,
    answer: s.accountSchema,
  }),
  setPassword: operation({
    method: "PUT",
    url: "/accounts/:id/password",
    tag: "accounts",
    summary: "A new password for somebody who forgot theirs; they are signed out everywhere",
    access: may("account.manage"),
    params: byId,
    body: s.setPasswordSchema,
    answer: s.doneSchema,
  }),
  changeOwnPassword: operation({
    method: "PUT",
    url: "/session/password",
    tag: "session",
    summary: "One's own password, by the one that held so far; signed out everywhere but here",
    access: may("day.see"),
    body: s.ownPasswordSchema,
    answer: s.doneSchema,
    perMinute: 10,
  }),
} as const;
