import { listedRules, ruleListWords } from "../../words/rule-list";

/** Every rule by the name its row in the Rules tab takes: value in force, bounds, where it comes from. */
export function Rules({ rules }: { readonly rules: Readonly<Record<string, number>> }) {
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
              <dd>{value}</dd>
              <dd class="soft small">{source}</dd>
            </div>
          ))}
        </dl>
      </details>
    </section>
  );
}
