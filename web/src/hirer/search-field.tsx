export interface SearchFieldProps {
  readonly label: string;
  readonly value: string;
  readonly onChange: (value: string) => void;
}

/** One line to type in; what it finds stands below and is narrowed while one types. */
export function SearchField({ label, value, onChange }: SearchFieldProps) {
  return (
    <label className="field">
      <span className="field-label">{label}</span>
      <input
        className="input"
        type="search"
        autoComplete="off"
        value={value}
        onChange={(event) => onChange(event.currentTarget.value)}
      />
    </label>
  );
}
