import { describe, expect, it } from "vitest";
import { panelVan } from "../../vehicle/test-vehicles.ts";
import type { Difference } from "../condition/types.ts";
import { mayOverride } from "../glass/may-override.ts";
import { OVERRIDE_ROLES } from "../glass/types.ts";
import { checkDefects } from "./check-defects.ts";
import { checkUpkeep } from "./check-upkeep.ts";
import { composeTurnaround, MENDINGS, USUAL_JOB_MINUTES } from "./compose-turnaround.ts";
import { dampBand } from "./damp-band.ts";
import { addMonths, DUTIES, dutiesOf, nextDue } from "./duties.ts";
import type { DueEntry, UpkeepInput } from "./types.ts";

const good = (dueOn = "2027-06-30"): DueEntry[] =>
  (["mot", "tax", "insurance", "lpgCheck"] as const).map((kind) => ({ kind, dueOn, dueKm: null }));
const check = (book: DueEntry[], more: Partial<UpkeepInput> = {}) =>
  checkUpkeep({
    vehicle: panelVan({ firstRegistered: "2020-03-01" }),
    book,
    from: "2027-05-10T13:30",
    to: "2027-05-17T10:00",
    today: "2027-05-01",
    ...more,
  }).findings;
const without = (kind: DueEntry["kind"]) => good().filter((entry) => entry.kind !== kind);

describe("the due-date book", () => {
  it("lets a hire go when every duty is good through its last day", () => {
    expect(check(good())).toEqual([]);
    expect(check(good("2027-05-17"))).toEqual([]);
  });

  it("an MOT that runs out on the way is refused by law, and nobody may override it", () => {
    const [finding, ...more] = check([...without("mot"), { kind: "mot", dueOn: "2027-05-14", dueKm: null }]);
    expect(more).toEqual([]);
    expect(finding).toMatchObject({ code: "due.lapses", about: "mot", severity: "refuse", basis: "law" });
    if (finding === undefined) throw new Error("no finding");
    expect(OVERRIDE_ROLES.filter((role) => mayOverride(finding, role))).toEqual([]);
  });

  it("a gas check that runs out is policy: a named person may let it go", () => {
    const [finding] = check([...without("lpgCheck"), { kind: "lpgCheck", dueOn: "2027-04-01", dueKm: null }]);
    expect(finding).toMatchObject({ code: "due.lapsed", basis: "policy" });
    if (finding === undefined) throw new Error("no finding");
    expect(OVERRIDE_ROLES.some((role) => mayOverride(finding, role))).toBe(true);
  });

  it("an MOT good to the last day but not for the margin after it is a matter of policy", () => {
    const book = [...without("mot"), { kind: "mot" as const, dueOn: "2027-05-18", dueKm: null }];
    expect(check(book)).toEqual([]);
    expect(check(book, { marginDays: 3 })).toMatchObject([
      { code: "due.margin", basis: "policy", facts: { days: 3 } },
    ]);
  });

  it("a service or a wheel due by distance counts against where the odometer will stand", () => {
    const book = [...good(), { kind: "service" as const, dueOn: null, dueKm: 32_000 }];
    expect(check(book)).toMatchObject([{ code: "due.noOdometer", severity: "unchecked" }]);
    expect(check(book, { odometer: { readKm: 30_000, endKm: 31_900 } })).toEqual([]);
    expect(check(book, { odometer: { readKm: 31_000, endKm: 32_400 } })).toMatchObject([
      { code: "due.distance", about: "service", basis: "policy", facts: { dueKm: { value: 32_000 } } },
    ]);
  });

  it("what is done every few weeks stops the keys when it is over, never a hire that is booked ahead", () => {
    const book = [...good(), { kind: "waterSanitise" as const, dueOn: "2027-04-20", dueKm: null }];
    expect(check(book)).toEqual([]);
    expect(check(book, { today: "2027-05-10" })).toMatchObject([{ code: "due.lapsed", basis: "policy" }]);
  });

  it("what the law wants and nobody entered is unchecked; a young vehicle needs no MOT", () => {
    expect(check(without("mot"))).toMatchObject([
      { code: "due.missing", severity: "unchecked", basis: "law" },
    ]);
    expect(check(without("mot"), { vehicle: panelVan({ firstRegistered: "2025-01-01" }) })).toEqual([]);
  });

  it("every duty names who says so, how surely, and an interval", () => {
    for (const duty of DUTIES) {
      expect(duty.source.length).toBeGreaterThan(10);
      expect([duty.everyDays, duty.everyMonths, duty.everyKm].some((every) => every !== undefined)).toBe(
        true,
      );
    }
    expect(new Set(DUTIES.map(({ kind }) => kind)).size).toBe(DUTIES.length);
  });

  it("asks for gas duties only where there is gas", () => {
    const van = panelVan();
    const noGas = { ...van, systems: van.systems.filter(({ kind }) => kind !== "lpg") };
    const kinds = (vehicle: typeof van) => dutiesOf(vehicle, "2027-05-01").map(({ kind }) => kind);
    expect(kinds(van)).toContain("lpgHose");
    expect(kinds(noGas)).not.toContain("lpgHose");
  });

  it("works out when a duty falls due again", () => {
    expect(nextDue("mot", "2027-05-10", null)).toEqual({ kind: "mot", dueOn: "2028-05-09", dueKm: null });
    expect(nextDue("service", "2027-02-28", 41_000)).toEqual({
      kind: "service",
      dueOn: "2028-02-27",
      dueKm: 73_000,
    });
    expect(nextDue("wheelTorque", "2027-05-10", 41_000)).toEqual({
      kind: "wheelTorque",
      dueOn: null,
      dueKm: 41_050,
    });
    expect(addMonths("2028-08-31", 6)).toBe("2029-02-28");
  });
});

