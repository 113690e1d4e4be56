import { abroadOperations } from "./operations/abroad.ts";
import { accountsOperations } from "./operations/accounts.ts";
import { afterHireOperations } from "./operations/after-hire.ts";
import { calendarOperations } from "./operations/calendar.ts";
import { calibrationOperations } from "./operations/calibration.ts";
import { changesOperations } from "./operations/changes.ts";
import { customersOperations } from "./operations/customers.ts";
import { dayOperations } from "./operations/day.ts";
import { depotOperations } from "./operations/depot.ts";
import { diaryOperations } from "./operations/diary.ts";
import { driversOperations } from "./operations/drivers.ts";
import { enquiriesOperations } from "./operations/enquiries.ts";
import { erasuresOperations } from "./operations/erasures.ts";
import { firmPricesOperations } from "./operations/firm-prices.ts";
import { guideOperations } from "./operations/guide.ts";
import { helpOperations } from "./operations/help.ts";
import { hiresOperations } from "./operations/hires.ts";
import { importOperations } from "./operations/import.ts";
import { messagesOperations } from "./operations/messages.ts";
import { moneyOperations } from "./operations/money.ts";
import { notesOperations } from "./operations/notes.ts";
import { papersOperations } from "./operations/papers.ts";
import { placesOperations } from "./operations/places.ts";
import { recordsOperations } from "./operations/records.ts";
import { rulesOperations } from "./operations/rules.ts";
import { sessionOperations } from "./operations/session.ts";
import { settlementOperations } from "./operations/settlement.ts";
import { stockOperations } from "./operations/stock.ts";
import { termsOperations } from "./operations/terms.ts";
import { tripOperations } from "./operations/trip.ts";
import { upkeepOperations } from "./operations/upkeep.ts";
import { vehiclesOperations } from "./operations/vehicles.ts";
import { weatherOperations } from "./operations/weather.ts";

/** Every operation below `/api`, once, an area a file. The paths, the role checks, the OpenAPI document and the handlers' types follow from this list. */
export const operations = {
  ...sessionOperations,
  ...accountsOperations,
  ...dayOperations,
  ...diaryOperations,
  ...vehiclesOperations,
  ...upkeepOperations,
  ...termsOperations,
  ...depotOperations,
  ...hiresOperations,
  ...enquiriesOperations,
  ...stockOperations,
  ...tripOperations,
  ...calibrationOperations,
  ...placesOperations,
  ...weatherOperations,
  ...abroadOperations,
  ...rulesOperations,
  ...notesOperations,
  ...driversOperations,
  ...customersOperations,
  ...erasuresOperations,
  ...changesOperations,
  ...messagesOperations,
  ...calendarOperations,
  ...importOperations,
  ...moneyOperations,
  ...papersOperations,
  ...afterHireOperations,
  ...settlementOperations,
  ...firmPricesOperations,
  ...guideOperations,
  ...helpOperations,
  ...recordsOperations,
} as const;

export type Operations = typeof operations;
export type OperationId = keyof Operations;
