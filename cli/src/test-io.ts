import type { Io } from "./io.ts";

/** A command's surroundings for tests: files by name, what was written kept. */
export function testIo(files: Readonly<Record<string, string | Uint8Array>> = {}, standardInput = "") {
  const written = { out: "", err: "" };
  const io: Io = {
    out: (text) => {
      written.out += text;
    },
    err: (text) => {
      written.err += text;
    },
    readFile: async (path) => {
      const file = files[path];
      if (file === undefined) throw Object.assign(new Error("no such file"), { code: "ENOENT" });
      return typeof file === "string" ? new TextEncoder().encode(file) : file;
    },
    readStandardInput: async () => new TextEncoder().encode(standardInput),
    isFolder: async (path) => path.endsWith("/"),
    isFile: async (path) => files[path] !== undefined,
    untilStopped: async () => {},
    env: {},
  };
  return { io, written };
}
