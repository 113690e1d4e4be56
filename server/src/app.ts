import compress from "@fastify/compress";
import cookie from "@fastify/cookie";
import rateLimit from "@fastify/rate-limit";
import Fastify, { type FastifyInstance } from "fastify";
import { serializerCompiler, validatorCompiler } from "fastify-type-provider-zod";
import { openApiDocument } from "./api/document.ts";
import { handlers } from "./api/handlers/index.ts";
import { registerOperations } from "./api/register-operations.ts";
import type { AppContext } from "./context.ts";
import { registerSecurityHeaders } from "./security-headers.ts";
import { registerWeb } from "./web-pages.ts";

export interface AppOptions {
  /** the built web application; null serves the API alone */
  readonly webFolder: string | null;
  /** what goes wrong is written to standard error, a line of JSON each */
  readonly log?: boolean;
  readonly https?: { readonly cert: string; readonly key: string };
}

/** JSON bodies above this are refused, but for records and photographs. */
const BODY_LIMIT = 512_000;

/** The whole HTTP side, not yet listening. */
export async function buildApp(context: AppContext, options: AppOptions): Promise<FastifyInstance> {
  const app = Fastify({
    bodyLimit: BODY_LIMIT,
    logController: new Fastify.LogController({ disableRequestLogging: true }), // addresses hold link tokens
    logger: options.log === true ? { level: "warn", stream: process.stderr } : false,
    ...(options.https === undefined ? {} : { https: options.https }),
  }) as FastifyInstance;
  app.setValidatorCompiler(validatorCompiler);
  app.setSerializerCompiler(serializerCompiler);
  await app.register(cookie);
  await app.register(rateLimit, { global: false });
  await app.register(compress, { global: true, threshold: 2048 });
  await registerSecurityHeaders(app, context, options.webFolder);
  let document: Promise<object> | null = null;
  await app.register(
    async (api) => {
      // photographs come as they are: their handler reads the stream
      api.addContentTypeParser(["image/jpeg", "application/octet-stream"], (_request, payload, done) =>
        done(null, payload),
      );
      api.addHook("onSend", async (_request, reply) => {
        if (!reply.hasHeader("cache-control")) reply.header("cache-control", "no-store");
      });
      api.get("/openapi.json", async () => {
        document ??= openApiDocument();
        return document;
      });
      registerOperations(api, context, handlers);
    },
    { prefix: "/api" },
  );
  if (options.webFolder !== null) await registerWeb(app, options.webFolder);
  return app;
}
