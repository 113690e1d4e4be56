import { useMutation, useQuery } from "@tanstack/react-query";
import { client, type Schemas } from "../../api/client.ts";
import { take } from "../../api/failure.ts";
import { Button, Dialog, Loading } from "../../parts/index.ts";
import { dateText, t } from "../../parts/words.ts";
import { FailureNote } from "../failure-note.tsx";
import type { DiaryVehicle } from "./diary-model.ts";
import { diaryChanged } from "./use-diary.ts";

type Tidy = Schemas["DiaryTidy"];

export interface TidyDialogProps {
  readonly vehicles: readonly DiaryVehicle[];
  readonly from: string;
  readonly to: string;
  readonly onClose: () => void;
}

/** Moves that would make room, and how much room; nothing is moved before it is seen. */
export function TidyDialog({ vehicles, from, to, onClose }: TidyDialogProps) {
  const asked = useQuery({
    queryKey: ["tidy", from, to],
    queryFn: () => take(client.GET("/api/diary/tidy", { params: { query: { from, to } } })),
    staleTime: 0,
    gcTime: 0,
  });
  const apply = useMutation({
    mutationFn: ({ moves }: Tidy) =>
      take(
        client.POST("/api/diary/tidy", {
          body: { moves: moves.map((move) => ({ hireId: move.hireId, from: move.from, to: move.to })) },
        }),
      ),
    onSuccess: () => {
      diaryChanged();
      onClose();
    },
    onError: diaryChanged,
  });
  return (
    <Dialog title={t("diary.tidyTitle")} isOpen onClose={onClose} wide>
      <div className="stack">
        {asked.isPending && <Loading what={t("diary.tidying")} />}
        <FailureNote failure={asked.error} onAgain={() => void asked.refetch()} />
        {asked.data !== undefined && <Proposal tidy={asked.data} vehicles={vehicles} />}
        <FailureNote failure={apply.error} onAgain={() => void asked.refetch()} />
        {asked.data !== undefined && asked.data.moves.length > 0 && (
          <div className="row row-end">
            <Button look="main" isPending={apply.isPending} onPress={() => apply.mutate(asked.data)}>
              {t("diary.tidyApply", { n: asked.data.moves.length })}
            </Button>
          </div>
        )}
      </div>
    </Dialog>
  );
}

function Proposal({ tidy, vehicles }: { readonly tidy: Tidy; readonly vehicles: readonly DiaryVehicle[] }) {
  const { before, after, nights, moves, bookings, staying } = tidy;
  const nameOf = (id: string) => {
    const vehicle = vehicles.find((each) => each.id === id);
    return vehicle === undefined ? id : `${vehicle.name} ${vehicle.registration}`;
  };
  return (
    <>
      <p className="quiet">{t("diary.tidyLooked", { bookings, staying })}</p>
      {moves.length === 0 ? (
        <p>{t("diary.tidyNothing", { before, nights })}</p>
      ) : (
        <>
          <p>
            <strong>{t("diary.tidyGain", { gain: after - before, before, after, nights })}</strong>
          </p>
          <ul>
            {moves.map((move) => (
              <li key={move.hireId} className="road-line-row">
                <strong>{move.customer}</strong> <span className="quiet">{move.reference}</span>{" "}
                <span className="num">{dateText(move.at, "day")}</span>{" "}
                {t("diary.tidyMove", { from: nameOf(move.from), to: nameOf(move.to) })}
              </li>
            ))}
          </ul>
        </>
      )}
    </>
  );
}
