import { describe, expect, it } from "vitest";
import { checkHeaderText, checkMailAddress, isMailAddress } from "./addresses.ts";

const many = (count: number) => "a".repeat(count);

describe("an address that a mail can go to", () => {
  it.each([
    ["a@b.c", true],
    ["first.last+hire@mail.example.org", true],
    ["o'brien@example.org", true],
    // RFC 5321, 4.5.3.1: 64 octets before the sign; 63 for a label of a domain (RFC 1035)
    [`${many(64)}@example.org`, true],
    [`${many(65)}@example.org`, false],
    [`a@${many(63)}.org`, true],
    [`a@${many(64)}.org`, false],
    [`a@${many(60)}.${many(60)}.${many(60)}.${many(60)}.${many(8)}`, true],
    [`a@${many(60)}.${many(60)}.${many(60)}.${many(60)}.${many(9)}`, false],
    ["@example.org", false],
    ["a@", false],
    ["a@example", false],
    ["a@-example.org", false],
    ["a@example-.org", false],
    ["a@example..org", false],
    [".a@example.org", false],
    ["a.@example.org", false],
    ["a..b@example.org", false],
    ["a b@example.org", false],
    ["a@b@example.org", false],
    ["a@example.org\nBcc: b@example.org", false],
    ["Ingrid <ingrid@example.org>", false],
    ["", false],
  ])("%s: %s", (text, isOne) => {
    expect(isMailAddress(text)).toBe(isOne);
  });

  it("is taken without the space around it, and named where it is none", () => {
    expect(checkMailAddress(" a@example.org ", "replyTo")).toBe("a@example.org");
    expect(() => checkMailAddress("nobody", "replyTo")).toThrow(/^replyTo: one e-mail address/);
  });
});

describe("a text for a header", () => {
  it("is one line", () => {
    expect(checkHeaderText(" Übergabe ", "fromName")).toBe("Übergabe");
    for (const text of ["a\nb", "a\rb", "a\0b", "a\u2028b", "a\u0085b", "a\u007fb"])
      expect(() => checkHeaderText(text, "fromName"), JSON.stringify(text)).toThrow(/^fromName: /);
  });
});
