import { BadInput } from "@setfair/engine";
import { createWords } from "@setfair/words";
import type { FastifyError, FastifyReply, FastifyRequest } from "fastify";
import { hasZodFastifySchemaValidationErrors } from "fastify-type-provider-zod";
import { Refusal, type RefusalCode } from "./refusal.ts";

const words = createWords();

/** `/stops/0/arrive` as `stops.0.arrive`. */
const fieldPath = (pointer: string) =>
  pointer
    .split("/")
    .filter((part) => part !== "")
    .join(".");

/** The disk is full, as the file system, SQLite and PostgreSQL say it. */
const NO_ROOM = new Set(["ENOSPC", "EDQUOT", "SQLITE_FULL", "53100"]);

/** Turns whatever was thrown into a refusal; null for a bug of ours. */
export function refusalOf(error: unknown): Refusal | null {
  if (error instanceof Refusal) return error;
  if (error instanceof BadInput) return new Refusal("badInput", { problems: error.problems });
  if (hasZodFastifySchemaValidationErrors(error)) {
    return new Refusal("badInput", {
      problems: error.validation.map((issue) => ({
        path: fieldPath(issue.instancePath),
        expected: issue.message ?? "",
      })),
    });
  }
  const { statusCode = 500, message = "", code } = error as Partial<FastifyError>;
  if (code !== undefined && NO_ROOM.has(code)) return new Refusal("noRoom");
  if (statusCode === 413) return new Refusal("tooLarge");
  if (statusCode === 429) return new Refusal("tooMany");
  if (statusCode >= 400 && statusCode < 500)
    return new Refusal("badInput", { problems: [{ path: "", expected: message }] });
  return null;
}

function bodyOf(code: RefusalCode | "broken", refusal: Refusal | null) {
  const id = `error.${code}`;
  return {
    error: {
      code,
      message: words.has(id) ? words.say(id) : code,
      problems: refusal?.problems ?? [],
      ...(refusal !== null && refusal.findings.length > 0 ? { findings: refusal.findings } : {}),
    },
  };
}

/** The one shape of every error; a bug of ours is logged and told without its inside. */
export function answerError(error: unknown, request: FastifyRequest, reply: FastifyReply): FastifyReply {
  const refusal = refusalOf(error);
  const log = (what: string) => request.log.error({ err: error, operation: request.routeOptions.url }, what);
  if (refusal !== null) {
    // what fails outside is for whoever runs the server to see, and only told to whoever asked
    if (refusal.status >= 500) log("something outside failed");
    return reply.status(refusal.status).send(bodyOf(refusal.code, refusal));
  }
  log("unexpected error");
  return reply.status(500).send(bodyOf("broken", null));
}
