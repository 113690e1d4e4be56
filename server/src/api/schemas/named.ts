import * as z from "zod";

/** Gives a schema its name in the OpenAPI document, so that the generated types name it too. */
export function named<T extends z.core.$ZodType>(id: string, schema: T): T {
  z.globalRegistry.add(schema, { id });
  return schema;
}
