import { useQuery } from "@tanstack/react-query";
import { client } from "../../../api/client.ts";
import { take } from "../../../api/failure.ts";
import { FailureNote } from "../../failure-note.tsx";
import { DefectsList } from "../../fleet/due/defects-list.tsx";
import { keyOf } from "../../fleet/due/use-keep.ts";

/** The defect list of the vehicle that came back: the next hirer is told of what is open, or it does not go. */
export function VehicleDefects({ vehicleId }: { readonly vehicleId: string }) {
  const upkeep = useQuery({
    queryKey: keyOf(vehicleId),
    queryFn: () => take(client.GET("/api/vehicles/{id}/upkeep", { params: { path: { id: vehicleId } } })),
  });
  if (upkeep.isError) return <FailureNote failure={upkeep.error} onAgain={() => void upkeep.refetch()} />;
  if (upkeep.data === undefined) return null;
  return <DefectsList id={vehicleId} upkeep={upkeep.data} />;
}
