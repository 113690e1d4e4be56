import { Link } from "react-aria-components";
import type { ButtonLook } from "./button.tsx";
import { classes } from "./classes.ts";

export interface LinkButtonProps {
  readonly href: string;
  readonly look?: ButtonLook;
  readonly children: string;
  readonly small?: boolean;
}

/** Goes somewhere, looks like the house's buttons. */
export function LinkButton({ href, look = "plain", small = false, children }: LinkButtonProps) {
  return (
    <Link
      href={href}
      className={classes("button", look !== "plain" && `button-${look}`, small && "button-small")}
    >
      {children}
    </Link>
  );
}
