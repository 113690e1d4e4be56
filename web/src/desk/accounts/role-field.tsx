import { ChoiceField } from "../../parts/index.ts";
import { say, t } from "../../parts/words.ts";

const ROLES = ["desk", "yard", "manager"] as const;
export type StaffRole = (typeof ROLES)[number];

interface RoleFieldProps {
  readonly value: StaffRole;
  readonly onChange: (role: StaffRole) => void;
  readonly error: string | undefined;
}

/** What somebody does, and what that lets them do. */
export function RoleField({ value, onChange, error }: RoleFieldProps) {
  return (
    <ChoiceField
      label={t("accounts.role")}
      note={say(`accounts.roleNote.${value}`)}
      value={value}
      options={ROLES.map((role) => ({ value: role, label: say(`accounts.role.${role}`) }))}
      onChange={onChange}
      error={error}
    />
  );
}
