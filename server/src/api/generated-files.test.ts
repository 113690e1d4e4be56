import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { documentFile, generateApiFiles, rightsFile, typesFile } from "./write-openapi.ts";

it("openapi.json, the web's types and who sees what are what the list of operations gives; else run server/src/api/write-openapi.ts", async () => {
  const { document, types, rights } = await generateApiFiles();
  expect(readFileSync(documentFile, "utf8") === document, "server/openapi.json is stale").toBe(true);
  expect(readFileSync(typesFile, "utf8") === types, "web/src/api/types.generated.ts is stale").toBe(true);
  expect(readFileSync(rightsFile, "utf8") === rights, "docs/who-sees-what.md is stale").toBe(true);
  expect(rights).not.toContain("not said");
});
