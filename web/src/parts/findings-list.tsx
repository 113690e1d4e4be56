import type { ReactNode } from "react";
import { classes } from "./classes.ts";
import { FigureTap, type ShownFigure } from "./figure-tap.tsx";
import { GlassShape, type GlassState } from "./glass-pill.tsx";
import { findingPieces, findingText, has, mendText, say, t } from "./words.ts";

type Facts = Readonly<Record<string, ShownFigure | string | number>>;

/** A finding as it travels (the engine's `Finding`). */
export interface ShownFinding {
  readonly code: string;
  readonly severity: "refuse" | "refer" | "unchecked" | "condition" | "note";
  readonly basis: "law" | "safety" | "cover" | "policy" | "physics";
  readonly facts: Facts;
  readonly sources: readonly string[];
  readonly mends: readonly { readonly code: string; readonly facts: Facts }[];
  readonly about?: string | undefined;
}

const SHAPE_OF: Readonly<Record<ShownFinding["severity"], GlassState>> = {
  refuse: "cannotGo",
  refer: "notYet",
  unchecked: "notYet",
  condition: "goesWithConditions",
  note: "readyWithNotes",
};

const isFigure = (fact: ShownFigure | string | number): fact is ShownFigure => typeof fact === "object";

export function findingWords(finding: ShownFinding): string {
  return findingText(finding as Parameters<typeof findingText>[0]);
}
export function mendWords(mend: ShownFinding["mends"][number]): string {
  return mendText(mend as Parameters<typeof mendText>[0]);
}
const factName = (name: string): string =>
  has(`fact.${name}`) ? say(`fact.${name}`) : t("parts.thisFigure");

/** The words of a finding, each figure in them with its sum one tap away. */
export function FindingText({ finding }: { readonly finding: ShownFinding }) {
  const pieces = findingPieces(finding as Parameters<typeof findingPieces>[0]);
  return pieces.map((piece, k) =>
    "figure" in piece ? (
      // biome-ignore lint/suspicious/noArrayIndexKey: a stretch of a text is its place in it
      <FigureTap key={k} figure={piece.figure} label={factName(piece.name)} />
    ) : (
      piece.text
    ),
  );
}

/** Figures that the words do not name, where they have a name of their own. */
function OtherFigures({ finding }: { readonly finding: ShownFinding }) {
  const said = new Set(
    findingPieces(finding as Parameters<typeof findingPieces>[0]).map((piece) =>
      "figure" in piece ? piece.name : "",
    ),
  );
  const others = Object.entries(finding.facts).filter(
    (entry): entry is [string, ShownFigure] =>
      isFigure(entry[1]) && !said.has(entry[0]) && has(`fact.${entry[0]}`),
  );
  return others.map(([name, figure]) => (
    <span key={name} className="nowrap">
      {factName(name)} <FigureTap figure={figure} label={factName(name)} />
      {" · "}
    </span>
  ));
}

export interface FindingLineProps {
  readonly finding: ShownFinding;
  /** the one act that helps */
  readonly act?: ReactNode;
  readonly more?: ReactNode;
}

/** One finding: shape and words, figures, what it rests on, what would mend it, and the act. */
export function FindingLine({ finding, act, more }: FindingLineProps) {
  return (
    <li className={classes("finding", `finding-${finding.severity}`)}>
      <span className="finding-mark">
        <GlassShape state={SHAPE_OF[finding.severity]} />
        <span className="visually-hidden">{t(`severity.${finding.severity}`)}</span>
      </span>
      <span>
        <FindingText finding={finding} />
      </span>
      {act !== undefined && <span className="finding-act">{act}</span>}
      <span className="finding-more">
        <OtherFigures finding={finding} />
        {t(`findingBasis.${finding.basis}`)}
        {finding.sources.length > 0 && ` · ${t("parts.sources", { list: finding.sources.join(", ") })}`}
        {finding.mends.length > 0 && (
          <span className="finding-mends">
            {t("parts.mend", { text: finding.mends.map(mendWords).join(" · ") })}
          </span>
        )}
        {more}
      </span>
    </li>
  );
}

/** Findings, in the order given (worst first from the server). */
export function FindingsList({ findings }: { readonly findings: readonly ShownFinding[] }) {
  return (
    <ul className="findings">
      {findings.map((finding) => (
        <FindingLine key={`${finding.code}.${finding.about ?? ""}`} finding={finding} />
      ))}
    </ul>
  );
}
