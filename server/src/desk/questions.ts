import { compareCondition, composeWalkRound } from "@setfair/engine";
import { mergeRecords } from "@setfair/records";
import type { z } from "zod";
import type { questionSchema } from "../api/schemas/after.ts";
import type { StoredRecord } from "../store/types.ts";
import type { HireData } from "./hire-data.ts";
import { conditionRecords, type Direction, directionOf, wholeRecords } from "./record-facts.ts";

/**
 * Records of one direction without those that an answer decided against: of two entries of one thing that do not
 * agree, the one that whoever signed said holds.
 */
export function withAnswers(records: readonly StoredRecord[]): readonly StoredRecord[] {
  const dropped = new Set<string>();
  for (const { holds, readings } of mergeRecords(records).readings) {
    if (holds === null) continue;
    const said = (record: (typeof readings)[number]) =>
      JSON.stringify([record.content.value ?? record.content.found, record.content.unit ?? null]);
    for (const reading of readings) if (said(reading) !== said(holds)) dropped.add(reading.id);
  }
  return dropped.size === 0 ? records : records.filter(({ id }) => !dropped.has(id));
}

/** Questions of the walk-round out that nobody has answered; before the keys they wait for whoever signs. */
export function questionsOut({ vehicle, records }: Pick<HireData, "vehicle" | "records">): readonly Asked[] {
  const out = wholeRecords(records).filter((record) => directionOf(record) === "out");
  if (vehicle === null || mergeRecords([...out, ...answersOf(records)]).questions.length === 0) return [];
  const { description } = vehicle.document;
  return compareCondition(
    conditionRecords(withAnswers(records), "out"),
    [],
    composeWalkRound(description, "out"),
  ).result.questions;
}

const answersOf = (records: readonly StoredRecord[]) =>
  wholeRecords(records).filter(({ kind }) => kind === "answer");

export interface Asked {
  readonly checkId: string;
  readonly when: Direction;
  readonly records: readonly string[];
}

/** Questions with every entry as it was made: who signs chooses between them. */
export function questionsAnswer(
  records: readonly StoredRecord[],
  asked: readonly Asked[],
): z.input<typeof questionSchema>[] {
  const byId = new Map(wholeRecords(records).map((record) => [record.id, record]));
  return asked.map(({ checkId, when, records: ids }) => ({
    checkId,
    when,
    entries: ids.flatMap((id) => {
      const record = byId.get(id);
      if (record === undefined || directionOf(record) !== when) return [];
      const { content, hash, deviceId, deviceTime } = record;
      const { photographs } = content;
      return [
        {
          id,
          hash,
          about: String(content.about),
          value: Number(content.value ?? content.found),
          unit: typeof content.unit === "string" ? content.unit : null,
          deviceId,
          at: deviceTime,
          photographs: Array.isArray(photographs) ? photographs.map(String) : [],
        },
      ];
    }),
  }));
}
