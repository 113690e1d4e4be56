import type { FastifyReply, FastifyRequest } from "fastify";
import type { AppContext } from "../context.ts";
import type { AccountRow, Scope, Store } from "../store/types.ts";
import type { AnswerOf, BodyOf, ParamsOf, QueryOf } from "./operation.ts";
import type { OperationId, Operations } from "./operations.ts";

/** Who is signed in, and the rows of their depot. */
export interface Signed {
  readonly account: AccountRow;
  readonly scope: Scope;
  readonly store: Store;
}

type SignedOf<O> = O extends { readonly access: { readonly act: string } } ? Signed : null;

/** What a handler is given; everything has passed its schema and the role check. */
export interface Call<Id extends OperationId> {
  readonly context: AppContext;
  readonly signed: SignedOf<Operations[Id]>;
  readonly params: ParamsOf<Operations[Id]>;
  readonly query: QueryOf<Operations[Id]>;
  readonly body: BodyOf<Operations[Id]>;
  readonly request: FastifyRequest;
  readonly reply: FastifyReply;
}
export type Handler<Id extends OperationId> = (call: Call<Id>) => Promise<AnswerOf<Operations[Id]>>;
export type Handlers = { readonly [Id in OperationId]: Handler<Id> };
