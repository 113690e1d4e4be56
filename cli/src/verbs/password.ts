import { randomBytes } from "node:crypto";
import { existsSync } from "node:fs";
import { join } from "node:path";
import { openData } from "../open-data.ts";
import { InputError, UsageError } from "../usage-error.ts";
import type { Verb } from "../verb.ts";
import { WORDS } from "../words.ts";
import { dataFolder } from "./serve.ts";

/**
 * `setfair password <name> [--data <data folder>]`: a fresh password for somebody who signs in, and lets them in where
 * they were shut out: the way back where the last manager forgot theirs. Printed once, kept as a hash only. Exit 1
 * where nobody of that name signs in.
 */
export const passwordVerb: Verb = {
  options: { data: { type: "string" } },
  maxPositionals: 1,
  run: async ({ io, flags, positionals }) => {
    const login = positionals[0];
    if (login === undefined) throw new UsageError(WORDS.t("cli.password.missing"));
    const folder = dataFolder(flags.data, io);
    const { SETFAIR_DATABASE_URL: url } = io.env;
    if (!url && !existsSync(join(folder, "setfair.sqlite")))
      throw new InputError(WORDS.t("cli.backup.noData", { path: folder }));
    const { hashPassword } = await import("@setfair/server");
    const database = await openData(folder, io);
    try {
      const account = await database.system.accountByLogin(login);
      if (account === null) {
        io.err(`${WORDS.t("cli.password.nobody", { login })}\n`);
        return 1;
      }
      const password = randomBytes(12).toString("base64url");
      const { accounts, audit } = database.storeFor(account);
      const passwordHash = await hashPassword(password);
      await accounts.update(account.id, { passwordHash, disabled: false });
      await audit.add({ by: "system", act: "account.passwordSet", about: account.id, document: {} });
      io.out(`${WORDS.t("cli.password.done", { login: account.login, password })}\n`);
      return 0;
    } finally {
      await database.close();
    }
  },
};
