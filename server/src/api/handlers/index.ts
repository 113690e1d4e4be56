import { ENGINE_VERSION } from "../../desk/version.ts";
import type { Handlers } from "../call.ts";
import { abroadHandlers } from "./abroad.ts";
import { accountHandlers } from "./accounts.ts";
import { afterHandlers } from "./after-return.ts";
import { calendarHandlers } from "./calendar.ts";
import { calibrationHandlers } from "./calibration.ts";
import { changeHandlers } from "./changes.ts";
import { customerHandlers } from "./customers.ts";
import { depotHandlers } from "./depot.ts";
import { depotFiguresHandlers } from "./depot-figures.ts";
import { depotTimesHandlers } from "./depot-times.ts";
import { diaryHandlers } from "./diary.ts";
import { diaryMoveHandlers } from "./diary-moves.ts";
import { driverHandlers } from "./drivers.ts";
import { enquiryHandlers } from "./enquiries.ts";
import { erasureHandlers } from "./erasures.ts";
import { firmPriceHandlers } from "./firm-prices.ts";
import { glassHandlers } from "./glass.ts";
import { guideHandlers } from "./guide.ts";
import { helpHandlers } from "./help.ts";
import { hireHandlers } from "./hires.ts";
import { importHandlers } from "./import.ts";
import { keyHandlers } from "./keys.ts";
import { messageHandlers } from "./messages.ts";
import { moneyHandlers } from "./money.ts";
import { noteHandlers } from "./notes.ts";
import { paperHandlers } from "./papers.ts";
import { photographHandlers } from "./photographs.ts";
import { placeHandlers } from "./places.ts";
import { quoteHandlers } from "./quote-and-book.ts";
import { rateHandlers } from "./rates.ts";
import { recordHandlers } from "./records.ts";
import { ruleHandlers } from "./rules.ts";
import { sessionHandlers } from "./session.ts";
import { settlementHandlers } from "./settlement.ts";
import { settlementNoteHandlers } from "./settlement-notes.ts";
import { setUpHandlers } from "./setup.ts";
import { stockHandlers } from "./stock.ts";
import { termsHandlers } from "./terms.ts";
import { todayHandlers } from "./today.ts";
import { tripHandlers } from "./trip-and-load.ts";
import { upkeepHandlers } from "./upkeep.ts";
import { vehicleHandlers } from "./vehicles.ts";
import { weatherHandlers } from "./weather.ts";
import { yardHandlers } from "./yard.ts";

/** What each operation does. */
export const handlers: Handlers = {
  health: async () => ({ ok: true, version: ENGINE_VERSION }),
  ...sessionHandlers,
  ...accountHandlers,
  ...setUpHandlers,
  ...termsHandlers,
  ...firmPriceHandlers,
  ...depotHandlers,
  ...depotTimesHandlers,
  ...depotFiguresHandlers,
  ...todayHandlers,
  ...diaryHandlers,
  ...diaryMoveHandlers,
  ...vehicleHandlers,
  ...upkeepHandlers,
  ...hireHandlers,
  ...quoteHandlers,
  ...enquiryHandlers,
  ...stockHandlers,
  ...rateHandlers,
  ...tripHandlers,
  ...calibrationHandlers,
  ...placeHandlers,
  ...weatherHandlers,
  ...abroadHandlers,
  ...changeHandlers,
  ...ruleHandlers,
  ...noteHandlers,
  ...driverHandlers,
  ...customerHandlers,
  ...erasureHandlers,
  ...glassHandlers,
  ...messageHandlers,
  ...calendarHandlers,
  ...importHandlers,
  ...moneyHandlers,
  ...paperHandlers,
  ...keyHandlers,
  ...afterHandlers,
  ...settlementHandlers,
  ...settlementNoteHandlers,
  ...recordHandlers,
  ...photographHandlers,
  ...yardHandlers,
  ...guideHandlers,
  ...helpHandlers,
};
