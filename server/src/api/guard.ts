import "@fastify/cookie";
import type { FastifyReply, FastifyRequest } from "fastify";
import { may } from "../auth/roles.ts";
import { sessionOf } from "../auth/sign-in.ts";
import type { AppContext } from "../context.ts";
import type { Signed } from "./call.ts";
import type { Operation } from "./operation.ts";
import { Refusal } from "./refusal.ts";

export const SESSION_COOKIE = "setfair_session";

/** Hands a fresh session to the browser. */
export function setSessionCookie(
  context: AppContext,
  reply: FastifyReply,
  { token, session }: { readonly token: string; readonly session: { readonly expiresAt: string } },
): void {
  reply.setCookie(SESSION_COOKIE, token, {
    path: "/",
    httpOnly: true,
    sameSite: "lax",
    secure: context.secure,
    expires: new Date(session.expiresAt),
  });
}

/** Who signed the request; null where nobody is signed in. */
export async function whoSigned(context: AppContext, request: FastifyRequest): Promise<Signed | null> {
  const token = request.cookies[SESSION_COOKIE];
  if (token === undefined || token === "" || token.length > 200) return null;
  const session = await sessionOf(context.database, token);
  if (session === null) return null;
  return { account: session.account, scope: session.scope, store: context.database.storeFor(session.scope) };
}

/** Refuses a changing request that a page of another origin sent: the cookie is SameSite=Lax, this is the second bolt. */
export function refuseOtherOrigin(context: AppContext, request: FastifyRequest): void {
  if (request.method === "GET" || request.method === "HEAD" || request.method === "OPTIONS") return;
  const site = request.headers["sec-fetch-site"];
  if (typeof site === "string" && site !== "same-origin" && site !== "none") throw new Refusal("otherOrigin");
  const origin = request.headers.origin;
  if (origin === undefined) return;
  const own = [`http://${request.headers.host}`, `https://${request.headers.host}`, context.publicUrl];
  if (!own.includes(origin)) throw new Refusal("otherOrigin");
}

/** Lets a request through to an operation, or throws the refusal. Runs before the body is read. */
export async function guard(
  context: AppContext,
  operation: Operation,
  request: FastifyRequest,
): Promise<Signed | null> {
  refuseOtherOrigin(context, request);
  if (typeof operation.access === "string") return null;
  const signed = await whoSigned(context, request);
  if (signed === null) throw new Refusal("unsigned");
  if (!may(signed.account.role, operation.access.act)) throw new Refusal("notAllowed");
  return signed;
}
