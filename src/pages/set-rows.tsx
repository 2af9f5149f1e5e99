import { pageLabels as words } from "../words/page-labels";
import { Box } from "./box";

/** A line to write on for every set of the main lift. */
export function SetRows({
  sets,
  reps,
  unit,
}: {
  readonly sets: number;
  readonly reps: number;
  readonly unit: string;
}) {
  return (
    <table class="sets">
      <thead>
        <tr>
          {[
            words.set,
            words.reps,
            words.loadHead(unit),
            words.speedsHead,
            words.movementHead,
            words.reserveHead,
            words.byHead,
          ].map((head) => (
            <th key={head} scope="col">
              {head}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {Array.from({ length: sets }, (_, at) => at + 1).map((set) => (
          <tr key={set}>
            <th scope="row">{set}</th>
            <td>{reps}</td>
            <td>
              <Box mm={15} />
            </td>
            <td>
              <Box mm={36} />
            </td>
            <td>
              <Box mm={13} hint={words.yesNo} />
            </td>
            <td>
              <Box mm={13} />
            </td>
            <td>
              <Box mm={12} />
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
