import { type ButtonHTMLAttributes, useRef } from "react";
import { classes } from "../parts/classes.ts";

export interface PressProps extends Omit<ButtonHTMLAttributes<HTMLButtonElement>, "onClick" | "className"> {
  readonly onPress: () => unknown;
  readonly look?: "plain" | "main" | "danger" | "quiet" | "row";
  readonly wide?: boolean;
}

/** A second tap within this time is rain or a shaking hand. */
const GHOST_MS = 350;

/** A large button of the yard; a second touch right after the first does nothing. */
export function Press({ onPress, look = "plain", wide = false, type = "button", ...rest }: PressProps) {
  const last = useRef(Number.NEGATIVE_INFINITY);
  return (
    <button
      {...rest}
      type={type}
      className={classes(
        look === "row" ? "yard-row" : "button",
        look !== "row" && look !== "plain" && `button-${look}`,
        wide && "button-wide",
      )}
      onClick={(event) => {
        if (event.timeStamp - last.current < GHOST_MS) return;
        last.current = event.timeStamp;
        onPress();
      }}
    />
  );
}
