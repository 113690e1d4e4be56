import "./guide-words.ts";
import { renderToStaticMarkup } from "react-dom/server";
import { expect, it } from "vitest";
import type { Guide } from "../offline/database.ts";
import { KeptNotice, type KeptNoticeProps } from "./kept-notice.tsx";

const guide = {
  depot: { name: "Ambergate", telephone: "01632 960123" },
  vehicle: { registration: "SF25 PFN" },
} as Guide;
const shown = (props: Pick<KeptNoticeProps, "keeping" | "isSecure">) =>
  renderToStaticMarkup(<KeptNotice guide={guide} {...props} />);

it("says that the guide is not kept, what that means with no signal, and whom to ring", () => {
  const text = shown({ keeping: "not", isSecure: true });
  for (const part of ["could not keep the guide", "With no signal", "01632 960123", "SF25 PFN", "private"])
    expect(text).toContain(part);
});

it("says on an open connection that nothing can be kept there, and what to ask for", () => {
  expect(shown({ keeping: "kept", isSecure: false })).toContain("begins with https");
});

it("says nothing where the guide is kept, or while that is not known yet", () => {
  expect(shown({ keeping: "kept", isSecure: true })).toBe("");
  expect(shown({ keeping: "busy", isSecure: true })).toBe("");
});
