import type { RackPage } from "../actions/page-messages";
import { pageLabels as words } from "../words/page-labels";
import { paperSentences as sentences } from "../words/paper-sentences";

const { heads } = words;

/** Box-jump stacks from the lowest: built up, never taken down, as the session goes on. */
export function StackTable({ plan }: { readonly plan: RackPage }) {
  if (plan.stacks.length === 0) return <p>{plan.noJumps}</p>;
  return (
    <section>
      <h2>{words.stackTable}</h2>
      <table>
        <thead>
          <tr>
            <th scope="col">{`${heads.stack}, ${plan.unit}`}</th>
            <th scope="col" class="num">
              {heads.cm}
            </th>
            <th scope="col">{heads.athletes}</th>
          </tr>
        </thead>
        <tbody>
          {plan.stacks.map(({ stack, height, athletes }) => (
            <tr key={`${stack} ${height}`}>
              <td class="nowrap">{stack}</td>
              <td class="num">{height}</td>
              <td>{athletes}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {plan.noJumps !== "" && <p class="back">{plan.noJumps}</p>}
    </section>
  );
}

/** Plates on the bars and in the stacks at once, against what the gym owns. */
export function PlatesTable({ plan }: { readonly plan: RackPage }) {
  const said = sentences.platesSaid(plan.short);
  return (
    <section>
      <h2>{words.platesTable}</h2>
      <table>
        <thead>
          <tr>
            <th scope="col">{`${heads.plate}, ${plan.unit}`}</th>
            {[heads.onBars, heads.inStack, heads.drop, heads.owned, heads.spare].map((head) => (
              <th key={head} scope="col" class="num">
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {plan.plates.map(({ plate, bars, stack, drop, owned, spare }) => (
            <tr key={plate}>
              <td>{plate}</td>
              <td class="num">{bars}</td>
              <td class="num">{stack === 0 ? "–" : stack}</td>
              <td class="num">{drop === 0 ? "–" : drop}</td>
              <td class="num">{owned}</td>
              <td class="num load">{spare}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {said !== "" && <p class="back">{said}</p>}
    </section>
  );
}
