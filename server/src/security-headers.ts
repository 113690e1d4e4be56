import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import helmet from "@fastify/helmet";
import type { FastifyInstance } from "fastify";
import type { AppContext } from "./context.ts";

/** The one style element that the component library adds by itself; its text is constant, and a browser test would show it refused. */
const COMPONENT_STYLE = "'sha256-38RhXrc7EdReTKsOm23ZPOCUgniTUUcjky8QOOrQx6o='";

/** Hashes that the web build found in its own styles (`csp.json` beside the pages), with the known one. */
function styleHashes(webFolder: string | null): readonly string[] {
  const file = webFolder === null ? "" : join(webFolder, "csp.json");
  if (file === "" || !existsSync(file)) return [COMPONENT_STYLE];
  const found: unknown = JSON.parse(readFileSync(file, "utf8"));
  const listed =
    typeof found === "object" && found !== null && "styleHashes" in found ? found.styleHashes : [];
  const hashes = Array.isArray(listed)
    ? listed.filter((hash): hash is string => typeof hash === "string")
    : [];
  return [...new Set([COMPONENT_STYLE, ...hashes.map((hash) => `'${hash.replaceAll("'", "")}'`)])];
}

/** A strict content security policy from the first screen: our own files only, nothing inline. */
export async function registerSecurityHeaders(
  app: FastifyInstance,
  context: AppContext,
  webFolder: string | null,
): Promise<void> {
  await app.register(helmet, {
    contentSecurityPolicy: {
      useDefaults: false,
      directives: {
        defaultSrc: ["'self'"],
        scriptSrc: ["'self'"],
        styleSrc: ["'self'", ...styleHashes(webFolder)],
        imgSrc: ["'self'", "blob:", "data:"],
        fontSrc: ["'self'"],
        connectSrc: ["'self'"],
        workerSrc: ["'self'"],
        manifestSrc: ["'self'"],
        objectSrc: ["'none'"],
        baseUri: ["'none'"],
        formAction: ["'self'"],
        frameAncestors: ["'none'"],
      },
    },
    hsts: context.secure ? { maxAge: 86_400, includeSubDomains: false } : false,
    xFrameOptions: { action: "deny" },
    referrerPolicy: { policy: "no-referrer" },
    // pages over plain HTTP on a LAN address are not secure contexts; the header would only warn there
    crossOriginOpenerPolicy: context.secure ? { policy: "same-origin" } : false,
    originAgentCluster: false,
  });
}
