import { useState } from "preact/hooks";

/**
 * A field that is typed into. What is being typed stays through every drawing until it is sent:
 * an answer that comes meanwhile must not put the old text back. What cannot be right stays too, with
 * a sentence under it, and is not sent.
 *
 * @param refusal why a text cannot be sent; "" when it can
 */
export function TypedField({
  label,
  value,
  most,
  refusal,
  commit,
}: {
  readonly label: string;
  readonly value: string;
  /** Highest of a whole number; a field without one takes any text. */
  readonly most?: number;
  readonly refusal: (text: string) => string;
  readonly commit: (text: string) => void;
}) {
  const [typed, setTyped] = useState<string | null>(null);
  const [refused, setRefused] = useState("");
  const kind =
    most === undefined ? { type: "text" as const } : { type: "number" as const, min: 0, max: most };
  return (
    <div>
      <label class="field">
        <span>{label}</span>
        <input
          {...kind}
          value={typed ?? value}
          aria-invalid={refused !== ""}
          onInput={({ currentTarget }) => setTyped(currentTarget.value)}
          onChange={({ currentTarget }) => {
            const why = refusal(currentTarget.value);
            setRefused(why);
            if (why !== "") return;
            setTyped(null);
            commit(currentTarget.value);
          }}
          onBlur={({ currentTarget }) => {
            if (refusal(currentTarget.value) === "") setTyped(null);
          }}
        />
      </label>
      {refused !== "" && (
        <p class="small" role="alert">
          {refused}
        </p>
      )}
    </div>
  );
}
