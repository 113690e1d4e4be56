import { createHash, randomBytes } from "node:crypto";
import type { Tablet } from "./tablet.ts";

export interface Walk {
  readonly hireId: string;
  readonly direction: "out" | "back";
  readonly tablet: number;
}

/** One thing that a person meant to keep; it must be at the depot exactly once. */
export interface Intent {
  readonly device: string;
  readonly chain: string;
  readonly kind: string;
  readonly about: string;
  readonly sha256?: string;
}

/** The smallest picture that is a JPEG: one grey point. */
const POINT = Buffer.from(
  "/9j/2wBDAAYEBQYFBAYGBQYHBwYIChAKCgkJChQODwwQFxQYGBcUFhYaHSUfGhsjHBYWICwgIyYnKSopGR8tMC0oMCUoKSj/2wBDAQcHBwoIChMKChMoGhYaKCgoKCgoKCgoKCgoKCgoKCgoKCgoKCgoKCgoKCgoKCgoKCgoKCgoKCgoKCgoKCgoKCj/wAARCAABAAEDASIAAhEBAxEB/8QAFQABAQAAAAAAAAAAAAAAAAAAAAT/xAAUEAEAAAAAAAAAAAAAAAAAAAAA/8QAFAEBAAAAAAAAAAAAAAAAAAAAAP/EABQRAQAAAAAAAAAAAAAAAAAAAAD/2gAMAwEAAhEDEQA/AKwAf//Z",
  "base64",
);

/** A picture of its own, of some thousand bytes: the point with a comment of noise. */
export function makePhotograph(random: () => number): Uint8Array<ArrayBuffer> {
  const noise = randomBytes(4000 + Math.floor(random() * 50_000));
  const head = Buffer.from([0xff, 0xfe, 0, 0]);
  head.writeUInt16BE(noise.length + 2, 2);
  return new Uint8Array(Buffer.concat([POINT.subarray(0, 2), head, noise, POINT.subarray(2)]));
}

const READINGS = ["odometer", "fuel", "def", "lpg", "battery12", "water", "damp"];
const LOOKS = ["tyres", "windscreen", "awning", "roof", "underside", "lockers"];
const MARKS = 3;

/** Walks round one vehicle on one tablet and signs; gives what was meant to be kept. */
export async function walkRound(
  tablet: Tablet,
  device: string,
  walk: Walk,
  random: () => number,
): Promise<readonly Intent[]> {
  const { direction } = walk;
  const chain = `${walk.hireId}.${direction}`;
  const refs = { hireId: walk.hireId };
  const meant: Intent[] = [];
  const there = async (kind: string, about: string) =>
    (await tablet.records(chain)).some(
      ({ record }) =>
        record.kind === kind &&
        (kind === "signature" ? record.content.purpose === about : record.content.about === about),
    );
  const keep = async (
    kind: "reading" | "look" | "mark" | "walkStarted" | "walkFinished" | "signature",
    about: string,
    content: Parameters<Tablet["keep"]>[0]["content"],
  ) => {
    await tablet.keep({ kind, refs, chain, content }, () => there(kind, about));
    meant.push({ device, chain, kind, about });
    // sends on the way, as the device does after each touch, but does not wait for it to end well
    if (random() < 0.3) await tablet.flush();
  };
  const photograph = async (about: string): Promise<string> => {
    const bytes = makePhotograph(random);
    const sha256 = createHash("sha256").update(bytes).digest("hex");
    await tablet.photograph(bytes, { about, refs, chain, direction }, () => there("photograph", about));
    meant.push({ device, chain, kind: "photograph", about, sha256 });
    return sha256;
  };
  await keep("walkStarted", "start", { about: "start", direction });
  for (const about of READINGS)
    await keep("reading", about, { about, direction, value: Math.round(random() * 1000), unit: "x" });
  for (const about of LOOKS) await keep("look", about, { about, direction, saw: "same" });
  for (let n = 0; n < MARKS; n++) {
    const about = `mark.${n}`;
    const sha256 = await photograph(`${about}.picture`);
    await keep("mark", about, { about, direction, photographs: [sha256] });
  }
  await photograph("view.front");
  await keep("walkFinished", "end", { about: "end", direction });
  const covered = (await tablet.records(chain)).map(({ record }) => ({ id: record.id, hash: record.hash }));
  await keep("signature", "condition", {
    records: covered,
    signer: { name: "Sam Invented" },
    role: "hirer",
    purpose: "condition",
    shown: { text: "This is how the vehicle is.", language: "en-GB" },
    strokes: [
      [
        { x: 0, y: 0 },
        { x: 1, y: 2 },
      ],
    ],
  });
  return meant;
}
