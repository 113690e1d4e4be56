import { readFile, stat } from "node:fs/promises";

/** What the command needs from outside; tests hand in their own. */
export interface Io {
  readonly out: (text: string) => void;
  readonly err: (text: string) => void;
  readonly readFile: (path: string) => Promise<Uint8Array>;
  readonly readStandardInput: () => Promise<Uint8Array>;
  readonly isFolder: (path: string) => Promise<boolean>;
  readonly isFile: (path: string) => Promise<boolean>;
  /** resolves when the command is told to stop (Ctrl+C, end of the service) */
  readonly untilStopped: () => Promise<void>;
  readonly env: Readonly<Record<string, string | undefined>>;
}

export function nodeIo(): Io {
  return {
    out: (text) => void process.stdout.write(text),
    err: (text) => void process.stderr.write(text),
    readFile: (path) => readFile(path),
    readStandardInput: async () => {
      const chunks: Uint8Array[] = [];
      for await (const chunk of process.stdin) chunks.push(Buffer.from(chunk));
      return Buffer.concat(chunks);
    },
    isFolder: async (path) => (await stat(path).catch(() => null))?.isDirectory() ?? false,
    isFile: async (path) => (await stat(path).catch(() => null))?.isFile() ?? false,
    untilStopped: () =>
      new Promise((resolve) => {
        process.once("SIGINT", () => resolve());
        process.once("SIGTERM", () => resolve());
      }),
    env: process.env,
  };
}
