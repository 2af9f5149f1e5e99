// Text made to do harm where a program takes it for something else: each one would set a flag, ask another machine or become a formula.
const flag = "window.broken=1";
const away = "http://127.0.0.2:9/away";

export const scripts = [
  `<script>${flag}</script>`,
  `<img src=x onerror="${flag}">`,
  `<svg onload="${flag}"><animate onbegin="${flag}" attributeName=x dur=1s></svg>`,
  `"><svg/onload=${flag}>`,
  `' autofocus onfocus='${flag}' x='`,
  `</title></textarea></style></script><script>${flag}</script>`,
  `</text></svg><foreignObject><body onload="${flag}"></foreignObject>`,
  `<iframe srcdoc="<script>parent.${flag}</script>"></iframe>`,
  `<a href="javascript:${flag}">x</a>`,
  `javascript:${flag}`,
  `<math><mtext><style><img src=x onerror=${flag}></style></mtext></math>`,
  `<form action="${away}"><input type=submit autofocus>`,
] as const;

export const styles = [
  `<style>@import "${away}";</style>`,
  `red;background:url(${away})`,
  `</style><link rel=stylesheet href=${away}>`,
  `<img src="${away}">`,
  `${away}`,
  `<meta http-equiv=refresh content="0;url=${away}">`,
] as const;

// Put together from parts: nothing here is meant as a template of ours.
const placeholder = `$${"{window.broken=1}"}`;
export const templates = [
  placeholder,
  `\`${placeholder}\``,
  "<?= 1 ?><?!= 2 ?>",
  "{{constructor}}",
  "$& $1 $`",
] as const;

export const formulas = [
  "=1+1",
  '=HYPERLINK("http://127.0.0.2:9/away","x")',
  '=IMPORTXML("http://127.0.0.2:9/away","//x")',
  "=cmd|' /C calc'!A0",
  "+1+1",
  "-2+3+cmd|' /C calc'!A0",
  "@SUM(1+1)",
  "\t=1+1",
  "\r=1+1",
  "'=1+1",
] as const;

export const invisible = [
  "Tomas\u202Enosreyer",
  "\u2067Tomas\u2069\u2066 abc",
  "To\u200Bmas\u2060 Reyer\u00ADson",
  "\uFEFFTomas Reyerson",
  "Tomas\u0000Reyerson\u0007",
  "T\u0336o\u0336m\u0336".repeat(40),
] as const;

export const keys = [
  "__proto__",
  "constructor",
  "prototype",
  "toString",
  "hasOwnProperty",
  "valueOf",
  "__defineGetter__",
] as const;

export const long = "Reyerson ".repeat(600);

export const hostileText: readonly string[] = [
  ...scripts,
  ...styles,
  ...templates,
  ...formulas,
  ...invisible,
  ...keys,
  long,
];