describe("open defects", () => {
  const defect = { id: "d1", what: "Handbrake weak", disclosed: true };

  it("one of safety stops the hire, told or not, and nobody may let it pass", () => {
    const [finding] = checkDefects([{ ...defect, class: "safety" }]);
    expect(finding).toMatchObject({ code: "defects.safety", severity: "refuse", basis: "safety" });
    if (finding === undefined) throw new Error("no finding");
    expect(OVERRIDE_ROLES.filter((role) => mayOverride(finding, role))).toEqual([]);
  });

  it("one of comfort waits until the hirer was told and signed, then goes as a condition", () => {
    const comfort = { ...defect, class: "comfort" } as const;
    expect(checkDefects([{ ...comfort, disclosed: false }])).toMatchObject([{ severity: "unchecked" }]);
    expect(checkDefects([comfort])).toMatchObject([{ severity: "condition", about: "d1" }]);
  });
});

describe("damp", () => {
  it("is read in the bands of the guidance", () => {
    expect([0, 15, 15.5, 20, 25, 30, 31].map(dampBand)).toEqual([
      "none",
      "none",
      "recheck",
      "recheck",
      "investigate",
      "investigate",
      "strip",
    ]);
    expect(() => dampBand(101)).toThrow(/percent/);
  });
});

describe("the turnaround", () => {
  const mark = { id: "mark.x", kind: "mark" } as Difference;

  it("follows the usual order for what is fitted and ends with the seal", () => {
    const jobs = composeTurnaround(panelVan(), []);
    expect(jobs.at(-1)?.code).toBe("sealReady");
    expect(new Set(jobs.map(({ id }) => id)).size).toBe(jobs.length);
    // the seal waits for what is to be mended, too
    const [mended] = composeTurnaround(panelVan(), [mark]);
    const seals = composeTurnaround(panelVan(), [mark]).filter(({ code }) => code === "sealReady");
    expect(seals).toHaveLength(1);
    expect(seals[0]?.after).toEqual([jobs.at(-2)?.id, mended?.id]);
    expect(jobs.map(({ code }) => code)).toContain("gasCheck");
    const van = panelVan();
    const noGas = { ...van, systems: van.systems.filter(({ kind }) => kind !== "lpg") };
    expect(composeTurnaround(noGas, []).map(({ code }) => code)).not.toContain("gasCheck");
  });

  it("takes the minutes that the depot has entered, and the usual ones for every other job", () => {
    const usual = composeTurnaround(panelVan(), [mark]);
    const own = composeTurnaround(panelVan(), [mark], {}, { wetClean: 50, lookAtMark: 5 });
    for (const [k, job] of own.entries())
      expect(job).toEqual({
        ...usual[k],
        minutes: { wetClean: 50, lookAtMark: 5 }[job.code] ?? USUAL_JOB_MINUTES[job.code],
      });
    expect(own.map(({ code }) => code)).toContain("wetClean");
    for (const decided of MENDINGS.filter((each) => each !== "nothing")) {
      const [job] = composeTurnaround(panelVan(), [mark], { "mark.x": decided });
      expect(USUAL_JOB_MINUTES[job?.code ?? ""], decided).toBe(job?.minutes);
    }
  });

  it("has a job for what the return showed, and no seal before it is done", () => {
    const jobs = composeTurnaround(panelVan(), [mark]);
    expect(jobs[0]).toMatchObject({ code: "lookAtMark", about: "mark.x", skill: "technician" });
    expect(jobs.at(-1)?.after).toContain("lookAtMark.mark.x");
    const ids = jobs.map(({ id }) => id);
    for (const { after } of jobs) for (const id of after) expect(ids).toContain(id);
  });
});
