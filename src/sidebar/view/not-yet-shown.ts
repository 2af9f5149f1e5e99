import type { FieldsChanged } from "../../actions/messages";

/** What was chosen since the script answered: it stands in its field until the answer does. */
export function notYetShown(now: FieldsChanged, shown: FieldsChanged): FieldsChanged {
  const fresh = Object.entries(now).filter(
    ([field, value]) => shown[field as keyof FieldsChanged] !== value,
  );
  return Object.fromEntries(fresh);
}
