import type { ComponentChildren } from "preact";
import type { PicturePage as Page } from "../actions/page-messages";
import { LadderChart } from "../charts/ladder-chart";
import { LineChart } from "../charts/line-chart";
import { SeasonChart } from "../charts/season-chart";
import { SetsChart } from "../charts/sets-chart";
import { pageLabels as words } from "../words/page-labels";
import { sentence } from "../words/pages";
import { paperSentences as sentences } from "../words/paper-sentences";
import { printedNumbers } from "../words/printed-numbers";
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
      {page.athletes.map((one) => (
        <Pictures key={one.athlete} {...one} numbers={page.numbers} />
      ))}
      <footer>
        <p>{words.picturesReading}</p>
      </footer>
    </article>
  );
}

/** One athlete's pictures; of a lift done in turn the weeks ahead stand in words, for two athletes a page. */
function Pictures({
  athlete,
  word,
  dress,
  words: why,
  season,
  loadSpeed,
  sets,
  ahead,
  numbers,
}: Page["athletes"][number] & Pick<Page, "numbers">) {
  const [first, ...others] = ahead;
  const name = (lift: string) =>
    words.aheadPicture(numbers.unit, others.length > 0 ? sentence(lift) : "");
  const { mass } = printedNumbers(numbers);
  return (
    <section>
      <h2>
        {athlete}{" "}
        <small>
          <span class={dress === "low" ? "word slipping" : "word rising"}>{word}</span> {why}
        </small>
      </h2>
      <div class="two">
        <div>
          {season !== null && (
            <Picture name={words.seasonPicture}>
              <SeasonChart {...season} />
            </Picture>
          )}
          {others.map(({ lift, steps }) => (
            <p key={lift} class="ahead">
              {name(lift)}
              <br />
              {steps
                .map(({ week, block, loadKg }) => `${week} ${block} ${mass(loadKg)}`)
                .join("; ")}
            </p>
          ))}
        </div>
        <div>
          {loadSpeed !== null && (
            <Picture name={words.linePicture(numbers.unit)}>
              <LineChart {...loadSpeed} numbers={numbers} />
            </Picture>
          )}
          {sets !== null && (
            <Picture name={words.setsPicture}>
              <SetsChart {...sets} />
            </Picture>
          )}
          {first && first.steps.length > 1 && (
            <Picture name={name(first.lift)}>
              <LadderChart athlete={athlete} steps={first.steps} numbers={numbers} />
            </Picture>
          )}
        </div>
      </div>
    </section>
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
