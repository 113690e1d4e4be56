import type { ReactNode } from "react";
import { Button } from "../../parts/index.ts";
import { replaced } from "../replaced.ts";

interface RowListProps<Row> {
  readonly rows: readonly Row[];
  readonly onChange: (rows: Row[]) => void;
  /** the fields of one row; `set` takes what changes of it */
  readonly fields: (row: Row, set: (part: Partial<Row>) => void, put: (row: Row) => void) => ReactNode;
  /** what the button says that takes a row out; null where it may not go */
  readonly removeText: (row: Row) => string | null;
  readonly addText: string;
  /** a row as it begins */
  readonly fresh: Row;
}

/** Rows of fields in the rate card: each can be changed and taken out, and more can be added. */
export function RowList<Row extends object>(props: RowListProps<Row>) {
  const { rows, onChange, fields, removeText, addText, fresh } = props;
  return (
    <>
      {rows.map((row, k) => {
        const put = (next: Row | null) => onChange(replaced(rows, k, next));
        const out = removeText(row);
        return (
          // biome-ignore lint/suspicious/noArrayIndexKey: a row is its place, also while its name is being typed
          <div key={k} className="span-row">
            {fields(row, (part) => put({ ...row, ...part }), put)}
            {out !== null && (
              <Button look="quiet" onPress={() => put(null)}>
                {out}
              </Button>
            )}
          </div>
        );
      })}
      <div>
        <Button look="quiet" onPress={() => onChange([...rows, fresh])}>
          {addText}
        </Button>
      </div>
    </>
  );
}
