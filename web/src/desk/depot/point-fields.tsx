import { keepPreviousData, useQuery } from "@tanstack/react-query";
import { useDeferredValue, useState } from "react";
import { ComboBox, Input, type Key, ListBox, ListBoxItem, Popover } from "react-aria-components";
import type { Schemas } from "../../api/client.ts";
import { FieldFoot, FieldLabel } from "../../parts/field-shape.tsx";
import { NumberField } from "../../parts/index.ts";
import { t } from "../../parts/words.ts";

type Found = Schemas["Places"]["places"][number];
export interface Point {
  readonly latitudeDeg: number | null;
  readonly longitudeDeg: number | null;
}

interface PointFieldsProps {
  readonly point: Point;
  readonly onChange: (point: Point) => void;
  /** looks names up; who may ask where differs before and after somebody has signed in */
  readonly find: (q: string) => Promise<Schemas["Places"]>;
  readonly errors: { readonly latitude: string | undefined; readonly longitude: string | undefined };
}

const keyOf = ({ latitudeDeg, longitudeDeg }: Found) => `${latitudeDeg},${longitudeDeg}`;

/** Where the depot is: by the name of a town near by, or to the thousandth of a degree. */
export function PointFields({ point, onChange, find, errors }: PointFieldsProps) {
  const [name, setName] = useState("");
  const q = useDeferredValue(name.trim());
  const found = useQuery({
    queryKey: ["depotPlaces", q],
    queryFn: () => find(q),
    enabled: q.length >= 2,
    staleTime: Number.POSITIVE_INFINITY,
    placeholderData: keepPreviousData,
  });
  const places = q.length >= 2 ? (found.data?.places ?? []) : [];
  const choose = (key: Key | null) => {
    const one = places.find((each) => keyOf(each) === key);
    if (one === undefined) return;
    setName(one.name);
    onChange({ latitudeDeg: one.latitudeDeg, longitudeDeg: one.longitudeDeg });
  };
  return (
    <div className="sheet-fields">
      <ComboBox
        className="field"
        items={places.map((each) => ({ ...each, id: keyOf(each) }))}
        inputValue={name}
        onInputChange={setName}
        selectedKey={null}
        onSelectionChange={choose}
        allowsCustomValue
      >
        <FieldLabel>{t("point.search")}</FieldLabel>
        <Input className="input" />
        <FieldFoot note={t("point.searchNote")} />
        <Popover className="list-popover">
          <ListBox>
            {(item: Found & { id: string }) => (
              <ListBoxItem id={item.id} textValue={item.name} className="list-option">
                {t("trip.placeFound", { name: item.name, country: item.country, m: item.elevationM })}
              </ListBoxItem>
            )}
          </ListBox>
        </Popover>
      </ComboBox>
      <NumberField
        label={t("point.latitude")}
        unit="°"
        min={34}
        max={72}
        step={0.001}
        value={point.latitudeDeg}
        onChange={(latitudeDeg) => onChange({ ...point, latitudeDeg })}
        error={errors.latitude}
      />
      <NumberField
        label={t("point.longitude")}
        unit="°"
        note={t("point.westNote")}
        min={-25}
        max={40}
        step={0.001}
        value={point.longitudeDeg}
        onChange={(longitudeDeg) => onChange({ ...point, longitudeDeg })}
        error={errors.longitude}
      />
    </div>
  );
}
