import { checkRecord, type DepotRecord } from "@setfair/records";
import type { AppContext } from "../../context.ts";
import { type HireData, partOf } from "../../desk/hire-data.ts";
import { additionsWindow, missedChain } from "../../desk/hirer-additions.ts";
import { checkAnswer, type HirerAnswer, keepAnswer } from "../../desk/hirer-answers.ts";
import { requireStage } from "../../desk/require-stage.ts";
import { hashesIn, photographsNamed } from "../../desk/statement-evidence.ts";
import type { HireStage, Store } from "../../store/types.ts";
import { badField, Refusal } from "../refusal.ts";
import { appendRecords } from "./append-records.ts";

/** What the hirer's phone may record: on which chain of the hire, of which kinds, in which stages. */
const CHAINS: Readonly<
  Record<string, { readonly kinds: readonly string[]; readonly stages: readonly HireStage[] }>
> = {
  road: { kinds: ["reading", "help"], stages: ["booked", "handedOver", "onHire", "returned"] },
  missed: { kinds: ["mark", "photograph"], stages: ["handedOver", "onHire", "returned", "settled"] },
  statement: { kinds: ["reply", "photograph"], stages: ["returned", "settled", "closed"] },
};

/** Refuses what is not the hirer's to record, naming the field. */
export async function checkGuideRecords(
  store: Store,
  data: HireData,
  sent: readonly unknown[],
): Promise<readonly DepotRecord[]> {
  const records: DepotRecord[] = [];
  for (const [k, one] of sent.entries()) {
    const { record, problems } = checkRecord(one);
    if (record === null)
      throw new Refusal("recordRefused", {
        problems: problems.map(({ path, expected }) => ({ path: `records.${k}.${path}`, expected })),
      });
    checkPlace(data, record, k);
    await checkPhotographs(store, data, record, k);
    if (record.chain === missedChain(data.row.id)) checkMissed(data, record, k);
    if (record.kind === "reply")
      await checkAnswer(store, await shown(data), answerOf(record), {
        line: `records.${k}.content.about`,
        text: `records.${k}.content.text`,
      });
    records.push(record);
  }
  return records;
}

function checkPlace(data: HireData, record: DepotRecord, k: number): void {
  const { id } = data.row;
  const chain = CHAINS[record.chain.slice(id.length + 1)];
  if (chain === undefined || !record.chain.startsWith(`${id}.`))
    throw badField(
      `records.${k}.chain`,
      `expected ${Object.keys(CHAINS)
        .map((name) => `${id}.${name}`)
        .join(" or ")}`,
    );
  if (!chain.kinds.includes(record.kind))
    throw badField(`records.${k}.kind`, `expected ${chain.kinds.join(" or ")}`);
  if (record.refs.hireId !== id) throw badField(`records.${k}.refs.hireId`, "expected the hire of this link");
  if (record.refs.vehicleId !== undefined && record.refs.vehicleId !== data.row.vehicleId)
    throw badField(`records.${k}.refs.vehicleId`, "expected the vehicle of this hire");
  requireStage(data, ...chain.stages);
}

/** What a record of this hire names the link opens: so it names no photograph that came in for another hire. */
async function checkPhotographs(store: Store, data: HireData, { content }: DepotRecord, k: number) {
  const known = photographsNamed(data.records);
  for (const sha256 of hashesIn(content)) {
    if (known.includes(sha256)) continue;
    const here = await store.photographs.get(sha256);
    if (here !== null && here.hireId !== data.row.id)
      throw badField(
        `records.${k}.content.${content.sha256 === sha256 ? "sha256" : "photographs"}`,
        "expected a photograph of this hire",
      );
  }
}

/** In time by the phone's clock or by ours: a phone may have had no signal, and its clock may be wrong. */
function checkMissed(data: HireData, { content, refs, deviceTime }: DepotRecord, k: number): void {
  if (content.by !== "hirer") throw badField(`records.${k}.content.by`, "expected hirer");
  if (content.direction !== "out") throw badField(`records.${k}.content.direction`, "expected out");
  if (refs.vehicleId === undefined)
    throw badField(`records.${k}.refs.vehicleId`, "expected the vehicle of this hire");
  const window = additionsWindow(data);
  if (window === null) throw badField(`records.${k}.deviceTime`, "expected a time after the keys went");
  if (window.isOver && deviceTime > window.until)
    throw badField(
      `records.${k}.deviceTime`,
      `expected a time until ${window.until}: the time to add is over`,
    );
}

async function shown(data: HireData): Promise<HireData> {
  if ((partOf(data, "settlement")?.frozenAt ?? null) === null) throw new Refusal("notFound");
  return data;
}

const answerOf = ({ id, content, deviceTime }: DepotRecord): HirerAnswer => {
  const { about, answer, text, photographs } = content as {
    readonly about: string;
    readonly answer: HirerAnswer["answer"];
    readonly text: string;
    readonly photographs?: readonly string[];
  };
  return {
    lineId: about,
    answer,
    text,
    from: { recordId: id, photographs: photographs ?? [], saidAt: deviceTime },
  };
};

/** Appends them all or none; an answer to the statement counts from then on, once however often it is sent. */
export function keepGuideRecords(
  context: AppContext,
  store: Store,
  data: HireData,
  records: readonly DepotRecord[],
) {
  return store.within(async (inner) => {
    const answer = await appendRecords(inner, records);
    const again = new Set(answer.receipts.flatMap((each) => (each.again ? [each.id] : [])));
    for (const record of records)
      if (record.kind === "reply" && !again.has(record.id))
        await keepAnswer(inner, data, answerOf(record), context.now());
    return answer;
  });
}
