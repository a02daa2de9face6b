#pragma once
// The style of an HTML page: for the screen and for paper, A4 and US letter, in colour and in black and white.
//
// Nothing is told by colour alone: each status has a word and a sign of its own shape. Frames are lines, not
// backgrounds, because browsers leave backgrounds off when they print.

namespace fieldshaft {
inline namespace v0 {
namespace pages {

inline constexpr const char* page_style = R"(
:root { --ink: #111; --quiet: #444; --line: #888; --stop: #a51d00; --caution: #7a4b00; --not_known: #00477f;
  --ok: #00573f; }
* { box-sizing: border-box; }
html { color: var(--ink); background: #fff; -webkit-text-size-adjust: 100%; }
body { margin: 0 auto; padding: 1.2rem; max-width: 62rem; font: 1rem/1.4 Arial, "Liberation Sans", sans-serif; }
h1 { margin: 0 0 .6rem; font-size: 1.3rem; }
h2 { margin: 1.4rem 0 .5rem; padding-bottom: .15rem; border-bottom: 2px solid var(--ink); font-size: 1.1rem; }
h3, h4 { margin: .8rem 0 .2rem; font-size: 1rem; }
p { margin: .2rem 0 .4rem; }
ol, ul { margin: .3rem 0; padding-left: 1.8rem; }
li { margin: .25rem 0; }
a { color: inherit; }
.note { font-size: .75em; font-weight: normal; white-space: nowrap; }
.note a { text-decoration: none; }
.sign { width: 1.15em; height: 1.15em; margin-right: .35em; vertical-align: -.2em; }
.stop .sign, .stop .word { color: var(--stop); }
.caution .sign, .caution .word { color: var(--caution); }
.not_known .sign, .not_known .word { color: var(--not_known); }
.ok .sign, .ok .word { color: var(--ok); }
.word { font-weight: bold; white-space: nowrap; }
.verdict { margin: 0 0 1rem; padding: .7rem .9rem; border: 4px solid var(--ink); }
.verdict.stop { border-color: var(--stop); }
.verdict.caution { border-color: var(--caution); border-style: dashed; }
.verdict.not_known { border-color: var(--not_known); border-style: dotted; }
.verdict.ok { border-color: var(--ok); border-width: 2px; }
.verdict p { margin: .2rem 0; }
.verdict .head { font-size: 1.25rem; font-weight: bold; }
dl { display: grid; grid-template-columns: max-content 1fr; gap: .15rem .9rem; margin: .5rem 0; }
dt { font-weight: bold; }
dd { margin: 0; }
.scroll { margin-bottom: .6rem; overflow-x: auto; }
table { width: 100%; border-collapse: collapse; font-size: .9rem; }
caption { padding: .2rem 0; text-align: left; font-style: italic; }
th, td { padding: .22rem .45rem; border-bottom: 1px solid var(--line); text-align: left; vertical-align: top; }
thead th { border-bottom: 2px solid var(--ink); }
tbody th { font-weight: normal; }
.right { text-align: right; }
.blank { width: 8rem; }
td.right, td.state { white-space: nowrap; }
tr.stop th { font-weight: bold; }
.findings { columns: 24rem 2; column-gap: 1.6rem; }
.finding { margin: 0 0 .8rem; padding-left: .6rem; border-left: 2px solid var(--line); break-inside: avoid; }
.finding.stop { border-left: 6px solid var(--stop); }
.finding.caution { border-left: 4px dashed var(--caution); }
.finding.not_known { border-left: 4px dotted var(--not_known); }
.finding h3, .finding h4 { margin-top: 0; }
.finding .figures { font-weight: bold; }
.finding.ok h3 .word, .finding.ok h4 .word { font-weight: normal; }
.steps { list-style-position: outside; }
.box { display: inline-block; width: .85em; height: .85em; margin-right: .5em; border: 1.5px solid var(--ink);
  vertical-align: -.08em; }
.notes ol { columns: 24rem 2; column-gap: 1.6rem; font-size: .8rem; color: var(--quiet); }
.notes li { break-inside: avoid; }
.notes li:target { outline: 2px solid var(--ink); }
footer { margin-top: 1.2rem; padding-top: .3rem; border-top: 1px solid var(--line); font-size: .8rem;
  color: var(--quiet); }
@page { margin: 10mm; }
@media print {
  body { max-width: none; padding: 0; font-size: 8.5pt; line-height: 1.2; }
  h1 { margin-bottom: 4pt; font-size: 11.5pt; }
  h2 { margin: 6pt 0 2pt; padding-bottom: 0; border-bottom-width: 1px; font-size: 10pt; break-after: avoid; }
  .sheet { break-before: page; }
  h3, h4 { font-size: 8.5pt; break-after: avoid; }
  p { margin: 1pt 0; }
  ol, ul { margin: 1pt 0; padding-left: 18pt; }
  li { margin: 1pt 0; }
  dl { margin: 3pt 0; gap: 0 8pt; }
  .verdict { margin-bottom: 4pt; padding: 3pt 6pt; border-width: 3pt; }
  .verdict p { margin: 1pt 0; }
  .verdict .head { font-size: 11.5pt; }
  table { font-size: 7.5pt; }
  th, td { padding: .6pt 4pt; }
  tr, li { break-inside: avoid; }
  thead { display: table-header-group; }
  .scroll { margin-bottom: 4pt; overflow: visible; }
  .finding.ok .word { display: none; } /* their heading says it, and the sign */
  .findings { columns: 2; column-gap: 6mm; }
  .finding { margin-bottom: 2pt; padding-left: 4pt; font-size: 7.5pt; line-height: 1.15; }
  .finding h3, .finding h4 { margin: 0; font-size: 7.5pt; }
  .finding p { margin: 0; }
  .finding.stop { font-size: 8.5pt; }
  .finding.stop h3, .finding.stop h4 { font-size: 8.5pt; }
  .notes ol { columns: 3; column-gap: 6mm; font-size: 6.3pt; line-height: 1.1; }
  .notes li { margin: 0; }
  footer { margin-top: 4pt; font-size: 6.5pt; }
}
)";

} // namespace pages
} // namespace v0
} // namespace fieldshaft
