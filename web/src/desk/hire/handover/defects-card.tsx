import { useState } from "react";
import { Button } from "../../../parts/index.ts";
import { t } from "../../../parts/words.ts";
import type { PartProps } from "../use-hire.ts";
import { SignDialog } from "./sign-dialog.tsx";

/** Open defects of comfort by their findings: not told yet, and told already. */
function defectsOf(page: PartProps["page"], code: string) {
  const all = page.glass?.gates.flatMap(({ findings }) => findings.map(({ finding }) => finding)) ?? [];
  return all
    .filter((finding) => finding.code === code)
    .map(({ about, facts }) => ({ id: about ?? "", what: String(facts.what ?? "") }));
}

/** What goes out not working: shown to the hirer, who signs for it; the keys wait for that. */
export function DefectsCard({ page }: PartProps) {
  const [isOpen, setOpen] = useState(false);
  const left = defectsOf(page, "defects.tell");
  const told = defectsOf(page, "defects.comfort");
  if (left.length + told.length === 0) return null;
  const title = t("evidence.tell.title");
  const shown = [
    t("evidence.tell.inText", { n: left.length }),
    ...left.map(({ what }) => `– ${what}`),
    t("evidence.tell.signText"),
  ].join("\n");
  return (
    <section className="card stack" aria-labelledby="defects-told-title">
      <div className="row spread">
        <h2 id="defects-told-title">{title}</h2>
        {left.length > 0 && <Button onPress={() => setOpen(true)}>{t("evidence.tell.sign")}</Button>}
      </div>
      <ul>
        {left.map(({ id, what }) => (
          <li key={id} className="sign-line row spread">
            <span>{what}</span>
            <span className="quiet">{t("evidence.tell.notTold")}</span>
          </li>
        ))}
        {told.map(({ id, what }) => (
          <li key={id} className="sign-line row spread">
            <span>{what}</span>
            <span className="quiet">{t("evidence.tell.told")}</span>
          </li>
        ))}
      </ul>
      {isOpen && (
        <SignDialog
          title={title}
          signer={page.customer.name}
          signing={{
            hireId: page.hire.id,
            vehicleId: page.hire.vehicle?.id ?? null,
            purpose: "defects",
            shown,
            items: left.map(({ id, what }) => ({
              kind: "note",
              content: { about: `defect.${id}`, text: what, told: true },
            })),
          }}
          onClose={() => setOpen(false)}
        />
      )}
    </section>
  );
}
