import type { ComponentChildren } from "preact";
import type { PicturePage as Page } from "../actions/page-messages";
import { LadderChart } from "../charts/ladder-chart";
import { LineChart } from "../charts/line-chart";
import { SeasonChart } from "../charts/season-chart";
import { SetsChart } from "../charts/sets-chart";
import { pageLabels as words } from "../words/page-labels";
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
              {ahead.length > 1 && (
                <Picture name={words.aheadPicture(page.numbers.unit)}>
                  <LadderChart athlete={athlete} steps={ahead} numbers={page.numbers} />
                </Picture>
              )}
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
