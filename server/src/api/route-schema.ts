import type { Operation } from "./operation.ts";
import { type OperationId, operations } from "./operations.ts";
import { errorAnswers } from "./schemas/index.ts";

/** The schema of a route as fastify and its document take it. */
export function routeSchema(id: OperationId): Record<string, unknown> {
  const operation: Operation = operations[id];
  return {
    operationId: id,
    tags: [operation.tag],
    summary: operation.summary,
    ...(operation.params ? { params: operation.params } : {}),
    ...(operation.query ? { querystring: operation.query } : {}),
    ...(operation.body ? { body: operation.body } : {}),
    response: { ...(operation.answer ? { 200: operation.answer } : {}), ...errorAnswers },
    ...(typeof operation.access === "string" ? { security: [] } : {}),
  };
}
