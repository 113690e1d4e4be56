import { useMutation } from "@tanstack/react-query";
import { client } from "../../../api/client.ts";
import { take } from "../../../api/failure.ts";
import { Button } from "../../../parts/index.ts";
import { dateText, t } from "../../../parts/words.ts";
import { FailureNote } from "../../failure-note.tsx";
import { queries } from "../../query-client.ts";
import type { PartProps } from "../use-hire.ts";

/** The hirer's own guide to this vehicle and trip, on their phone, by a link of their own. */
export function HirerLinkCard({ page }: PartProps) {
  const { id } = page.hire;
  const make = useMutation({
    mutationFn: () => take(client.POST("/api/hires/{id}/hirer-link", { params: { path: { id } } })),
    onSuccess: () => void queries.invalidateQueries({ queryKey: ["hire", id] }),
  });
  if (page.hire.vehicle === null) return null;
  return (
    <section className="card stack-tight" aria-labelledby="link-title">
      <div className="row spread">
        <div>
          <h2 id="link-title">{t("link.title")}</h2>
          <p className="quiet">
            {page.hirerLink === null
              ? t("link.none")
              : t("link.expires", { at: dateText(page.hirerLink.expires, "full") })}
          </p>
        </div>
        <Button onPress={() => make.mutate()} isPending={make.isPending}>
          {t(page.hirerLink === null ? "link.make" : "link.again")}
        </Button>
      </div>
      {make.data !== undefined && (
        <p>
          <a href={make.data.url} target="_blank" rel="noreferrer">
            {make.data.url}
          </a>{" "}
          <Button look="quiet" onPress={() => void navigator.clipboard.writeText(make.data.url)}>
            {t("link.copy")}
          </Button>
        </p>
      )}
      <FailureNote failure={make.error} />
    </section>
  );
}
