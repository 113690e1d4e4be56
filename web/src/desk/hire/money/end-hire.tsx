import { useQuery } from "@tanstack/react-query";
import { type FormEvent, useState } from "react";
import { client } from "../../../api/client.ts";
import { problemAt, take } from "../../../api/failure.ts";
import { Button, ChoiceField, Dialog, SelectField, TextField } from "../../../parts/index.ts";
import { t } from "../../../parts/words.ts";
import { FailureNote } from "../../failure-note.tsx";
import { type PartProps, useHireAct } from "../use-hire.ts";
import { EndSums } from "./wait-card.tsx";

const ENDS = ["lost", "cancelled", "noShow"] as const;
const WHY = [
  "price",
  "datesTaken",
  "tooSmall",
  "licence",
  "insurance",
  "pets",
  "elsewhere",
  "noAnswer",
  "plansChanged",
  "illness",
  "other",
] as const;
const ENDABLE = ["enquiry", "quote", "booked"];

/** Lost, cancelled or no-show, with the reason. */
export function EndHire({ page }: PartProps) {
  const { id, stage } = page.hire;
  const [isOpen, setOpen] = useState(false);
  const [as, setAs] = useState<(typeof ENDS)[number]>(stage === "booked" ? "cancelled" : "lost");
  const [reason, setReason] = useState("");
  const [code, setCode] = useState<(typeof WHY)[number]>("other");
  const preview = useQuery({
    queryKey: ["ending", id, page.version],
    queryFn: () => take(client.GET("/api/hires/{id}/ending", { params: { path: { id } } })),
    enabled: isOpen,
  });
  const end = useHireAct(
    () => take(client.POST("/api/hires/{id}/end", { params: { path: { id } }, body: { as, reason, code } })),
    () => setOpen(false),
  );
  if (!ENDABLE.includes(stage)) return null;
  const send = (event: FormEvent) => {
    event.preventDefault();
    end.mutate();
  };
  return (
    <>
      <div>
        <Button look="quiet" onPress={() => setOpen(true)}>
          {t("end.open")}
        </Button>
      </div>
      <Dialog title={t("end.title")} isOpen={isOpen} onClose={() => setOpen(false)}>
        <form className="stack" onSubmit={send} noValidate>
          <ChoiceField
            label={t("end.as")}
            value={as}
            options={ENDS.map((value) => ({ value, label: t(`stage.${value}`) }))}
            onChange={setAs}
          />
          <SelectField
            label={t("rates.whyLabel")}
            value={code}
            options={WHY.map((value) => ({ value, label: t("rates.why", { code: value }) }))}
            onChange={setCode}
          />
          <TextField
            label={t("end.reason")}
            lines={3}
            value={reason}
            onChange={setReason}
            error={problemAt(end.error, "reason")}
          />
          {as !== "lost" && preview.data !== undefined && (
            <div className="stack-tight" aria-live="polite">
              {preview.data.charge === null ? (
                <p>{t("rates.endNothing")}</p>
              ) : (
                <EndSums
                  charge={preview.data.charge}
                  termsId={preview.data.termsId}
                  total={page.quote?.total ?? null}
                />
              )}
              {preview.data.nextInLine.length > 0 && (
                <p>
                  {t("rates.endNext", {
                    list: preview.data.nextInLine
                      .map(({ customer, reference }) => `${customer} (${reference})`)
                      .join(", "),
                  })}
                </p>
              )}
            </div>
          )}
          <FailureNote failure={end.error} shown={["reason"]} />
          <Button type="submit" look="danger" isPending={end.isPending} isDisabled={reason.trim() === ""}>
            {t("end.send")}
          </Button>
        </form>
      </Dialog>
    </>
  );
}
