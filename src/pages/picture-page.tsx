import type { ComponentChildren } from "preact";
import type { PicturePage as Page } from "../actions/page-messages";
import { LadderChart } from "../charts/ladder-chart";
import { LineChart } from "../charts/line-chart";
import { SeasonChart } from "../charts/season-chart";
import { SetsChart } from "../charts/sets-chart";
import { pageLabels as words } from "../words/page-labels";
import { sentence } from "../words/pages";
import { paperSentences as sentences } from "../words/paper-sentences";
import { Without } from "./without";

/** The pictures behind the head coach's page on A4, two athletes a page, as the sidebar draws them. */
export function PicturePage({ page }: { readonly page: Page }) {
  return (
    <article class="page sheet pictures">
      <header>
        <h1>{sentences.picturesTitle}</h1>
        <p class="r">{page.page}</p>
      </header>
      <Without without={page.without} />
      {page.athletes.map(({ athlete, word, dress, words: why, season, loadSpeed, sets, ahead }) => (
        <section key={athlete}>
          <h2>
            {athlete}{" "}
            <small>
              <span class={dress === "low" ? "word slipping" : "word rising"}>{word}</span> {why}
            </small>
          </h2>
          <div class="two">
            {season !== null && (
              <Picture name={words.seasonPicture}>
                <SeasonChart {...season} />
              </Picture>
            )}
            <div>
              {loadSpeed !== null && (
                <Picture name={words.linePicture(page.numbers.unit)}>
                  <LineChart {...loadSpeed} numbers={page.numbers} />
                </Picture>
              )}
              {sets !== null && (
                <Picture name={words.setsPicture}>
                  <SetsChart {...sets} />
                </Picture>
              )}
              <Ladders athlete={athlete} ahead={ahead} numbers={page.numbers} />
            </div>
          </div>
        </section>
      ))}
      <footer>
        <p>{words.picturesReading}</p>
      </footer>
    </article>
  );
}

/** A ladder of two weeks or more for each lift; several are told apart by their names. */
function Ladders({
  athlete,
  ahead,
  numbers,
}: Pick<Page, "numbers"> & Pick<Page["athletes"][number], "athlete" | "ahead">) {
  const shown = ahead.filter(({ steps }) => steps.length > 1);
  const about = (lift: string) => (shown.length > 1 ? lift : "");
  return (
    <>
      {shown.map(({ lift, steps }) => (
        <Picture key={lift} name={words.aheadPicture(numbers.unit, sentence(about(lift)))}>
          <LadderChart
            athlete={[athlete, about(lift)].filter(Boolean).join(", ")}
            steps={steps}
            numbers={numbers}
          />
        </Picture>
      ))}
    </>
  );
}

function Picture({
  name,
  children,
}: {
  readonly name: string;
  readonly children: ComponentChildren;
}) {
  return (
    <figure>
      <figcaption>{name}</figcaption>
      {children}
    </figure>
  );
}
