import { ACTS, type Act, may } from "../../auth/roles.ts";
import { signIn, signOut } from "../../auth/sign-in.ts";
import { PAPER_RIGHTS } from "../../auth/who-sees-what.ts";
import type { AppContext } from "../../context.ts";
import { asDocument, type DepotDocument } from "../../desk/documents.ts";
import { dateOf, localOf } from "../../desk/local-time.ts";
import type { AccountRow, Store } from "../../store/types.ts";
import type { Handlers } from "../call.ts";
import { SESSION_COOKIE, setSessionCookie } from "../guard.ts";
import { Refusal } from "../refusal.ts";

async function sessionAnswer(context: AppContext, store: Store, account: AccountRow) {
  const [firm, depot] = [await store.firm.get(), await store.depot.get()];
  const {
    telephone,
    country,
    latitudeDeg,
    longitudeDeg,
    elevationM,
    distances = "km",
  } = asDocument<DepotDocument>(depot.document);
  const place = {
    name: depot.name,
    country,
    latitudeDeg,
    longitudeDeg,
    ...(elevationM === undefined ? {} : { elevationM }),
  };
  return {
    user: { id: account.id, name: account.name, login: account.login, role: account.role },
    firm: { id: firm.id, name: firm.name },
    depot: {
      id: depot.id,
      name: depot.name,
      telephone,
      timeZone: depot.timeZone,
      distances,
      place,
    },
    may: (Object.keys(ACTS) as Act[]).filter((act) => may(account.role, act)),
    papers: Object.entries(PAPER_RIGHTS).flatMap(([paper, act]) => (may(account.role, act) ? [paper] : [])),
    today: dateOf(localOf(context.now().toISOString(), depot.timeZone)),
    demo: context.demo,
  };
}

export const sessionHandlers = {
  async signIn({ context, body, reply }) {
    const answer = await signIn(context.database, body.login, body.password, context.now());
    if (!answer.ok) throw new Refusal("wrongSignIn");
    setSessionCookie(context, reply, answer);
    return sessionAnswer(context, context.database.storeFor(answer.session.scope), answer.session.account);
  },

  readSession: ({ context, signed }) => sessionAnswer(context, signed.store, signed.account),

  async signOut({ context, request, reply }) {
    await signOut(context.database, request.cookies[SESSION_COOKIE] ?? "");
    reply.clearCookie(SESSION_COOKIE, { path: "/" });
    return { done: true as const };
  },
} satisfies Partial<Handlers>;
