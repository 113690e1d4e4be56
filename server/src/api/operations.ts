import { abroadOperations } from "./operations/abroad.ts";
import { afterHireOperations } from "./operations/after-hire.ts";
import { dayOperations } from "./operations/day.ts";
import { diaryOperations } from "./operations/diary.ts";
import { guideOperations } from "./operations/guide.ts";
import { helpOperations } from "./operations/help.ts";
import { hiresOperations } from "./operations/hires.ts";
import { moneyOperations } from "./operations/money.ts";
import { papersOperations } from "./operations/papers.ts";
import { recordsOperations } from "./operations/records.ts";
import { sessionOperations } from "./operations/session.ts";
import { termsOperations } from "./operations/terms.ts";
import { tripOperations } from "./operations/trip.ts";
import { upkeepOperations } from "./operations/upkeep.ts";
import { vehiclesOperations } from "./operations/vehicles.ts";

/** Every operation below `/api`, once, an area a file. The paths, the role checks, the OpenAPI document and the handlers' types follow from this list. */
export const operations = {
  ...sessionOperations,
  ...dayOperations,
  ...diaryOperations,
  ...vehiclesOperations,
  ...upkeepOperations,
  ...termsOperations,
  ...hiresOperations,
  ...tripOperations,
  ...abroadOperations,
  ...moneyOperations,
  ...papersOperations,
  ...afterHireOperations,
  ...guideOperations,
  ...helpOperations,
  ...recordsOperations,
} as const;

export type Operations = typeof operations;
export type OperationId = keyof Operations;
