import type { FastifyInstance, FastifyReply, FastifyRequest } from "fastify";
import type { AppContext } from "../context.ts";
import type { Handlers, Signed } from "./call.ts";
import { answerError } from "./error-answer.ts";
import { guard, whoSigned } from "./guard.ts";
import type { Operation } from "./operation.ts";
import { type OperationId, operations } from "./operations.ts";
import { Refusal } from "./refusal.ts";
import { routeSchema } from "./route-schema.ts";
import { showByRight } from "./show-by-right.ts";

declare module "fastify" {
  interface FastifyRequest {
    signed: Signed | null;
  }
}

/** A handler with its types worn off: the operation's schema has checked what they promise. */
type PlainHandler = (call: {
  context: AppContext;
  signed: Signed | null;
  params: unknown;
  query: unknown;
  body: unknown;
  request: FastifyRequest;
  reply: FastifyReply;
}) => Promise<unknown>;

/** Registers every operation on an instance that is mounted below `/api`. */
export function registerOperations(api: FastifyInstance, context: AppContext, handlers: Handlers): void {
  api.decorateRequest("signed", null);
  api.setErrorHandler((error, request, reply) => answerError(error, request, reply));
  for (const id of Object.keys(operations) as OperationId[]) {
    const operation: Operation = operations[id];
    // the union of all handlers cannot be called; each was checked against its own operation in Handlers
    const handle = handlers[id] as PlainHandler;
    const show = showByRight(operation);
    api.route({
      method: operation.method,
      url: operation.url,
      schema: routeSchema(id),
      exposeHeadRoute: false,
      ...(operation.bodyLimit === undefined ? {} : { bodyLimit: operation.bodyLimit }),
      config:
        operation.perMinute === undefined
          ? {}
          : { rateLimit: { max: operation.perMinute, timeWindow: "1 minute" } },
      onRequest: async (request) => {
        request.signed = await guard(context, operation, request);
      },
      handler: async (request, reply) => {
        const { params, query, body, signed } = request;
        const answer = await handle({ context, signed, params, query, body, request, reply });
        return reply.sent ? reply : show(answer, signed?.account.role ?? null);
      },
    });
  }
  api.setNotFoundHandler(async (request) => {
    if ((await whoSigned(context, request)) === null) throw new Refusal("unsigned");
    throw new Refusal("notFound");
  });
}
