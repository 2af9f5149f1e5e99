/** How the program is used. */
export const help = `Holdline reads a coach's rows and says who holds, who slips, who rises.

  npm run -s holdline -- open    [workbook] [--port N]               serve the grid on 127.0.0.1
  npm run -s holdline -- squad   [workbook] [--as-of DATE] [--json]  the squad table
  npm run -s holdline -- formula <workbook> '<formula>' [--json]     any formula, without a page
  npm run -s holdline -- check   [workbook] [--json]                 every row problem

A workbook is an .xlsx file or a folder of CSV files; without one, the sample squad.
DATE is a day such as 2026-06-28. Without it the day beside the word “Today” in the workbook
counts, and without that today's date.

Exit status: 0 done; 1 problems found or refused, said on standard error; 2 wrong usage.
`;
