import type { LoadResult } from "@setfair/engine";
import { FigureTap, ScrollX } from "../../../parts/index.ts";
import { has, say, t } from "../../../parts/words.ts";

const lineName = (kind: string, name: string): string =>
  has(name) ? say(name) : kind === "item" || kind === "option" ? name : t(`load.kind.${kind as "item"}`);

/** Every mass with its place on the axles: the sum, line by line. */
export function LoadLines({ result }: { readonly result: LoadResult }) {
  return (
    <ScrollX label={t("load.lines", { n: result.lines.length })}>
      <table className="dense amounts">
        <thead>
          <tr>
            <th>{t("load.what")}</th>
            <th>{t("load.mass")}</th>
            <th>{t("load.onFront")}</th>
            <th>{t("load.onRear")}</th>
          </tr>
        </thead>
        <tbody>
          {result.lines.map((line) => (
            <tr key={line.id}>
              <td>{lineName(line.kind, line.name)}</td>
              <td>
                <FigureTap figure={line.mass} label={lineName(line.kind, line.name)} />
              </td>
              <td>
                <FigureTap figure={line.front} label={t("load.onFront")} />
              </td>
              <td>
                <FigureTap figure={line.rear} label={t("load.onRear")} />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </ScrollX>
  );
}
