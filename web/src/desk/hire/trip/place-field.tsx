import { keepPreviousData, useQuery } from "@tanstack/react-query";
import { useDeferredValue } from "react";
import { ComboBox, Input, type Key, ListBox, ListBoxItem, Popover } from "react-aria-components";
import { client } from "../../../api/client.ts";
import { take } from "../../../api/failure.ts";
import { FieldFoot, FieldLabel } from "../../../parts/field-shape.tsx";
import { t } from "../../../parts/words.ts";
import type { TripStop } from "./trip-draft.ts";

type Place = TripStop["place"];

interface PlaceFieldProps {
  readonly place: Place;
  readonly error: string | undefined;
  /** a name typed by hand keeps the point */
  readonly onName: (name: string) => void;
  /** a place of the gazetteer brings point, height and country */
  readonly onPlace: (place: Place) => void;
}

const keyOf = (place: { latitudeDeg: number; longitudeDeg: number }) =>
  `${place.latitudeDeg},${place.longitudeDeg}`;

/** A place by name: typing looks it up in the gazetteer; any other name may stay as it is. */
export function PlaceField({ place, error, onName, onPlace }: PlaceFieldProps) {
  const q = useDeferredValue(place.name.trim());
  const found = useQuery({
    queryKey: ["places", q, place.country],
    queryFn: () => take(client.GET("/api/places", { params: { query: { q, country: place.country } } })),
    enabled: q.length >= 2,
    staleTime: Number.POSITIVE_INFINITY,
    placeholderData: keepPreviousData,
  });
  const places = q.length >= 2 ? (found.data?.places ?? []) : [];
  const choose = (key: Key | null) => {
    const one = places.find((each) => keyOf(each) === key);
    if (one === undefined) return;
    const { name, country, latitudeDeg, longitudeDeg, elevationM } = one;
    onPlace({ name, country, latitudeDeg, longitudeDeg, elevationM });
  };
  return (
    <ComboBox
      className="field"
      items={places.map((each) => ({ ...each, id: keyOf(each) }))}
      inputValue={place.name}
      onInputChange={(name) => {
        if (name !== place.name) onName(name);
      }}
      selectedKey={null}
      onSelectionChange={choose}
      allowsCustomValue
      // the list opens with the first letters and fills when the answer is there, however slow it is
      allowsEmptyCollection
      isInvalid={error !== undefined}
      validationBehavior="aria"
    >
      <FieldLabel>{t("trip.placeName")}</FieldLabel>
      <Input className="input" />
      <FieldFoot note={t("trip.placeNote")} error={error} />
      <Popover className="list-popover">
        <ListBox
          renderEmptyState={() => (
            <p className="list-none">
              {t(q.length < 2 ? "place.type" : found.isFetching ? "place.looking" : "place.none")}
            </p>
          )}
        >
          {(item: (typeof places)[number] & { id: string }) => (
            <ListBoxItem id={item.id} textValue={item.name} className="list-option">
              {t("trip.placeFound", { name: item.name, country: item.country, m: item.elevationM })}
            </ListBoxItem>
          )}
        </ListBox>
      </Popover>
    </ComboBox>
  );
}
