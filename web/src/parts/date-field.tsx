import {
  type CalendarDate,
  type CalendarDateTime,
  type DateValue,
  parseDate,
  parseDateTime,
  Time,
  toCalendarDateTime,
} from "@internationalized/date";
import {
  Button,
  Calendar,
  CalendarCell,
  CalendarGrid,
  CalendarGridBody,
  CalendarGridHeader,
  CalendarHeaderCell,
  CalendarHeading,
  DateInput,
  DatePicker,
  DateSegment,
  Dialog,
  Group,
  Popover,
} from "react-aria-components";
import { FieldFoot, FieldLabel, type FieldWords } from "./field-shape.tsx";
import { t } from "./words.ts";

interface CivilProps extends FieldWords {
  /** civil text, or empty while nothing is entered */
  readonly value: string;
  readonly onChange: (value: string) => void;
  readonly min?: string;
  readonly required?: boolean;
}

const read = <Value extends DateValue>(text: string, parse: (text: string) => Value): Value | null => {
  try {
    return text === "" ? null : parse(text);
  } catch {
    return null;
  }
};

function MonthPopover() {
  return (
    <Popover className="list-popover">
      <Dialog className="calendar" aria-label={t("parts.calendar")}>
        <Calendar>
          <header className="calendar-head">
            <Button slot="previous" className="button" aria-label={t("parts.monthBefore")}>
              ‹
            </Button>
            <CalendarHeading />
            <Button slot="next" className="button" aria-label={t("parts.monthAfter")}>
              ›
            </Button>
          </header>
          <CalendarGrid>
            <CalendarGridHeader>{(day) => <CalendarHeaderCell>{day}</CalendarHeaderCell>}</CalendarGridHeader>
            <CalendarGridBody>
              {(date) => <CalendarCell date={date} className="calendar-cell" />}
            </CalendarGridBody>
          </CalendarGrid>
        </Calendar>
      </Dialog>
    </Popover>
  );
}

interface ShapeProps<Value extends DateValue> extends FieldWords {
  readonly value: Value | null;
  readonly onChange: (value: Value | null) => void;
  readonly min: Value | null;
  readonly granularity: "day" | "minute";
  readonly required: boolean;
}

function PickerShape<Value extends DateValue>(props: ShapeProps<Value>) {
  return (
    <DatePicker
      className="field"
      value={props.value}
      onChange={(next) => props.onChange(next as Value | null)}
      granularity={props.granularity}
      hourCycle={24}
      shouldForceLeadingZeros
      isInvalid={props.error !== undefined}
      isRequired={props.required}
      validationBehavior="aria"
      {...(props.min === null ? {} : { minValue: props.min })}
    >
      <FieldLabel>{props.label}</FieldLabel>
      <Group className="date-box">
        <DateInput className="input date-input">
          {(segment) => <DateSegment segment={segment} className="date-segment" />}
        </DateInput>
        <Button className="button" aria-label={t("parts.openCalendar", { what: props.label })}>
          <svg width="20" height="20" viewBox="0 0 20 20" aria-hidden="true">
            <path d="M2 5h16v13H2zM2 9h16M6 2v4M14 2v4" fill="none" stroke="currentColor" strokeWidth="1.8" />
          </svg>
        </Button>
      </Group>
      <FieldFoot note={props.note} error={props.error} />
      <MonthPopover />
    </DatePicker>
  );
}

/** A civil day, `YYYY-MM-DD`; typed or picked. */
export function DateField({ value, onChange, min, required = false, ...rest }: CivilProps) {
  return (
    <PickerShape<CalendarDate>
      {...rest}
      required={required}
      granularity="day"
      value={read(value, parseDate)}
      min={min === undefined ? null : read(min, parseDate)}
      onChange={(next) => onChange(next === null ? "" : next.toString())}
    />
  );
}

/** A civil day and time in the depot's zone, `YYYY-MM-DDTHH:MM`; typed or picked. */
export function DateTimeField({ value, onChange, min, required = false, ...rest }: CivilProps) {
  const write = (next: CalendarDateTime | null) => {
    if (next === null) return onChange("");
    const whole = "hour" in next ? next : toCalendarDateTime(next, new Time(10));
    onChange(whole.toString().slice(0, 16));
  };
  return (
    <PickerShape<CalendarDateTime>
      {...rest}
      required={required}
      granularity="minute"
      value={read(value, parseDateTime)}
      min={min === undefined ? null : read(min, parseDateTime)}
      onChange={write}
    />
  );
}
