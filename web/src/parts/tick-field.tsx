import type { ReactNode } from "react";
import { Checkbox } from "react-aria-components";

export interface TickFieldProps {
  readonly value: boolean;
  readonly onChange: (value: boolean) => void;
  readonly children: ReactNode;
  readonly disabled?: boolean;
}

/** A box to tick, with the words beside it. */
export function TickField({ value, onChange, children, disabled = false }: TickFieldProps) {
  return (
    <Checkbox className="tick" isSelected={value} onChange={onChange} isDisabled={disabled}>
      <span className="tick-box">
        <svg width="16" height="16" viewBox="0 0 16 16" aria-hidden="true">
          <path d="M2 8.5 6.2 13 14 3.5" fill="none" stroke="currentColor" strokeWidth="2.6" />
        </svg>
      </span>
      <span>{children}</span>
    </Checkbox>
  );
}
