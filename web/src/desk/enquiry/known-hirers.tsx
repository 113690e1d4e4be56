import { useMutation, useQuery } from "@tanstack/react-query";
import { useDeferredValue } from "react";
import { client, type Schemas } from "../../api/client.ts";
import { take } from "../../api/failure.ts";
import { Button } from "../../parts/index.ts";
import { dateText, t } from "../../parts/words.ts";
import { FailureNote } from "../failure-note.tsx";
import type { EnquiryDraft } from "./enquiry-draft.ts";

type Hire = Schemas["HireSummary"];

interface KnownHirersProps {
  readonly value: EnquiryDraft;
  readonly change: (part: Partial<EnquiryDraft>) => void;
}

/** Stages in which somebody has had the keys. */
const HAS_DRIVEN: readonly Hire["stage"][] = ["handedOver", "onHire", "returned", "settled", "closed"];
const MOST = 3;

/** The newest hire of each name. */
function newestOfEach(hires: readonly Hire[]): readonly Hire[] {
  const found = new Map<string, Hire>();
  for (const hire of hires) if (!found.has(hire.customer)) found.set(hire.customer, hire);
  return [...found.values()].slice(0, MOST);
}

/** Whoever has asked or hired before by this name or telephone: one touch fills in the rest. */
export function KnownHirers({ value, change }: KnownHirersProps) {
  const typed = useDeferredValue(
    value.name.trim().length >= 3 ? value.name.trim() : value.telephone.replaceAll(" ", ""),
  );
  const found = useQuery({
    queryKey: ["hires", "known", typed],
    queryFn: () =>
      take(client.GET("/api/hires", { params: { query: { q: typed, ended: "true", limit: 12 } } })),
    enabled: typed.length >= 3,
  });
  const use = useMutation({
    mutationFn: ({ id }: Hire) => take(client.GET("/api/hires/{id}", { params: { path: { id } } })),
    onSuccess: ({ customer, hire }) => {
      const { name, telephone = "", email = "", address = "" } = customer;
      const experience =
        HAS_DRIVEN.includes(hire.stage) && value.experience === "first" ? "some" : value.experience;
      change({ name, telephone, email, address, experience });
    },
  });
  const known = newestOfEach(typed.length >= 3 ? (found.data?.hires ?? []) : []);
  const isFilled = value.telephone.trim() !== "" && value.email.trim() !== "";
  if (known.length === 0 || isFilled) return null;
  return (
    <div>
      <p className="quiet">{t("known.title")}</p>
      <ul className="stack-tight">
        {known.map((hire) => (
          <li key={hire.id}>
            <Button look="quiet" onPress={() => use.mutate(hire)} isPending={use.isPending}>
              {t("known.use", {
                name: hire.customer,
                reference: hire.reference,
                stage: t(`stage.${hire.stage}`),
                on: dateText(hire.from.slice(0, 10), "full"),
              })}
            </Button>
          </li>
        ))}
      </ul>
      <FailureNote failure={use.error} />
    </div>
  );
}
