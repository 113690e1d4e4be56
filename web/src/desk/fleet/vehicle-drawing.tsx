import { drawVehicle } from "@setfair/drawing";
import type { VehicleDescription, View } from "@setfair/engine";
import type { Schemas } from "../../api/client.ts";
import { SvgView } from "../../parts/svg-view.tsx";
import { has, say, t } from "../../parts/words.ts";

export interface VehicleDrawingProps {
  readonly vehicle: VehicleDescription;
  readonly view: View;
  readonly marks: readonly Schemas["KnownMark"][];
}

/** The vehicle in one view, drawn from its own description, with the marks that are known. */
export function VehicleDrawing({ vehicle, view, marks }: VehicleDrawingProps) {
  const node = drawVehicle(vehicle, view, {
    title: t("fleet.drawing", { name: vehicle.name, view: say(`view.${view}`) }),
    nameOf: (id) => (has(id) ? say(id) : id),
    marks: marks.flatMap((mark, k) =>
      mark.view === view
        ? [
            {
              id: mark.recordId,
              x: mark.xShare,
              y: mark.yShare,
              label: String(k + 1),
              title: t("back.mark", { kind: mark.markKind, part: mark.part, size: mark.sizeMm ?? 0 }),
              isNew: false,
            },
          ]
        : [],
    ),
  });
  return (
    <div className="fleet-drawing">
      <SvgView node={node} />
    </div>
  );
}
