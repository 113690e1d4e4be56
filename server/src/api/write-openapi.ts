import { mkdirSync, writeFileSync } from "node:fs";
import { dirname, resolve } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import openapiTS, { astToString } from "openapi-typescript";
import { openApiDocument } from "./document.ts";
import { whoSeesWhat } from "./rights-document.ts";

const root = resolve(dirname(fileURLToPath(import.meta.url)), "../../..");
export const documentFile = resolve(root, "server/openapi.json");
export const rightsFile = resolve(root, "docs/who-sees-what.md");
export const typesFile = resolve(root, "web/src/api/types.generated.ts");

interface ApiFiles {
  readonly document: string;
  readonly types: string;
  readonly rights: string;
}

/** The generated files as they should be: the OpenAPI document, the web's types from it, and who sees what. */
export async function generateApiFiles(): Promise<ApiFiles> {
  const document = `${JSON.stringify(await openApiDocument(), null, 1)}\n`;
  const types = astToString(await openapiTS(document, { immutable: true }));
  return {
    document,
    types: `// Made from server/openapi.json by server/src/api/write-openapi.ts; do not edit.\n${types}`,
    rights: whoSeesWhat(),
  };
}

async function main(): Promise<void> {
  const files = await generateApiFiles();
  mkdirSync(dirname(typesFile), { recursive: true });
  writeFileSync(documentFile, files.document);
  writeFileSync(typesFile, files.types);
  writeFileSync(rightsFile, files.rights);
}

if (process.argv[1] !== undefined && import.meta.url === pathToFileURL(process.argv[1]).href) await main();
