import type { Content } from "pdfmake/interfaces";
import { Refusal } from "../api/refusal.ts";
import { type HireEvidence, hireEvidence } from "./evidence/kept-records.ts";
import { proofBlock } from "./evidence/proof-block.ts";
import { signatureBlock } from "./evidence/signature-block.ts";
import { correctionsBlock, measuredBlock, tooWetBlock, walkBlock } from "./evidence/walk-block.ts";
import { hireFacts, type PaperCall } from "./paper-call.ts";
import { facts, heading, quiet } from "./pieces.ts";

/**
 * The condition out and, once it is there, back: marks with photographs, readings, kit, what was put right,
 * signatures as drawn, with the hashes and the chain's head that make this copy a proof.
 */
export async function conditionPaper(call: PaperCall): Promise<Content[]> {
  const { words } = call;
  const evidence = await hireEvidence(call);
  const signatures = evidence.kept.filter(
    ({ record }) => record.kind === "signature" && record.content.purpose === "condition",
  );
  const [first, ...others] = signatures.map((each) => signatureBlock(each, words));
  return [
    facts(hireFacts(call)),
    ...(await conditionBody(call, evidence)),
    {
      unbreakable: true,
      stack: [heading(words.t("proof.signatures")), ...(first ?? [{ text: words.t("proof.notSigned") }])],
    },
    ...others.flat(),
    ...proofBlock(evidence, words),
    quiet(words.t("proof.whoPays")),
  ];
}

/** What was seen, read and counted, out and back, with what was put right later. */
export async function conditionBody(call: PaperCall, evidence: HireEvidence): Promise<Content[]> {
  const { words, pictures } = call;
  const kept = evidence.kept.filter(({ direction }) => direction !== null);
  if (kept.length === 0)
    throw new Refusal("missing", { problems: [{ path: "records", expected: "a walk-round of this hire" }] });
  return [
    ...(await walkBlock(kept, "out", { pictures, words })),
    ...(await walkBlock(kept, "back", { pictures, words })),
    ...measuredBlock(kept, "reading", words),
    ...measuredBlock(kept, "count", words),
    ...tooWetBlock(kept, words),
    ...correctionsBlock(evidence.kept, words),
  ];
}
