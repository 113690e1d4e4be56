import { useEffect, useRef, useState } from "react";
import SignaturePad from "signature_pad";
import { Button } from "./button.tsx";
import { t } from "./words.ts";

/** One stroke of the pen, as a record keeps it; time in ms from the stroke's start. */
export type Stroke = readonly {
  readonly x: number;
  readonly y: number;
  readonly t: number;
  readonly pressure: number;
}[];

export interface SignatureFieldProps {
  readonly label: string;
  readonly onChange: (strokes: readonly Stroke[]) => void;
}

const strokesOf = (pad: SignaturePad): readonly Stroke[] =>
  pad.toData().map((group) => {
    const start = group.points[0]?.time ?? 0;
    return group.points.map((point) => ({
      x: Math.round(point.x * 10) / 10,
      y: Math.round(point.y * 10) / 10,
      t: Math.round(point.time - start),
      pressure: Math.round(point.pressure * 1000) / 1000,
    }));
  });

/** Signs with finger, pen or mouse; gives the strokes, not a picture. */
export function SignatureField({ label, onChange }: SignatureFieldProps) {
  const canvas = useRef<HTMLCanvasElement>(null);
  const pad = useRef<SignaturePad | null>(null);
  const tell = useRef(onChange);
  tell.current = onChange;
  const [isEmpty, setEmpty] = useState(true);

  useEffect(() => {
    const element = canvas.current;
    if (element === null) return;
    const ratio = Math.max(1, window.devicePixelRatio);
    element.width = element.offsetWidth * ratio;
    element.height = element.offsetHeight * ratio;
    element.getContext("2d")?.scale(ratio, ratio);
    const made = new SignaturePad(element, { penColor: "#0f3440" });
    pad.current = made;
    const onEnd = () => {
      setEmpty(made.isEmpty());
      tell.current(strokesOf(made));
    };
    made.addEventListener("endStroke", onEnd);
    return () => {
      made.removeEventListener("endStroke", onEnd);
      made.off();
    };
  }, []);

  const clear = () => {
    pad.current?.clear();
    setEmpty(true);
    onChange([]);
  };
  return (
    <div className="signature">
      <canvas
        ref={canvas}
        role="img"
        aria-label={t(isEmpty ? "parts.signHere" : "parts.signed", { label })}
      />
      <div className="row spread">
        <span className="quiet">{label}</span>
        <Button look="quiet" onPress={clear} isDisabled={isEmpty}>
          {t("parts.signAgain")}
        </Button>
      </div>
    </div>
  );
}
