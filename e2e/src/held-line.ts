import { connect, createServer, type Socket } from "node:net";

export interface HeldLine {
  /** address that leads to the server through this line */
  readonly url: string;
  /**
   * Lets the next upload begin and holds it there: resolves once more than `bytes` of one connection have come
   * without an end. Nothing further goes through until {@link cut}.
   */
  holdUpload(bytes: number): Promise<void>;
  /** breaks every connection, as when the server dies, and lets new ones through again */
  cut(): void;
  close(): void;
}

/** A line to a server, byte for byte, that can be held in the middle of an upload. */
export async function holdLine(serverUrl: string): Promise<HeldLine> {
  const { port, protocol } = new URL(serverUrl);
  const open = new Set<Socket>();
  let hold: { readonly bytes: number; readonly held: () => void } | null = null;
  const line = createServer((near) => {
    const far = connect(Number(port), "127.0.0.1");
    const end = () => {
      for (const socket of [near, far]) {
        socket.destroy();
        open.delete(socket);
      }
    };
    let since = 0;
    near.on("data", (part) => {
      since += part.length;
      if (hold !== null && since > hold.bytes) {
        near.pause();
        hold.held();
        return;
      }
      far.write(part);
    });
    far.on("data", (part) => {
      since = 0; // an answer ends what was sent before it
      near.write(part);
    });
    for (const socket of [near, far]) {
      open.add(socket);
      socket.on("error", end).on("close", end);
    }
  });
  await new Promise<void>((resolve) => line.listen(0, "127.0.0.1", resolve));
  const address = line.address();
  if (address === null || typeof address === "string") throw new Error("no port");
  const cut = () => {
    hold = null;
    for (const socket of open) socket.destroy();
  };
  return {
    url: `${protocol}//127.0.0.1:${address.port}`,
    holdUpload: (bytes) =>
      new Promise((resolve) => {
        hold = { bytes, held: resolve };
      }),
    cut,
    close: () => {
      cut();
      line.close();
    },
  };
}
