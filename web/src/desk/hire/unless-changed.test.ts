import { expect, test } from "vitest";
import type { Failure } from "../../api/failure.ts";
import { unlessChanged } from "./unless-changed.ts";
import type { HirePageData } from "./use-hire.ts";

test("a draft is sent where the server still has what it began from, and held back where somebody changed it", async () => {
  // as the server has it
  let dogs = 1;
  const rebased: unknown[] = [];
  const sent: string[] = [];
  const keep = (base: { dogs: number }) =>
    unlessChanged(
      "h1",
      { base, rebase: (next) => void rebased.push(next) },
      ({ party }) => ({ dogs: party.dogs }),
      async () => {
        sent.push("sent");
        return {} as HirePageData;
      },
      async () => ({ hire: { id: "h1" }, party: { dogs } }) as HirePageData,
    );
  await keep({ dogs: 1 });
  expect(sent).toEqual(["sent"]);
  dogs = 2;
  const failure: Failure = await keep({ dogs: 1 }).then(
    () => Promise.reject(new Error("it was sent")),
    (error) => error,
  );
  expect(failure.code).toBe("changedMeanwhile");
  expect(sent).toEqual(["sent"]);
  // to keep it once more is then meant: it begins from theirs
  expect(rebased).toEqual([{ dogs: 2 }]);
  await keep({ dogs: 2 });
  expect(sent).toHaveLength(2);
});
