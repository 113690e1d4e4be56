import type { ReactNode } from "react";
import { Button } from "./button.tsx";
import { t } from "./words.ts";

/** While something is fetched. */
export function Loading({ what }: { readonly what?: string }) {
  return (
    <p className="state-box" role="status">
      {what ?? t("parts.loading")}
    </p>
  );
}

/** Nothing there, said in words. */
export function Empty({ children }: { readonly children: ReactNode }) {
  return <div className="state-box">{children}</div>;
}

export interface ProblemProps {
  readonly title: string;
  readonly children?: ReactNode;
  readonly onAgain?: (() => void) | undefined;
}

/** What went wrong, and what to do about it. */
export function Problem({ title, children, onAgain }: ProblemProps) {
  return (
    <div className="problem" role="alert">
      <strong>{title}</strong>
      {children !== undefined && <div>{children}</div>}
      {onAgain !== undefined && (
        <Button look="quiet" onPress={onAgain}>
          {t("parts.again")}
        </Button>
      )}
    </div>
  );
}
