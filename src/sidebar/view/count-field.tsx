/** A small whole number chosen from a list. */
export function CountField({
  label,
  value,
  counts,
  commit,
}: {
  readonly label: string;
  readonly value: number;
  readonly counts: readonly number[];
  readonly commit: (count: number) => void;
}) {
  return (
    <label class="field">
      <span>{label}</span>
      <select
        value={String(value)}
        onChange={({ currentTarget }) => commit(Number(currentTarget.value))}
      >
        {counts.map((count) => (
          <option key={count}>{count}</option>
        ))}
      </select>
    </label>
  );
}
