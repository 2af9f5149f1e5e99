import type { CardPage } from "../actions/page-messages";
import { pageLabels as words } from "../words/page-labels";
import { paperSentences as sentences } from "../words/paper-sentences";
import { Box } from "./box";
import { Decision } from "./decision";
import { Footer } from "./footer";
import { SetRows } from "./set-rows";
import { Without } from "./without";

/** One athlete's session on A5, in its order; the day's decision is the largest thing on it. */
export function Card({ card }: { readonly card: CardPage }) {
  const { marker, jumps, lift, unit } = card;
  const steps = [
    <p key="warm">
      <b>{words.warmUpName}</b> {words.warmUp}
    </p>,
    <div key="marker">
      {marker !== null && (
        <div class="mk">
          <p>
            <b>{words.markerSet(marker.load, marker.reps)}</b>, {words.fullIntent}.
            <br />
            {marker.plates}
            {marker.usual !== "" && <>. {words.usual(marker.usual)}</>}
          </p>
          <p class="boxes">
            <Box mm={12} />
            <Box mm={12} />
            <Box mm={12} />
            <span>{words.mean}</span>
            <Box mm={14} />
          </p>
        </div>
      )}
      {card.firstSet !== "" && (
        <p>
          <b>{words.firstSetName}</b> {words.firstSet(card.firstSet)}
        </p>
      )}
      {card.bands.length > 0 ? (
        <Decision bands={card.bands} unit={unit} />
      ) : (
        card.noBands !== null && (
          <p class="plain">{sentences.noBands[card.noBands](card.shareOff)}</p>
        )
      )}
    </div>,
    <div key="jumps">
      <p>
        <b>{words.jumps}.</b> {jumps.lead}
      </p>
      <table class="jump">
        <tbody>
          {jumps.lines.map(({ name, instead, amount, write }) => (
            <tr key={name + instead}>
              <td>
                {name}
                {instead !== "" && <small>{instead}</small>}
              </td>
              <td>{amount}</td>
              <td class="b">
                {write === "contact" && (
                  <>
                    {words.contact} <Box mm={14} />
                  </>
                )}
                {write === "cleared" && (
                  <>
                    <Box mm={8} /> <Box mm={8} />
                  </>
                )}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      {jumps.care !== null && <p class="fine">{sentences.jumpCare(jumps.care)}</p>}
    </div>,
    <div key="lift">
      <p>
        <b>
          {lift.name}: {words.setsOf(lift.sets, lift.reps)}
        </b>
        , {words.planned(lift.load, lift.plates)}. {lift.say}
      </p>
      <SetRows sets={lift.sets} reps={lift.reps} unit={unit} />
    </div>,
    <p key="assistance">
      <b>{words.assistance}</b> {card.assistance.join(" ")}
    </p>,
  ];
  return (
    <article class={`page card${lift.sets > 3 ? " many" : ""}`}>
      <header>
        <div>
          <h1>{card.athlete}</h1>
          <p>{card.about}</p>
        </div>
        <div class="r">
          <p>
            <b>{card.when}</b>
          </p>
          <p>{card.rack}</p>
        </div>
      </header>
      <Without without={card.without} />
      {steps.map((step, at) => (
        <section class="st" key={step.key}>
          <b class="no">{at + 1}</b>
          {step}
        </section>
      ))}
      <p class="note">{words.note}</p>
      <Footer lines={card.cautions} />
    </article>
  );
}
