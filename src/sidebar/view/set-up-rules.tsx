import { type NumberStyle, withMark } from "../../words/printed-numbers";
import { listedRules, ruleListWords } from "../../words/rule-list";

/** Every rule by the name its row in the Rules tab takes: value in force, bounds, where it comes from. */
export function Rules({
  rules,
  mark,
}: {
  readonly rules: Readonly<Record<string, number>>;
  readonly mark: NumberStyle["mark"];
}) {
  const listed = listedRules(rules);
  return (
    <section>
      <h2>{ruleListWords.title}</h2>
      <p class="soft small">{ruleListWords.help}</p>
      <details>
        <summary>{ruleListWords.show(listed.length)}</summary>
        <dl class="rules">
          {listed.map(({ rule, value, source }) => (
            <div key={rule}>
              <dt>{rule}</dt>
              <dd>{withMark(value, mark)}</dd>
              <dd class="soft small">{source}</dd>
            </div>
          ))}
        </dl>
      </details>
    </section>
  );
}
