import { makeReceipt, makeRecord } from "@setfair/records";
import { describe, expect, it } from "vitest";
import { clockFindings } from "./clock-findings.ts";

const ARRIVED = "2026-07-06T09:00:00.000Z";
const KEYS_OUT = "2026-07-03T11:00:00.000Z";

function kept(deviceTime: string) {
  const record = makeRecord(
    {
      deviceId: "tablet",
      deviceTime,
      kind: "note",
      refs: { hireId: "h" },
      chain: "h.back",
      content: { text: "seen", direction: "back" },
    },
    null,
  );
  return { record, receipt: makeReceipt(record, null, ARRIVED) };
}
const said = (deviceTime: string) =>
  clockFindings([kept(deviceTime)], KEYS_OUT).map(({ code, facts }) => [code, facts.way]);

describe("a device's clock that cannot have been right", () => {
  it("two days fast is dated after it arrived, two days slow before the keys went out: both are said", () => {
    expect(said("2026-07-08T09:00:00.000Z")).toEqual([["condition.clock", "ahead"]]);
    expect(said("2026-07-01T09:00:00.000Z")).toEqual([["condition.clock", "behind"]]);
  });

  it("a few minutes out, or sent days later with no signal, is nothing to speak of", () => {
    expect(said("2026-07-06T09:08:00.000Z")).toEqual([]);
    expect(said("2026-07-04T09:00:00.000Z")).toEqual([]);
  });
});
