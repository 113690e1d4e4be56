import type { ReactNode } from "react";
import { Button as AriaButton, type ButtonProps as AriaButtonProps } from "react-aria-components";
import { classes } from "./classes.ts";

export type ButtonLook = "plain" | "main" | "danger" | "quiet";

export interface ButtonProps extends Omit<AriaButtonProps, "className" | "style" | "children"> {
  readonly look?: ButtonLook;
  readonly wide?: boolean;
  readonly children: ReactNode;
}

/** A button of the house: at least 48 px high (60 px in the yard), words that say what it does. */
export function Button({ look = "plain", wide = false, children, ...rest }: ButtonProps) {
  return (
    <AriaButton
      {...rest}
      className={classes("button", look !== "plain" && `button-${look}`, wide && "button-wide")}
    >
      {children}
    </AriaButton>
  );
}
