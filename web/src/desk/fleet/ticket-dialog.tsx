import { useMutation, useQueryClient } from "@tanstack/react-query";
import { type FormEvent, useState } from "react";
import { client, type Schemas } from "../../api/client.ts";
import { Failure, problemAt, take } from "../../api/failure.ts";
import { Button, DateField, Dialog, NumberField, TextField } from "../../parts/index.ts";
import { say, t } from "../../parts/words.ts";
import { FailureNote } from "../failure-note.tsx";
import { focusFirstWrong } from "../focus-first-wrong.ts";
import { useSignedIn } from "../session.ts";

type NumberName = "front" | "rear" | "interval" | "fuel" | "water" | "gas" | "frontPeople" | "rearPeople";
interface Shape {
  readonly name: NumberName;
  readonly path: string;
  readonly unit?: string;
}
const ON_SCALE: readonly Shape[] = [
  { name: "front", path: "frontKg", unit: "kg" },
  { name: "rear", path: "rearKg", unit: "kg" },
  { name: "interval", path: "scaleIntervalKg", unit: "kg" },
];
const ABOARD: readonly Shape[] = [
  { name: "fuel", path: "aboard.fuelShare" },
  { name: "water", path: "aboard.waterLitres", unit: "L" },
  { name: "gas", path: "aboard.lpgCylinders" },
  { name: "frontPeople", path: "aboard.frontPeopleKg", unit: "kg" },
  { name: "rearPeople", path: "aboard.rearPeopleKg", unit: "kg" },
];
type Numbers = Readonly<Record<NumberName, number | null>>;
const EMPTY: Numbers = {
  front: null,
  rear: null,
  interval: 20,
  fuel: null,
  water: null,
  gas: null,
  frontPeople: null,
  rearPeople: 0,
};

interface Typed {
  readonly reference: string;
  readonly weighedOn: string;
  readonly numbers: Numbers;
}

/** What is empty, named before anything is sent. */
function missingIn({ reference, weighedOn, numbers }: Typed): Failure | null {
  const paths = [
    ...(reference.trim() === "" ? ["reference"] : []),
    ...(weighedOn === "" ? ["weighedOn"] : []),
    ...[...ON_SCALE, ...ABOARD].filter(({ name }) => numbers[name] === null).map(({ path }) => path),
  ];
  const expected = t("fleet.edit.needed");
  return paths.length === 0
    ? null
    : new Failure(
        0,
        "badInput",
        paths.map((path) => ({ path, expected })),
      );
}

function bodyOf({ reference, weighedOn, numbers }: Typed): Schemas["VehicleTicket"] {
  const number = (name: NumberName) => numbers[name] ?? 0;
  return {
    reference: reference.trim(),
    weighedOn,
    frontKg: number("front"),
    rearKg: number("rear"),
    scaleIntervalKg: number("interval"),
    aboard: {
      fuelShare: number("fuel") / 100,
      waterLitres: number("water"),
      lpgCylinders: number("gas"),
      frontPeopleKg: number("frontPeople"),
      rearPeopleKg: number("rearPeople"),
    },
  };
}

export interface TicketDialogProps {
  readonly id: string;
  readonly name: string;
  readonly onClose: () => void;
}

/** A ticket by axle, with what was aboard, so that it can be brought to the basis of the mass in running order. */
export function TicketDialog({ id, name, onClose }: TicketDialogProps) {
  const { today } = useSignedIn();
  const [typed, setTyped] = useState<Typed>({ reference: "", weighedOn: today, numbers: EMPTY });
  const [isTried, setTried] = useState(false);
  const queries = useQueryClient();
  const send = useMutation({
    mutationFn: () =>
      take(client.POST("/api/vehicles/{id}/tickets", { params: { path: { id } }, body: bodyOf(typed) })),
    onSuccess: async () => {
      await queries.invalidateQueries({ queryKey: ["vehicle", id] });
      await queries.invalidateQueries({ queryKey: ["vehicles"] });
      onClose();
    },
  });
  const missing = missingIn(typed);
  const failure = (isTried ? missing : null) ?? send.error;
  const submit = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    setTried(true);
    if (missing === null) send.mutate();
    focusFirstWrong(event.currentTarget);
  };
  const numbers = (shapes: readonly Shape[]) =>
    shapes.map(({ name: of, path, unit }) => (
      <NumberField
        key={of}
        label={say(`fleet.weighed.${of}`)}
        value={typed.numbers[of]}
        error={problemAt(failure, path)}
        note={of === "interval" ? t("fleet.weighed.intervalNote") : undefined}
        onChange={(value) => setTyped({ ...typed, numbers: { ...typed.numbers, [of]: value } })}
        {...(unit === undefined ? {} : { unit })}
      />
    ));
  return (
    <Dialog title={t("fleet.weighed.title", { name })} isOpen onClose={onClose}>
      <form className="stack" onSubmit={submit} noValidate>
        <p className="quiet">{t("fleet.weighed.caution")}</p>
        <div className="sheet-fields">
          <TextField
            label={t("fleet.weighed.reference")}
            value={typed.reference}
            error={problemAt(failure, "reference")}
            onChange={(reference) => setTyped({ ...typed, reference })}
          />
          <DateField
            label={t("fleet.weighed.weighedOn")}
            value={typed.weighedOn}
            error={problemAt(failure, "weighedOn")}
            onChange={(weighedOn) => setTyped({ ...typed, weighedOn })}
          />
          {numbers(ON_SCALE)}
        </div>
        <h3>{t("fleet.weighed.what")}</h3>
        <div className="sheet-fields">{numbers(ABOARD)}</div>
        <FailureNote
          failure={failure}
          shown={["reference", "weighedOn", ...[...ON_SCALE, ...ABOARD].map(({ path }) => path)]}
        />
        <div className="row row-end">
          <Button type="submit" look="main" isPending={send.isPending}>
            {t("fleet.weighed.keep")}
          </Button>
        </div>
      </form>
    </Dialog>
  );
}
