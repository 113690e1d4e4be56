import { useState } from "react";
import { Button, TextField } from "../../parts/index.ts";
import { t } from "../../parts/words.ts";
import { withClass, withoutClass } from "./price-classes.ts";
import type { PieceProps } from "./terms-draft.ts";

/** The classes that have prices of their own: one more, or one fewer; a vehicle says which is its class. */
export function ClassFields({
  value,
  change,
  classes,
}: PieceProps & { readonly classes: readonly string[] }) {
  const [name, setName] = useState("");
  const id = name.trim();
  const isKnown = classes.includes(id);
  const add = () => {
    change({ seasons: withClass(value.seasons, id) });
    setName("");
  };
  return (
    <section className="card stack" aria-labelledby="classes-title">
      <h2 id="classes-title">{t("rateClasses.title")}</h2>
      <p className="quiet">{t("rateClasses.lead")}</p>
      <ul className="row">
        {classes.map((each) => (
          <li key={each} className="row">
            <strong>{t("rates.class", { id: each })}</strong>
            {classes.length > 1 && (
              <Button
                look="quiet"
                onPress={() => change({ seasons: withoutClass(value.seasons, each) })}
                aria-label={t("rateClasses.removeOne", { name: t("rates.class", { id: each }) })}
              >
                {t("rateClasses.remove")}
              </Button>
            )}
          </li>
        ))}
      </ul>
      <div className="span-row">
        <TextField
          label={t("rateClasses.name")}
          note={t("rateClasses.nameNote")}
          value={name}
          onChange={setName}
          {...(isKnown ? { error: t("rateClasses.known") } : {})}
        />
        <Button onPress={add} isDisabled={id === "" || id.length > 40 || isKnown}>
          {t("rateClasses.add")}
        </Button>
      </div>
    </section>
  );
}
