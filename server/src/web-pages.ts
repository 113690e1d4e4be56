import { existsSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import fastifyStatic from "@fastify/static";
import type { FastifyInstance, FastifyReply } from "fastify";

/** The built web application: looked for upwards from this file, in source and in the bundle alike; null where it is not built. */
export function findWebFolder(): string | null {
  let folder = dirname(fileURLToPath(import.meta.url));
  for (let up = 0; up < 5; up++) {
    const candidate = join(folder, "web", "dist");
    if (existsSync(join(candidate, "index.html"))) return candidate;
    folder = dirname(folder);
  }
  return null;
}

/** Which page answers an address of the application itself: desk, yard or the hirer's guide. */
export function pageFor(path: string): string {
  if (path === "/yard" || path.startsWith("/yard/")) return "yard.html";
  return path.startsWith("/g/") ? "guide.html" : "index.html";
}

/** Files of the build, and the right page for every address that is not a file. */
export async function registerWeb(app: FastifyInstance, folder: string): Promise<void> {
  await app.register(fastifyStatic, {
    root: folder,
    wildcard: false,
    index: ["index.html"],
    // the build lays pressed copies beside the files
    preCompressed: true,
    setHeaders(reply, path) {
      // built files carry their hash in the name; pages and the service worker must be asked for again
      const hashed = path.includes(`${join(folder, "assets")}`);
      reply.header("cache-control", hashed ? "public, max-age=31536000, immutable" : "no-cache");
    },
  });
  app.setNotFoundHandler(async (request, reply): Promise<FastifyReply> => {
    const path = request.url.split("?")[0] ?? "/";
    const isPage = request.method === "GET" && !/\.[a-z0-9]{2,5}$/i.test(path);
    if (!isPage) return reply.status(404).type("text/plain").send("not found");
    const page = pageFor(path);
    return reply
      .header("cache-control", "no-cache")
      .sendFile(existsSync(join(folder, page)) ? page : "index.html");
  });
}
