/** For tests only: a mail server on this machine that takes its time, and counts what it took. */
import { SMTPServer } from "smtp-server";

export interface Mailbox {
  readonly url: string;
  /** message ids, each as often as it was taken */
  readonly taken: readonly string[];
  /** ends when the next mail begins to arrive */
  arriving(): Promise<void>;
  close(): Promise<void>;
}

/** @param slowMs between the last byte and the answer */
export async function openMailbox(slowMs: number): Promise<Mailbox> {
  const taken: string[] = [];
  let tell: () => void = () => undefined;
  const server = new SMTPServer({
    authOptional: true,
    disabledCommands: ["STARTTLS"],
    onMailFrom(_address, _session, done) {
      tell();
      done();
    },
    onData(stream, _session, done) {
      const chunks: Buffer[] = [];
      stream.on("data", (chunk: Buffer) => chunks.push(chunk));
      stream.on("end", () => {
        const [, id = ""] = /^message-id: <([^>]+)>/im.exec(Buffer.concat(chunks).toString("latin1")) ?? [];
        setTimeout(() => {
          taken.push(id);
          done();
        }, slowMs);
      });
    },
  });
  // whoever was ended in the middle breaks the line
  server.on("error", () => undefined);
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  const { port } = server.server.address() as { port: number };
  return {
    url: `smtp://127.0.0.1:${port}`,
    taken,
    arriving: () =>
      new Promise((resolve) => {
        tell = resolve;
      }),
    close: () => new Promise((resolve) => server.close(() => resolve())),
  };
}
