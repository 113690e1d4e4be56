import type { ReactNode } from "react";
import { Button, Dialog, DialogTrigger, Popover } from "react-aria-components";
import { dateText, figureText, has, say, t } from "./words.ts";

/** A figure as it travels (the engine's `Figure`). */
export interface ShownFigure {
  readonly value: number;
  readonly unit: string;
  readonly formula: string;
  readonly inputs: Readonly<Record<string, number | string | boolean | null>>;
  readonly basis: "measured" | "declared" | "default" | "from memory" | "computed";
  readonly source?: string | undefined;
}

const inputName = (name: string): string => (has(`input.${name}`) ? say(`input.${name}`) : name);
const ISO_DAY = /^\d{4}-\d{2}-\d{2}$/;
const inputText = (value: number | string | boolean | null): string => {
  if (value === null) return "–";
  if (typeof value === "number") return figureText({ value, unit: "" });
  if (typeof value === "boolean") return t(value ? "parts.yes" : "parts.no");
  return ISO_DAY.test(value) ? dateText(value, "full") : value;
};

/** How a figure came about: formula, what went in, basis and source. */
export function FigureSums({ figure, label }: { readonly figure: ShownFigure; readonly label?: string }) {
  const inputs = Object.entries(figure.inputs);
  return (
    <>
      <strong>
        {label !== undefined && `${label}: `}
        {figureText(figure)}
      </strong>
      <dl className="figure-sums">
        <dt>{t("parts.figure.basis")}</dt>
        <dd>{say(`basis.${figure.basis}`)}</dd>
        {figure.formula !== "-" && (
          <>
            <dt>{t("parts.figure.formula")}</dt>
            <dd>{figure.formula}</dd>
          </>
        )}
        {inputs.map(([name, value]) => (
          <InputLine key={name} name={inputName(name)} value={inputText(value)} />
        ))}
        {figure.source !== undefined && (
          <>
            <dt>{t("parts.figure.source")}</dt>
            <dd>{figure.source}</dd>
          </>
        )}
      </dl>
    </>
  );
}

function InputLine({ name, value }: { readonly name: string; readonly value: string }) {
  return (
    <>
      <dt>{name}</dt>
      <dd>{value}</dd>
    </>
  );
}

export interface FigureTapProps {
  readonly figure: ShownFigure;
  /** what the figure is of: read aloud, and the head of its sums */
  readonly label: string;
  /** other words for the value, where the unit alone is not what people say */
  readonly children?: ReactNode;
}

/** A figure whose tap shows the formula, what went in, and the source. */
export function FigureTap({ figure, label, children }: FigureTapProps) {
  const text = figureText(figure);
  return (
    <DialogTrigger>
      <Button className="figure-tap" aria-label={t("parts.figure.open", { label, text })}>
        {children ?? text}
      </Button>
      <Popover className="popover" placement="bottom start">
        <Dialog className="popover-body" aria-label={t("parts.figure.sums", { label })}>
          <FigureSums figure={figure} label={label} />
        </Dialog>
      </Popover>
    </DialogTrigger>
  );
}
