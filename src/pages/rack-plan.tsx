import type { RackLine, RackPage } from "../actions/page-messages";
import { PlatesRow } from "../charts/plates-row";
import { pageLabels as words } from "../words/page-labels";
import { paperSentences as sentences } from "../words/paper-sentences";
import { Footer } from "./footer";
import { PlatesTable, StackTable } from "./room-tables";
import { Without } from "./without";

/** One gym session's racks on A4: who shares a bar, in which order, with which plates to change. */
export function RackPlan({ plan }: { readonly plan: RackPage }) {
  return (
    <article class="page sheet rack">
      <header>
        <h1>{words.rackPlan}</h1>
        <p class="r">
          <b>{plan.when}</b>
        </p>
      </header>
      <Without without={plan.without} />
      <p class="lead">{sentences.rackLead(plan.lifters, plan.racks.length, plan.minutes)}</p>
      {plan.warning !== "" && <p class="warning">{plan.warning}</p>}
      {plan.racks.map(({ name, bar, lines, back }) => (
        <section key={name}>
          <h2>
            {name} <small>{bar}</small>
          </h2>
          <table class="turns">
            <thead>
              <tr>
                <th scope="col" />
                <th scope="col">{words.heads.athlete}</th>
                <th scope="col" class="num">
                  {words.heads.marker}
                </th>
                <th scope="col">{words.heads.change}</th>
                <th scope="col" class="num">
                  {words.heads.lift}
                </th>
                <th scope="col">{words.platesHead(plan.unit)}</th>
                <th scope="col">{words.heads.change}</th>
                <th scope="col">{words.heads.sets}</th>
                <th scope="col">{words.heads.slower}</th>
              </tr>
            </thead>
            <tbody>
              {lines.map((line, at) => (
                <Turn key={line.athlete} line={line} place={at + 1} />
              ))}
            </tbody>
          </table>
          {back !== "" && <p class="back">{back}</p>}
        </section>
      ))}
      <div class="two">
        <StackTable plan={plan} />
        <PlatesTable plan={plan} />
      </div>
      <Footer lines={plan.cautions} />
    </article>
  );
}

function Turn({ line, place }: { readonly line: RackLine; readonly place: number }) {
  return (
    <tr>
      <td class="soft">{place}</td>
      <th scope="row">{line.athlete}</th>
      <td class="num">{line.marker}</td>
      <td class="change">{line.markerChange}</td>
      <td class="num load">{line.load}</td>
      <td>
        <span class="pl">
          <PlatesRow side={line.side} />
          <span>{line.plates}</span>
        </span>
      </td>
      <td class="change">{line.change}</td>
      <td>{line.sets}</td>
      <td>{line.slower}</td>
    </tr>
  );
}
