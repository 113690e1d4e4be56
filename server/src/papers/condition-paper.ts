import type { Content } from "pdfmake/interfaces";
import { Refusal } from "../api/refusal.ts";
import { hireEvidence } from "./evidence/kept-records.ts";
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
  const { words, pictures } = call;
  const evidence = await hireEvidence(call);
  const kept = evidence.kept.filter(({ direction }) => direction !== null);
  if (kept.length === 0)
    throw new Refusal("missing", { problems: [{ path: "records", expected: "a walk-round of this hire" }] });
  const signatures = evidence.kept.filter(
    ({ record }) => record.kind === "signature" && record.content.purpose === "condition",
  );
  return [
    facts(hireFacts(call)),
    ...(await walkBlock(kept, "out", { pictures, words })),
    ...(await walkBlock(kept, "back", { pictures, words })),
    ...measuredBlock(kept, "reading", words),
    ...measuredBlock(kept, "count", words),
    ...tooWetBlock(kept, words),
    ...correctionsBlock(evidence.kept, words),
    heading(words.t("proof.signatures")),
    ...(signatures.length === 0 ? [{ text: words.t("proof.notSigned") }] : []),
    ...signatures.flatMap((each) => signatureBlock(each, words)),
    ...proofBlock(evidence, words),
    quiet(words.t("proof.whoPays")),
  ];
}
