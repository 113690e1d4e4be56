import { FieldError, Label, Text } from "react-aria-components";

export interface FieldWords {
  readonly label: string;
  readonly note?: string | undefined;
  /** what is wrong, named for this field; shown below it */
  readonly error?: string | undefined;
}

/** The label above a field. */
export function FieldLabel({ children }: { readonly children: string }) {
  return <Label className="field-label">{children}</Label>;
}

/** Note and error below a field. */
export function FieldFoot({ note, error }: Omit<FieldWords, "label">) {
  return (
    <>
      {note !== undefined && error === undefined && (
        <Text slot="description" className="field-note">
          {note}
        </Text>
      )}
      <FieldError className="field-error">{error}</FieldError>
    </>
  );
}
