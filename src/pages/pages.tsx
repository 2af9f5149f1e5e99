import type { PrintedPages } from "../actions/page-messages";
import { Card } from "./card";
import { PicturePage } from "./picture-page";
import { RackPlan } from "./rack-plan";
import { WeekPage } from "./week-page";

/** The pages of one kind, one after another, as they are printed. */
export function Pages({ pages }: { readonly pages: PrintedPages }) {
  switch (pages.kind) {
    case "cards":
      return (
        <>
          {pages.cards.map((card) => (
            <Card key={`${card.when} ${card.athlete}`} card={card} />
          ))}
        </>
      );
    case "rack plan":
      return (
        <>
          {pages.plans.map((plan) => (
            <RackPlan key={plan.when} plan={plan} />
          ))}
        </>
      );
    case "week page":
      return <WeekPage paper={pages.paper} />;
    case "pictures":
      return (
        <>
          {pages.pictures.map((page) => (
            <PicturePage key={page.page} page={page} />
          ))}
        </>
      );
  }
}
