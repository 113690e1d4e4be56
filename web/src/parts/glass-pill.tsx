import type { ReactNode } from "react";
import { classes } from "./classes.ts";
import { t } from "./words.ts";

/** Worst first; the answer to *may the keys go?* */
export const GLASS_ORDER = ["cannotGo", "notYet", "goesWithConditions", "readyWithNotes", "ready"] as const;
export type GlassState = (typeof GLASS_ORDER)[number];
type SoFarState = Exclude<GlassState, "cannotGo" | "notYet">;

/** Each state has its own shape, so that the colour never speaks alone. */
export function GlassShape({ state, size = 18 }: { readonly state: GlassState; readonly size?: number }) {
  return (
    <svg width={size} height={size} viewBox="0 0 18 18" aria-hidden="true">
      {SHAPES[state]}
    </svg>
  );
}

const SUN = [0, 45, 90, 135, 180, 225, 270, 315];
const SHAPES: Readonly<Record<GlassState, ReactNode>> = {
  cannotGo: <path d="M10.5 1 4 10h4l-1.500 7L14 7.500H9.500z" fill="currentColor" />,
  notYet: (
    <path
      d="M9 2c3 4 4.600 6.200 4.600 8.700a4.600 4.600 0 0 1-9.200 0C4.400 8.200 6 6 9 2z"
      fill="currentColor"
    />
  ),
  goesWithConditions: (
    <>
      <circle cx="9" cy="9" r="6.500" fill="none" stroke="currentColor" strokeWidth="2" />
      <path d="M9 2.500a6.500 6.500 0 0 1 0 13z" fill="currentColor" />
    </>
  ),
  readyWithNotes: <circle cx="9" cy="9" r="4.500" fill="none" stroke="currentColor" strokeWidth="2.500" />,
  ready: (
    <>
      <circle cx="9" cy="9" r="4" fill="currentColor" />
      {SUN.map((angle) => (
        <path
          key={angle}
          d="M9 .8v3"
          stroke="currentColor"
          strokeWidth="2"
          strokeLinecap="round"
          transform={`rotate(${angle} 9 9)`}
        />
      ))}
    </>
  ),
};

/** What reads ready is so of the due gates only; what stops a hire now stops it whatever comes later. */
const isOpenYet = (state: GlassState, isSoFar: boolean): state is SoFarState =>
  isSoFar && state !== "cannotGo" && state !== "notYet";

/** The plain words of a state; while gates are still to come (`isSoFar`) they say so. */
export const glassText = (state: GlassState, isSoFar = false): string =>
  isOpenYet(state, isSoFar) ? t(`soFar.${state}`) : t(`glass.${state}`);

/** The glass in one line: shape, plain words, and what makes it so where that is given. */
export function GlassPill({
  state,
  isSoFar = false,
  because,
}: {
  readonly state: GlassState;
  /** gates fall due later than now */
  readonly isSoFar?: boolean;
  readonly because?: string | undefined;
}) {
  return (
    <span className={classes("glass-pill", `glass-${state}`, isOpenYet(state, isSoFar) && "glass-so-far")}>
      <GlassShape state={isSoFar && state === "ready" ? "readyWithNotes" : state} />
      <span>
        {glassText(state, isSoFar)}
        {because !== undefined && ` · ${because}`}
      </span>
    </span>
  );
}

/** A pill of the same shape for what is not the glass: a stage, "late". */
export function PlainPill({ children }: { readonly children: string }) {
  return <span className="glass-pill glass-plain">{children}</span>;
}
