import { secondLookFindings, settleHire } from "@setfair/engine";
import type { AppContext } from "../../context.ts";
import { conditionOf, inputNow, settlementOf } from "../../desk/after-hire.ts";
import { clockFindings } from "../../desk/clock-findings.ts";
import { NO_SETTLEMENT, toJson } from "../../desk/documents.ts";
import { freeze } from "../../desk/freeze.ts";
import { plainFinding } from "../../desk/glass.ts";
import { type HireData, partOf, readHireData } from "../../desk/hire-data.ts";
import { localOf } from "../../desk/local-time.ts";
import { moneyOfHire } from "../../desk/money-of-hire.ts";
import { accountNames } from "../../desk/names.ts";
import { differencesAnswer, settlementState } from "../../desk/page.ts";
import { questionsAnswer } from "../../desk/questions.ts";
import { directionOf, wholeRecords } from "../../desk/record-facts.ts";
import { requireStage } from "../../desk/require-stage.ts";
import { secondLookOf } from "../../desk/second-look.ts";
import { entriesOfHire } from "../../desk/settlement-entries.ts";
import { keepUse } from "../../desk/use/learn-from-returns.ts";
import { ENGINE_VERSION } from "../../desk/version.ts";
import type { Store } from "../../store/types.ts";
import type { Handlers, Signed } from "../call.ts";
import { badField, Refusal } from "../refusal.ts";
import { changeHire } from "./change-hire.ts";

async function differences(context: AppContext, { store }: Signed, id: string) {
  const data = await readHireData(store, id, context.now());
  requireStage(data, "returned", "settled", "closed");
  const answer = await conditionOf(store, data);
  const secondLook = secondLookOf(data, answer.result);
  return {
    differences: differencesAnswer(data, answer.result.differences, await accountNames(store)),
    result: answer.result,
    questions: questionsAnswer(data.records, answer.result.questions),
    outPhotographs: outPhotographs(data),
    secondLook: { ...secondLook, due: [...secondLook.due] },
    findings: [
      ...answer.findings,
      ...secondLookFindings(secondLook),
      ...clockFindings(
        await store.records.list({ hireId: id }),
        partOf(data, "readiness")?.keysOutAt ?? null,
      ),
    ].map(plainFinding),
  };
}

const outPhotographs = ({ records }: HireData) =>
  wholeRecords(records)
    .filter((record) => record.kind === "photograph" && directionOf(record) === "out")
    .map(({ content }) => ({ sha256: String(content.sha256), about: String(content.about) }));

/** Nothing is settled while a second look is due and its window is open. */
export async function requireSecondLook(store: Store, data: HireData): Promise<void> {
  const look = secondLookOf(data, (await conditionOf(store, data)).result);
  if (!look.holds) return;
  const until = localOf(look.until, data.depot.timeZone).replace("T", " ");
  throw new Refusal("missing", {
    problems: [
      {
        path: "secondLook",
        expected: `the second look at ${look.due.length} of what was too wet or dirty, or the end of its window at ${until}`,
      },
    ],
  });
}

export const afterHandlers = {
  readDifferences: ({ context, signed, params }) => differences(context, signed, params.id),

  /** Decided at the desk on evidence, each with its reason; a difference that is not named stays as it was. */
  async setClasses(call) {
    await changeHire(call, ["returned"], async (hire) => {
      const { classes } = call.body;
      const known = new Set(
        (await conditionOf(hire.store, hire.data)).result.differences.map(({ id }) => id),
      );
      classes.forEach(({ id }, k) => {
        if (!known.has(id)) throw badField(`classes.${k}.id`, "expected a difference of this hire");
      });
      const kept = partOf(hire.data, "settlement") ?? NO_SETTLEMENT;
      for (const [k, { id, basedOn, ...sent }] of classes.entries()) {
        const made = kept.classes[id];
        const value = {
          class: made?.class,
          reason: made?.reason,
          incident: made?.incident,
          todo: made?.todo,
        };
        const base = basedOn === undefined ? undefined : String(basedOn);
        await hire.refuseOtherEntry({ path: `classes.${k}`, value, sent }, base, made, made);
      }
      const version = hire.nextVersion("settlement");
      const decided = Object.fromEntries(
        classes.map(({ id, reason, incident = null, todo = null, ...made }) => [
          id,
          { class: made.class, reason, incident, todo, by: hire.by, at: hire.data.now, version },
        ]),
      );
      await hire.putPart("settlement", { ...kept, classes: { ...kept.classes, ...decided } });
      for (const { id, reason, ...made } of classes)
        await hire.audit("hire.markClassed", { difference: id, class: made.class, reason });
    });
    return differences(call.context, call.signed, call.params.id);
  },

  async readSettlement({ context, signed, params }) {
    const data = await readHireData(signed.store, params.id, context.now());
    requireStage(data, "returned", "settled", "closed");
    const answer = await settlementOf(signed.store, data);
    const entries = await entriesOfHire(signed.store, data);
    return settlementState(data, answer, entries, await accountNames(signed.store));
  },

  settle: (call) =>
    changeHire(call, ["returned"], async (hire) => {
      await requireSecondLook(hire.store, hire.data);
      const input = await inputNow(hire.store, hire.data);
      if (input === null) throw new Refusal("frozen");
      const answer = settleHire(input);
      const versions = {
        terms: hire.data.terms?.version.versionId ?? null,
        vehicle: hire.data.vehicle?.version.versionId ?? null,
        engine: ENGINE_VERSION,
      };
      const frozen = await freeze(hire.store, {
        hireId: hire.data.row.id,
        room: "settlement",
        by: hire.by,
        at: hire.data.now,
        document: toJson({ input, answer, versions }),
      });
      const kept = partOf(hire.data, "settlement") ?? NO_SETTLEMENT;
      await hire.putPart("settlement", {
        ...kept,
        answer,
        frozenId: frozen.id,
        frozenAt: hire.data.now,
        frozenBy: hire.by,
      });
      // with what it used, later forecasts of this vehicle are better
      await keepUse(hire.store, hire.data);
      await hire.update({ stage: "settled" });
      await hire.audit("hire.settled", { pence: answer.result.total.pence });
    }),

  close: (call) =>
    changeHire(call, ["settled"], async (hire) => {
      const { depositHeld, owed } = moneyOfHire(hire.data);
      const missing = (path: string, expected: string) =>
        new Refusal("missing", { problems: [{ path, expected }] });
      if (depositHeld.pence > 0) throw missing("deposit", "the deposit given back first");
      if (owed.pence < 0) throw missing("refund", "what was paid too much given back first");
      await hire.update({ stage: "closed" });
      await hire.audit("hire.closed");
    }),
} satisfies Partial<Handlers>;
