import type { ProposeAllocation } from "./allocation-types.ts";

/** Seats hires on vehicles; being written. */
export const proposeAllocation: ProposeAllocation = () => {
  throw new Error("proposeAllocation: not written yet");
};
