import swagger from "@fastify/swagger";
import Fastify from "fastify";
import {
  jsonSchemaTransform,
  jsonSchemaTransformObject,
  serializerCompiler,
  validatorCompiler,
} from "fastify-type-provider-zod";
import { ENGINE_VERSION } from "../desk/version.ts";
import { type OperationId, operations } from "./operations.ts";
import { withRights } from "./rights-document.ts";
import { routeSchema } from "./route-schema.ts";

/** The OpenAPI document of the API, made from the list of operations alone: no store, no handlers. */
export async function openApiDocument(): Promise<object> {
  const app = Fastify({ logger: false, exposeHeadRoutes: false });
  app.setValidatorCompiler(validatorCompiler);
  app.setSerializerCompiler(serializerCompiler);
  await app.register(swagger, {
    openapi: {
      openapi: "3.1.0",
      info: { title: "Setfair", version: ENGINE_VERSION, license: { name: "Apache-2.0" } },
      servers: [{ url: "/" }],
    },
    transform: jsonSchemaTransform,
    transformObject: jsonSchemaTransformObject,
  });
  await app.register(
    async (api) => {
      for (const id of Object.keys(operations) as OperationId[]) {
        api.route({
          method: operations[id].method,
          url: operations[id].url,
          schema: routeSchema(id),
          handler: async () => ({}),
        });
      }
    },
    { prefix: "/api" },
  );
  await app.ready();
  const document = withRights(app.swagger());
  await app.close();
  return document;
}
