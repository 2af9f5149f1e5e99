/**
 * Words of labels that are no terms of ours, each group with why it may stand in a label without a
 * line in the guide's list. A trade word that means something particular here belongs in that list.
 */
export const plainWords: Readonly<Record<string, string>> = {
  "small words of English that hold a label together; y and n for yes and no, C for the least of races":
    "a about against ahead all alone among and another are at before beside by can do done else everything first for from hardly has here how if in into is it its last like many may more near neither new next no none nor not nothing of off on once one only or others own same several so something the there these this twice up what where left who whole whose why without yes yet you your y n c",
  "things and actions of a page or a spreadsheet, in their everyday sense":
    "again ask answer bare blank calculated calculating cell cells change changed changes check close column comma copied counts deleted files find forget found goes header heading headings highlight holds holdline leave line listed missing name needed note number numbers open opening order pages paper preparing print question questions read reading redo redone remember rest result row rows rule rules said sample save saved saving see set shown side sidebar stands stay starts ends tab table tables tabs taken try turned type typed undo undone unreadable views window word words workbook working write written xlsx",
  "time and measure":
    "cm date dates day days distance kg length m percent s time today today’s unit week weeks year birth",
  "comparisons, in their everyday sense":
    "bounds far fraction good heavier longer lighter lower lowest mean meaning possible right slow slower differed doubt known odd unusual",
  "words every coach of runners and every gym uses as we do":
    "allowed athlete athletes bar bars box-jump cards contact decides diary drop exercise owned proposed repeat figure gym illness intent jump jumps lift load pain plan planned plate plates rack reps repetitions run runner runs scheme season session sessions sets spare speed speeds squad supervisor's test warm",
};
