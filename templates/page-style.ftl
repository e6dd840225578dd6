@page { size: ${f.width}mm ${f.height}mm; margin: 15mm ${f.right}mm 20mm 20mm; @bottom-center { content: element(foot); vertical-align: top; padding-top: 4mm; } }
* { box-sizing: border-box; }
body { font-family: Lato, 'DejaVu Sans'; font-size: ${t.body}pt; line-height: ${t.line}; color: black; margin: 0; }
h1, h2, h3, p, ul, ol, table, div { margin: 0; padding: 0; }
svg { display: block; }
a { color: black; text-decoration: none; }
.foot { position: running(foot); font-family: Lato, 'DejaVu Sans'; }
.footline { width: ${f.live}mm; border-collapse: collapse; table-layout: fixed; font-size: ${look.primary?then(12, 9.5)}pt; line-height: 1.2; }
.footmark { width: 12.5mm; vertical-align: middle; } .footname { text-align: left; vertical-align: middle; } .footpage { text-align: right; width: 40mm; vertical-align: middle; }
.pageno:before { content: "page " counter(page) " of " counter(pages); font-size: ${look.primary?then(12, 11.5)}pt; font-weight: bold; }
.see:after { content: " (page " target-counter(attr(href), page) ")" attr(data-after); }
.pageof:before { content: target-counter(attr(href), page); }

.page, .leaf, .topic.subject<#if look.primary>, .topic</#if> { page-break-before: always; position: relative; }
.topic { position: relative; }
<#if !look.primary>
.topic { page-break-inside: avoid; } .topic.flows { page-break-inside: auto; } .topic.flows .topichead { page-break-after: auto; -fs-page-break-min-height: 100mm; }
.topic + .topic { margin-top: ${u * 2.2}pt; }
.topic.subject { margin-top: 0; }
</#if>
h2 { font-size: ${t.body * 2.05}pt; line-height: 1.12; page-break-after: avoid; }
h2.plain { margin-bottom: ${u * 0.35}pt; }
h3 { font-size: ${t.body}pt; line-height: ${t.line}; }
p { max-width: ${f.text}mm; orphans: 2; widows: 2; }
.body p + p, .body p + ul, .body p + ol, .body p + table, .body ul + p, .body table + p, .body ol + p { margin-top: ${u * 0.45}pt; }
.note { font-size: ${t.note}pt; line-height: 1.3; }
.lead { font-size: ${t.body * 1.12}pt; }

.sec { position: relative; border-top: 0.9pt solid black; margin-top: ${u * 0.95}pt; padding-top: ${u * 0.42}pt; }
.sec.last { border-top: 2pt solid black; }
.sec, .caution, .speech { page-break-inside: avoid; }
<#-- Only a section that a page cannot hold breaks; its heading keeps two lines. -->
.sec.long { page-break-inside: auto; }
.rail { position: absolute; left: 0; top: ${u * 0.42}pt; width: 38mm; }
.rail h3 { page-break-after: avoid; }
.rail .note { margin-top: 1mm; padding-right: 2mm; }
.body { margin-left: 44mm; }
.body.tall { min-height: 17mm; }

ul { list-style: none; }
ul li { position: relative; padding-left: 5mm; max-width: ${f.text}mm; } ul li .dot { position: absolute; left: 0.6mm; top: 0; width: 4mm; }
ol { list-style: none; }
ol li { position: relative; padding-left: 9.5mm; margin-bottom: ${u * 0.3}pt; page-break-inside: avoid; }
.num { font-size: ${t.body * 1.25}pt; font-weight: bold; line-height: 1; }
ol li .num, .item .num { position: absolute; left: 0; top: 0.6mm; width: 9mm; }

table { border-collapse: collapse; }
table.data { width: ${f.text}mm; font-size: ${t.table}pt; line-height: 1.3; -fs-table-paginate: paginate; }
table.data th { text-align: left; font-weight: bold; border-bottom: 1.6pt solid black; padding: 0 3mm 1.2mm 0; vertical-align: bottom; }
table.data td { border-bottom: 0.9pt solid black; padding: 1.5mm 3mm 1.5mm 0; vertical-align: top; }
table.data tbody tr:last-child td { border-bottom: 1.6pt solid black; }
table.data tr { page-break-inside: avoid; }
table.data thead { -fs-page-break-min-height: 30mm; }
td.strong { font-weight: bold; }
table.wide { width: ${f.live}mm; margin-top: 2mm; }
table.data.key { margin-top: 3mm; }
.key th:first-child, .key td:first-child { width: 12mm; } .key td:nth-child(2) { width: 50mm; } .key th:last-child, .key td:last-child { width: 16mm; text-align: right; padding-right: 0; }

.frame { border: 0.9pt solid black; padding: 1.5mm 0; text-align: center; box-sizing: border-box; }
.figs { border-collapse: collapse; width: ${f.text}mm; table-layout: auto; }
.figs td { vertical-align: top; padding: 0 6mm 0 0; } .figs td:last-child { padding-right: 0; }
.figs td.one { width: 86mm; } .figs td.cap { vertical-align: bottom; }
.cap { font-size: ${[t.body * 0.85, 9.5]?max}pt; line-height: 1.3; } div.cap { padding-top: 1mm; }
<#-- A drawing's height: what its width allows, at most what the fit of the page leaves, never so low that its lines are too thin. -->
<#assign fits = {"roomy": 66, "snug": 52, "close": 42, "tight": 34}>
<#list sizes as s>
.h${s.most}f${s.floor} { height: ${[[s.most, 52]?min, s.floor]?max}mm; }
<#list fits?keys as fit>.${fit} .h${s.most}f${s.floor} { height: ${[[s.most, fits[fit]]?min, s.floor]?max}mm; } </#list>

</#list>
.across { width: ${f.live}mm; } .across.whole { page-break-inside: avoid; }
.labelled { position: relative; page-break-inside: avoid; } .labelled img { position: absolute; } .labelled .lines { position: absolute; left: 0; top: 0; }
.labelled .name { position: absolute; line-height: 1.15; } .labelled .name.left { text-align: right; }
<#if look.set.open>
<#include "open-style.ftl">
</#if>
