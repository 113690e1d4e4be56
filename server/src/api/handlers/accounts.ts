import { hashJson } from "@setfair/records";
import { createWords } from "@setfair/words";
import { checkPassword, hashPassword } from "../../auth/passwords.ts";
import type { Role } from "../../auth/roles.ts";
import { signIn } from "../../auth/sign-in.ts";
import type { AccountRow, Store } from "../../store/types.ts";
import { refuseOtherBase } from "../based-on.ts";
import type { Handlers } from "../call.ts";
import { setSessionCookie } from "../guard.ts";
import { badField, Refusal } from "../refusal.ts";

const words = createWords();

const shown = ({ id, name, login, role, disabledAt, createdAt }: AccountRow) => {
  if (role === "hirer") throw new Error(`account ${id}: a hirer has no sign-in`);
  const version = hashJson({ name, role, shut: disabledAt !== null }).slice(0, 16);
  return { id, name, login, role, shutAt: disabledAt, createdAt, version };
};

async function accountOf(store: Store, id: string): Promise<AccountRow> {
  const account = await store.accounts.get(id);
  if (account === null) throw new Refusal("notFound");
  return account;
}

/** Somebody has to be able to let others in: the last open manager stays one. */
async function refuseLastManager(store: Store, id: string, next: { role: Role; shut: boolean }) {
  const isOpenManager = ({ role, disabledAt }: AccountRow) => role === "manager" && disabledAt === null;
  const managers = (await store.accounts.list()).filter(isOpenManager);
  if (!managers.some((each) => each.id === id) || managers.length > 1) return;
  if (next.role !== "manager") throw badField("role", words.t("accounts.lastManager"));
  if (next.shut) throw badField("shut", words.t("accounts.lastManager"));
}

export const accountHandlers = {
  async listAccounts({ signed }) {
    return { accounts: (await signed.store.accounts.list()).map(shown) };
  },

  async addAccount({ signed, body }) {
    const { password, ...rest } = body;
    const passwordHash = await hashPassword(password);
    return signed.store.within(async (inner) => {
      const made = await inner.accounts.create({ ...rest, passwordHash });
      if (!made.ok) throw badField("login", words.t("accounts.loginTaken"));
      const { id, role } = made.account;
      await inner.audit.add({ by: signed.account.id, act: "account.added", about: id, document: { role } });
      return shown(made.account);
    });
  },

  async changeAccount({ signed, params, query, body }) {
    const { name, role, shut } = body;
    if (params.id === signed.account.id && shut) throw badField("shut", words.t("accounts.notYourself"));
    return signed.store.within(async (inner) => {
      const before = await accountOf(inner, params.id);
      const kept = { name: before.name, role: before.role, shut: before.disabledAt !== null };
      refuseOtherBase(query.basedOn, { path: "account", version: shown(before).version, value: kept }, body);
      await refuseLastManager(inner, params.id, { role, shut });
      const disabled = shut === (before.disabledAt !== null) ? {} : { disabled: shut };
      await inner.accounts.update(params.id, { name, role, ...disabled });
      await inner.audit.add({
        by: signed.account.id,
        act: "account.changed",
        about: params.id,
        document: { role, shut },
      });
      return shown(await accountOf(inner, params.id));
    });
  },

  async setPassword({ signed, params, body }) {
    await accountOf(signed.store, params.id);
    const passwordHash = await hashPassword(body.password);
    await signed.store.within(async (inner) => {
      await inner.accounts.update(params.id, { passwordHash });
      await inner.audit.add({
        by: signed.account.id,
        act: "account.passwordSet",
        about: params.id,
        document: {},
      });
    });
    return { done: true as const };
  },

  async changeOwnPassword({ context, signed, body, reply }) {
    const { account, store } = signed;
    const secret = await context.database.system.accountByLogin(account.login);
    if (!(await checkPassword(secret?.passwordHash ?? null, body.current)))
      throw badField("current", words.t("accounts.wrongPassword"));
    const passwordHash = await hashPassword(body.password);
    await store.within(async (inner) => {
      await inner.accounts.update(account.id, { passwordHash });
      await inner.audit.add({
        by: account.id,
        act: "account.passwordChanged",
        about: account.id,
        document: {},
      });
    });
    // every session ended with the old password; this one goes on
    const answer = await signIn(context.database, account.login, body.password, context.now());
    if (answer.ok) setSessionCookie(context, reply, answer);
    return { done: true as const };
  },
} satisfies Partial<Handlers>;
