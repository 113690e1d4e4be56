import { GLASS_ORDER, type GlassState, glassText } from "./glass-pill.tsx";
import { t } from "./words.ts";

export interface GlassDialProps {
  readonly state: GlassState;
  /** where it stood before the last change: the brass set-hand */
  readonly before: GlassState | null;
  /** gates fall due later than now: the hand is drawn open, since it may still move */
  readonly isSoFar?: boolean;
}

const angleOf = (state: GlassState): number => -120 + 60 * GLASS_ORDER.indexOf(state);
const at = (angle: number, radius: number): readonly [number, number] => {
  const turn = (angle * Math.PI) / 180;
  return [130 + radius * Math.sin(turn), 130 - radius * Math.cos(turn)];
};

function Ticks() {
  return Array.from({ length: 51 }, (_, k) => {
    const angle = -150 + k * 6;
    const isLong = k % 10 === 0;
    const [x1, y1] = at(angle, isLong ? 96 : 103);
    const [x2, y2] = at(angle, 108);
    return (
      <line key={angle} x1={x1} y1={y1} x2={x2} y2={y2} stroke="var(--ink)" strokeWidth={isLong ? 2 : 1} />
    );
  });
}

/**
 * The glass as a round barometer: the blue hand now, the brass hand where it stood last. The weather words
 * live here only; the plain words stand below it, by the page.
 */
export function GlassDial({ state, before, isSoFar = false }: GlassDialProps) {
  const label = t("parts.dial", {
    state: glassText(state, isSoFar),
    before: before === null ? "none" : t(`glass.${before}`),
  });
  return (
    <svg className="dial" viewBox="0 0 260 260" role="img" aria-label={label}>
      <circle cx="130" cy="130" r="126" fill="var(--paper)" stroke="var(--ink)" strokeWidth="4" />
      <circle cx="130" cy="130" r="117" fill="none" stroke="var(--line)" />
      <Ticks />
      {GLASS_ORDER.map((word) => {
        const [x, y] = at(angleOf(word), 80);
        return (
          <text
            key={word}
            x={x}
            y={y + 5}
            textAnchor="middle"
            className={word === state && !isSoFar ? "dial-word dial-word-now" : "dial-word"}
          >
            {t(`dial.${word}`)}
          </text>
        );
      })}
      {before !== null && (
        <g className="dial-hand" style={{ transform: `rotate(${angleOf(before)}deg)` }}>
          <path d="M130 150V72" stroke="var(--brass)" strokeWidth="3" />
          <circle cx="130" cy="72" r="4.500" fill="var(--brass)" />
        </g>
      )}
      <g className="dial-hand" style={{ transform: `rotate(${angleOf(state)}deg)` }}>
        <path d="M130 154V76" stroke="var(--ink)" strokeWidth="6.500" strokeLinecap="round" />
        {isSoFar && <path d="M130 153V77" stroke="var(--paper)" strokeWidth="3" strokeLinecap="round" />}
      </g>
      <circle cx="130" cy="130" r="9" fill="var(--brass)" />
    </svg>
  );
}
