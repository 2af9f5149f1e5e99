import type { SetUpRule } from "../../actions/messages";
import { ruleListWords, ruleWords } from "../../words/rule-list";

/** Every rule by the name its row in the Rules tab takes, with value, usual value and bounds. */
export function Rules({ rules }: { readonly rules: readonly SetUpRule[] }) {
  return (
    <section>
      <h2>{ruleListWords.title}</h2>
      <p class="soft small">{ruleListWords.help}</p>
      <details>
        <summary>{ruleListWords.show(rules.length)}</summary>
        <dl class="rules">
          {rules.map((one) => (
            <div key={one.rule}>
              <dt>{one.rule}</dt>
              <dd>{ruleWords(one)}</dd>
            </div>
          ))}
        </dl>
      </details>
    </section>
  );
}
