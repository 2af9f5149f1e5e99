import type { CardBand } from "../actions/page-messages";
import { PlatesRow } from "../charts/plates-row";
import { pageLabels as words } from "../words/page-labels";
import { Box } from "./box";

/** The day's decision: for each speed of the marker set, the load, its plates and its floor. */
export function Decision({
  bands,
  unit,
}: {
  readonly bands: readonly CardBand[];
  readonly unit: string;
}) {
  return (
    <table class="dec">
      <caption>{words.decides}</caption>
      <thead>
        <tr>
          <th scope="col">{words.meanHead}</th>
          <th scope="col">{words.liftHead(unit)}</th>
          <th scope="col">{words.platesHead(unit)}</th>
          <th scope="col">{words.floorHead}</th>
          <th scope="col">
            <span class="off">{words.tick}</span>
          </th>
        </tr>
      </thead>
      <tbody>
        {bands.map((band) => (
          <tr key={band.speed} class={band.lift === "" ? "stop" : ""}>
            <th scope="row" class="when">
              {band.speed} <small>{band.speedAfter}</small>
              {band.again !== "" && <small class="again">{band.again}</small>}
            </th>
            {band.lift === "" ? (
              <td class="lift none" colSpan={3}>
                {words.noHeavy}
              </td>
            ) : (
              <>
                <td class="lift">{band.lift}</td>
                <td>
                  <span class="pl">
                    <PlatesRow side={band.side} />
                    <span>{band.plates}</span>
                  </span>
                </td>
                <td class="fl">{band.floor}</td>
              </>
            )}
            <td class="tick">
              <Box mm={5} />
            </td>
          </tr>
        ))}
      </tbody>
      <tfoot>
        <tr>
          <td class="fine" colSpan={5}>
            {words.faster}
          </td>
        </tr>
      </tfoot>
    </table>
  );
}
