import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { documentFile, generateApiFiles, typesFile } from "./write-openapi.ts";

it("openapi.json and the web's types are what the list of operations gives; else run server/src/api/write-openapi.ts", async () => {
  const { document, types } = await generateApiFiles();
  expect(readFileSync(documentFile, "utf8") === document, "server/openapi.json is stale").toBe(true);
  expect(readFileSync(typesFile, "utf8") === types, "web/src/api/types.generated.ts is stale").toBe(true);
});
