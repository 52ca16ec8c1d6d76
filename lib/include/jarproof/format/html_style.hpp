// The style sheet of all pages: plain, warm, large type; for a phone, a screen and paper.
//
// Colours stand in the first rule and nowhere else; a test works out how far each text stands out
// from its ground. No colour says anything alone: a word and a shape stand with it.
// SPDX-License-Identifier: MIT
#pragma once

#include <string_view>

namespace jarproof {

inline constexpr std::string_view html_style = R"css(
:root{
--paper:#fdf8ee;--ink:#2a1f18;--soft:#5a4a3e;--rule:#c9b79c;--edge:#7a6450;
--band:#efe2ca;--copper:#8a4312;--white:#ffffff;
--good:#1d5a3f;--good-soft:#e6f1e6;
--bad:#8c1c13;--bad-soft:#fce8e1;
--untested:#43367f;--untested-soft:#ebe8f7;
--open:#664500;--open-soft:#fbf0d2;
--plain:#46403b;--plain-soft:#f1ece4;
--glass:#e3eceb;--liquid:#f4deb0;--food:#d9995a}
*{box-sizing:border-box}
html{background:var(--paper);color:var(--ink);-webkit-text-size-adjust:100%;text-size-adjust:100%}
body{margin:0 auto;max-width:46rem;padding:1rem;
font:1.125rem/1.5 system-ui,"Segoe UI",Roboto,"Noto Sans",sans-serif;overflow-wrap:anywhere}
h1,h2,h3,h4{font-family:Palatino,"Palatino Linotype",Georgia,"Noto Serif",serif;
line-height:1.2;margin:1.6em 0 .5em;text-wrap:balance}
h1{font-size:2rem;margin:.2em 0 .3em}
h2{font-size:1.5rem;border-bottom:3px double var(--edge);padding-bottom:.2em}
h3{font-size:1.2rem}
h4{font-size:1.125rem}
p,ul,ol,table,figure,dl{margin:.6em 0}
a{color:var(--copper)}
code{font-family:ui-monospace,"DejaVu Sans Mono",Consolas,monospace;font-size:.85em}
.small{font-size:1rem;color:var(--soft)}
.label{display:flex;gap:.8rem;align-items:center;margin:1rem 0;padding:.8rem 1rem;
border:5px double;border-radius:1.1rem;font-size:1.2rem;line-height:1.35}
.label b{display:block;font-size:1.5rem;letter-spacing:.04em;line-height:1.2}
.label svg{width:3.2rem;height:3.2rem}
.shape{flex:none;width:1.5rem;height:1.5rem;vertical-align:-.3em}
.accepted{color:var(--good);background:var(--good-soft)}
.rejected,.rejects{color:var(--bad);background:var(--bad-soft)}
.untested{color:var(--untested);background:var(--untested-soft)}
.incomplete{color:var(--open);background:var(--open-soft)}
.unreadable,.warning,.note{color:var(--plain);background:var(--plain-soft)}
.shape .on{fill:currentColor}
.shape .off{fill:none;stroke:var(--white);stroke-width:3;stroke-linecap:round;stroke-linejoin:round}
.shape .dot{fill:var(--white)}
.findings{list-style:none;padding:0}
.findings>li{border-left:.45rem solid var(--edge);padding:.1rem 0 .1rem .9rem;margin:1.3rem 0}
.findings h3,.findings h4{margin:0 0 .3em}
.tag{display:inline-block;font-family:system-ui,"Segoe UI",Roboto,"Noto Sans",sans-serif;
border-radius:.5rem;padding:.1rem .5rem;white-space:nowrap;font-size:1rem;font-weight:600}
.findings>li.is-rejects{border-color:var(--bad)}
.findings>li.is-untested{border-color:var(--untested);border-left-style:double}
.findings>li.is-incomplete{border-color:var(--open);border-left-style:dashed}
.do{font-size:1.2rem;font-weight:600}
.now{font-size:1.35rem;line-height:1.35;padding-left:1.6em}
.now li{margin:.6em 0}
.now div+div{margin-top:.4em}
.now li::marker{font-weight:700}
.until{display:block}
.until b{font-size:1.5rem}
table{border-collapse:collapse;width:100%}
caption{text-align:left;font-weight:600;padding:.2rem 0}
th,td{text-align:left;vertical-align:top;padding:.4rem .5rem;border-bottom:1px solid var(--rule)}
th{overflow-wrap:normal}
th[scope=row]{font-weight:600;color:var(--soft);width:1%;white-space:nowrap;padding-left:0}
thead th{border-bottom:2px solid var(--edge)}
td strong{font-size:1.5rem;line-height:1.2;display:block}
.card ol{padding-left:1.9em}
.card li{margin:.35em 0}
.card li::marker{font-weight:700}
.jar-label{border:2px dashed var(--edge);border-radius:.8rem;padding:.2rem .9rem;max-width:34rem;
break-inside:avoid}
.jar-label tr:last-child>*{border-bottom:0}
ul.steps{list-style:none;padding:0}
ul.steps li{position:relative;padding-left:1.8em;margin:.45em 0}
ul.steps li::before{content:"";position:absolute;left:.1em;top:.25em;width:.95em;height:.95em;
border:2px solid var(--edge);border-radius:.2rem}
figure{margin:1rem 0}
figcaption{font-size:1rem;margin-top:.3rem}
.pictures{display:grid;grid-template-columns:repeat(auto-fit,minmax(min(100%,20rem),1fr));gap:1rem;
align-items:start}
.columns td:nth-child(n+3){white-space:nowrap}
.drawing{display:block;width:100%;max-width:28rem;height:auto}
.wide .drawing{max-width:40rem}
.drawing text{font:14px system-ui,"Segoe UI",Roboto,"Noto Sans",sans-serif;fill:var(--ink);
stroke:var(--paper);stroke-width:4px;stroke-linejoin:round;paint-order:stroke}
.drawing text.inside{stroke:none}
.drawing text.strong{font-weight:700}
.drawing text.light{fill:var(--white);font-weight:700;stroke:none}
.drawing .cell{fill:var(--band);stroke:var(--edge);stroke-width:1}
.drawing .here{fill:var(--copper);stroke:var(--ink);stroke-width:2.5}
.drawing .none{fill:var(--white);stroke:var(--edge);stroke-width:1;stroke-dasharray:4 3}
.drawing .axis{stroke:var(--ink);stroke-width:1.2;fill:none}
.drawing .grid{stroke:var(--rule);stroke-width:1;fill:none}
.drawing .mark{fill:var(--ink)}
.drawing .leader{stroke:var(--ink);stroke-width:1;stroke-dasharray:3 3;fill:none}
.drawing .glass{fill:var(--glass);stroke:var(--ink);stroke-width:2.5}
.drawing .liquid{fill:var(--liquid)}
.drawing .food{fill:var(--food)}
.drawing .level{stroke:var(--ink);stroke-width:2;fill:none}
.drawing .outline{stroke:var(--ink);stroke-width:2.5;fill:none}
.drawing .course{stroke:var(--ink);stroke-width:2;fill:none;stroke-linejoin:round}
.drawing .spot{fill:var(--ink)}
.drawing .required{stroke:var(--good);stroke-width:3;stroke-dasharray:9 5;fill:none}
.drawing .process{fill:var(--good-soft)}
.drawing .failing{fill:var(--bad-soft);stroke:var(--bad);stroke-width:1.5}
.drawing .hatch{stroke:var(--bad);stroke-width:1;fill:none}
.drawing .gap{fill:var(--white);stroke:var(--edge);stroke-width:1;stroke-dasharray:4 3}
.drawing .badge{fill:var(--bad)}
.drawing .event{fill:var(--ink)}
.drawing .heat{fill:var(--copper);stroke:var(--ink);stroke-width:1}
.drawing .work{fill:var(--good);stroke:var(--ink);stroke-width:1}
.drawing .rest{fill:var(--glass);stroke:var(--ink);stroke-width:1}
.key{list-style:none;padding:0;font-size:1rem}
.key li{margin:.25rem 0}
.key b{display:inline-block;min-width:1.6rem}
ol.sources{font-size:1rem;color:var(--soft);padding-left:1.6em}
footer{margin-top:2rem;border-top:3px double var(--edge);font-size:1rem}
@media (max-width:30rem){
h1{font-size:1.75rem}
th[scope=row]{font-size:1rem}
.columns{font-size:1rem}
.columns th,.columns td{padding:.4rem .2rem}
}
@media print{
@page{margin:8mm 9mm}
html,body{background:none}
body{max-width:none;padding:0;
font:9pt/1.2 Arial,"Liberation Sans",Helvetica,"Nimbus Sans",Roboto,sans-serif}
.tag{font-family:inherit}
h1{font-size:15pt;margin:0 0 .1em}
h2{font-size:11.5pt;margin:.5em 0 .2em;border-bottom-width:1px;padding-bottom:.05em}
h3,h4{font-size:10pt;margin:.35em 0 .15em}
.label{font-size:10pt;margin:.2rem 0;padding:.1rem .7rem;border-width:3px}
.label b{display:inline;font-size:12pt}
.label svg{width:1.5rem;height:1.5rem}
.do,.small,figcaption,footer,.tag,.key,ol.sources,.columns{font-size:9pt}
.tag{padding:0 .3rem}
.shape{width:1rem;height:1rem}
.now{font-size:11pt;line-height:1.2}
.now li{margin:.2em 0}.now div+div{margin-top:.1em}
.until{display:inline}
.until b{font-size:11pt}
td strong{font-size:12pt;display:inline}
p,ul,ol,table,figure,dl{margin:.2em 0}
ul,ol{padding-left:1.3em}
th,td{padding:.04rem .3rem}
.key li{margin:.05em 0}
ul.steps li{margin:.15em 0}
.small{line-height:1.15}
.findings{padding:0}
.findings>li{margin:0 0 .35rem;padding:0 0 0 .5rem;border-left-width:.25rem}
.flow,.sources{columns:2;column-gap:1.4rem}
.flow .sources{columns:1}
.flow>:first-child{margin-top:0}
h1,h2,h3,h4,caption{break-after:avoid}
figure,.label,tr,li{break-inside:avoid}
.findings>li,.card ol>li{break-inside:auto}
p{orphans:2;widows:2}
.plan{break-before:page}
.pictures{grid-template-columns:1fr 1fr;gap:.4rem;margin:.2rem 0 0}
.flow .pictures,.flow.pictures{display:block}
.foods{columns:2;column-gap:1.4rem}
.jars{grid-template-columns:5fr 3fr}
.foods>:first-child{margin-top:0}
.foods .jars{display:block}
.foods svg.drawing,.foods~.pictures figure{display:none}
.foods~.pictures,.foods~.pictures table{display:block}
.foods~.pictures tbody{display:grid;grid-template-columns:1fr 1fr;gap:0 1.4rem}
.foods~.pictures tr{display:flex}
.foods~.pictures th{min-width:4rem}.foods~.pictures td{flex:1}
.card,.card .small{line-height:1.15}
.card li{margin:.04em 0}
.card h3{margin:.3em 0 .1em}
.jar-label{border-width:1px;padding:0 .4rem}
.drawing{max-width:5.6cm}
.flow .drawing{max-width:6.6cm}
.wide .drawing,.flow .wide .drawing{max-width:9cm}
.pictures .wide .drawing{max-width:7.2cm}
.pictures .key{display:none}
footer{margin-top:.3rem;line-height:1.15;border-top-width:1px}
footer p{margin:.1em 0}
a{color:inherit;text-decoration:none}
*{-webkit-print-color-adjust:exact;print-color-adjust:exact}
}
)css";

}  // namespace jarproof
