import { mkdirSync, writeFileSync } from "node:fs";
import { dirname, resolve } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import openapiTS, { astToString } from "openapi-typescript";
import { openApiDocument } from "./document.ts";

const root = resolve(dirname(fileURLToPath(import.meta.url)), "../../..");
export const documentFile = resolve(root, "server/openapi.json");
export const typesFile = resolve(root, "web/src/api/types.generated.ts");

/** The two generated files as they should be: the OpenAPI document, and the web's types from it. */
export async function generateApiFiles(): Promise<{ readonly document: string; readonly types: string }> {
  const document = `${JSON.stringify(await openApiDocument(), null, 1)}\n`;
  const types = astToString(await openapiTS(document, { immutable: true }));
  return {
    document,
    types: `// Made from server/openapi.json by server/src/api/write-openapi.ts; do not edit.\n${types}`,
  };
}

async function main(): Promise<void> {
  const files = await generateApiFiles();
  mkdirSync(dirname(typesFile), { recursive: true });
  writeFileSync(documentFile, files.document);
  writeFileSync(typesFile, files.types);
}

if (process.argv[1] !== undefined && import.meta.url === pathToFileURL(process.argv[1]).href) await main();
