@page { size: ${f.width}mm ${f.height}mm; margin: 15mm ${f.right}mm 20mm 20mm; @bottom-center { content: element(foot); vertical-align: top; padding-top: 4mm; } }
@page :first { @bottom-center { content: none; } }
* { box-sizing: border-box; }
body { font-family: Lato, 'DejaVu Sans'; font-size: ${t.body}pt; line-height: ${t.line}; color: black; margin: 0; }
h1, h2, h3, p, ul, ol, table, div { margin: 0; padding: 0; }
svg { display: block; }
a { color: black; text-decoration: none; }
.foot { position: running(foot); font-family: Lato, 'DejaVu Sans'; }
.footline { width: ${f.live}mm; border-collapse: collapse; table-layout: fixed; font-size: ${look.primary?then(12, 9.5)}pt; line-height: 1.2; }
.footmark { width: 12.5mm; vertical-align: middle; } .footname { text-align: left; vertical-align: middle; } .footpage { text-align: right; width: 40mm; vertical-align: middle; }
.pageno:before { content: "page " counter(page) " of " counter(pages); font-size: ${look.primary?then(12, 11.5)}pt; font-weight: bold; }
.pageof:before { content: target-counter(attr(href), page); }

.page, .leaf, .topic.subject<#if look.primary>, .topic</#if> { page-break-before: always; position: relative; }
.topic { position: relative; }
<#if !look.primary>
.topic { page-break-inside: avoid; } .topic.flows { page-break-inside: auto; } .topic.flows .topichead { page-break-after: auto; -fs-page-break-min-height: 70mm; }
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
<#-- A drawing's height: what its width allows, and at most what the fit of the page leaves. -->
<#assign fits = {"roomy": 66, "snug": 52, "close": 42, "tight": 34}>
<#list 10..38 as half>
.h${half * 2} { height: ${[half * 2, 52]?min}mm; }
<#list fits?keys as fit>.${fit} .h${half * 2} { height: ${[half * 2, fits[fit]]?min}mm; } </#list>

</#list>

.caution { position: relative; border: 2pt solid black; width: ${f.live}mm; margin-top: ${u * 0.95}pt; background: black; }
.caution .label { position: absolute; left: 4mm; top: 0; bottom: 0; color: white; font-weight: bold; width: 36mm; height: 7mm; top: 3mm; }
.caution .label svg { position: absolute; left: 0; top: 0.4mm; } .caution .label span { position: absolute; left: 9mm; top: 0; line-height: 1.3; }
.caution .words { margin-left: 42.5mm; background: white; padding: 2.6mm; min-height: ${u * 1.2}pt; }

.hopline { position: relative; height: 11mm; }
.hopline .here { position: absolute; top: 4.9mm; width: 7mm; text-align: center; color: white; font-weight: bold; font-size: 10.5pt; line-height: 1.1; }
.stoptitle { position: relative; min-height: 23mm; padding-left: 44mm; margin-top: 3mm; }
.numeral { position: absolute; left: 0; top: -1mm; font-size: 62pt; font-weight: bold; line-height: 1; }
.stoptitle .lead, .topichead .lead { margin-top: 1.5mm; }
.saytitle { font-size: ${t.body * 2.05}pt; line-height: 1.12; font-weight: bold; padding-left: 44mm; margin-top: 3mm; }
.speech { position: relative; border: 1.2pt solid black; border-radius: 4mm; padding: 2.6mm 5mm; font-size: ${t.body * 1.04}pt; }
.speech + .speech { margin-top: 3mm; }
.speech .tail { position: absolute; left: -5.9mm; top: 4mm; }
.pip { display: inline-block; width: 5mm; height: 5mm; border: 1.2pt solid black; margin-right: 1.6mm; line-height: 1; }
.pips td { vertical-align: top; padding-right: 6mm; } .pips td.voice { border-left: 1.1pt solid black; padding-left: 4mm; padding-right: 0; }
.tick { display: inline-block; border: 1.2pt solid black; vertical-align: -0.8mm; margin-right: 2.5mm; line-height: 1; }
.ticks p + p { margin-top: 1.2mm; }

<#-- How tightly a page of a fixed size is set. -->
.snug .sec { margin-top: ${u * 0.7}pt; padding-top: ${u * 0.32}pt; } .snug .rail { top: ${u * 0.32}pt; } .snug .caution { margin-top: ${u * 0.7}pt; }
.close .sec { margin-top: ${u * 0.45}pt; padding-top: ${u * 0.22}pt; } .close .rail { top: ${u * 0.22}pt; } .close .caution { margin-top: ${u * 0.45}pt; }
.close table.data td { padding-top: 0.9mm; padding-bottom: 0.9mm; } .close ol li { margin-bottom: ${u * 0.1}pt; } .close .stoptitle, .close .saytitle { margin-top: 1mm; } .close .speech { padding-top: 1.8mm; padding-bottom: 1.8mm; }
.tight .sec { margin-top: ${u * 0.28}pt; padding-top: ${u * 0.16}pt; } .tight .rail { top: ${u * 0.16}pt; } .tight .caution { margin-top: ${u * 0.28}pt; }
.tight table.data td { padding-top: 0.45mm; padding-bottom: 0.45mm; } .tight ol li { margin-bottom: 0; } .tight .stoptitle, .tight .saytitle { margin-top: 0; } .tight .speech { padding-top: 1.2mm; padding-bottom: 1.2mm; } .tight .speech + .speech { margin-top: 1.5mm; }
.tight .body { line-height: ${t.line - 0.08}; } .tight .caution .words { line-height: ${t.line - 0.08}; padding: 1.4mm 2.6mm; } .tight .body.tall { min-height: 14mm; } .tight .ticks p + p { margin-top: 0.4mm; }

.topichead { position: relative; padding-left: 44mm; min-height: 16mm; page-break-inside: avoid; page-break-after: avoid; }
.topicmark { position: absolute; left: 0; top: 1mm; width: 40mm; } .topicmark .note { margin-top: 1.5mm; }
.word { position: relative; padding-left: ${t.wordColumn + 4}mm; margin-bottom: ${u * 0.14}pt; page-break-inside: avoid; }
.word strong { position: absolute; left: 0; top: 0; width: ${t.wordColumn}mm; }
.glossary .word { padding-left: 44mm; border-top: 0.9pt solid black; padding-top: 0.8mm; padding-bottom: 0.8mm; margin-bottom: 0; } .glossary .word strong { width: 42mm; top: 0.8mm; }
.asked { page-break-inside: avoid; } .asked + .asked { margin-top: ${u * 0.4}pt; } .asked .note { font-weight: normal; } .asked .points { font-size: ${t.table}pt; line-height: 1.3; margin-top: 0.6mm; }
.sources li { font-size: ${[t.note, 9.5]?max}pt; line-height: 1.3; margin-bottom: 0.8mm; max-width: ${f.live}mm; }

.legend td { padding: 0 0 2mm 0; vertical-align: middle; } .legend .sign { width: 30mm; }
.saysign { border: 1.2pt solid black; border-radius: 2.4mm; padding: 0.4mm 2mm; } .cautionsign { display: inline-block; background: black; padding: 1.2mm 2.2mm; }
.blank { display: inline-block; border-bottom: 0.9pt solid black; padding: 0 1mm 0 12mm; font-size: ${[t.note, 9.5]?max}pt; line-height: 1.3; }
.gap { display: inline-block; border-bottom: 0.9pt solid black; width: 28mm; line-height: 1.2; }
.levels td { width: 33mm; vertical-align: top; font-size: ${[t.body, 13]?min}pt; } .levels { margin-bottom: 2mm; }
.contents.roomy .sec { margin-top: ${u * 0.5}pt; padding-top: ${u * 0.25}pt; } .contents.roomy .rail { top: ${u * 0.25}pt; } .contents.tight .sec, .contents.least .sec { margin-top: 1.2mm; padding-top: 1mm; } .contents.tight .rail, .contents.least .rail { top: 1mm; } .least .toc { font-size: 9.5pt; line-height: 1.1; } .contents.least .rail h3 { font-size: 9.5pt; line-height: 1.1; } .contents.least h2 { margin-bottom: 0; font-size: 20pt; }
.toc { width: ${f.text}mm; font-size: ${[t.body, 12]?min}pt; line-height: 1.34; } .close .toc { line-height: 1.2; } .tight .toc { font-size: 9.5pt; line-height: 1.18; } .contents.tight .rail h3 { font-size: 9.5pt; line-height: 1.18; } .contents.close .rail h3 { line-height: 1.2; } .toc td { padding: 0; vertical-align: top; }
.tocno { width: 8mm; font-weight: bold; } .tocpage { width: 12mm; text-align: right; font-weight: bold; } .toc.two .tocpage { padding-right: 5mm; width: 15mm; } .toc.two .tocpage:last-child { padding-right: 0; }
.writeline { border-bottom: 0.9pt solid black; height: 10mm; }
.filler { display: none; } .filler-on { display: block; }

.routinehead { width: ${f.live}mm; } .routinehead .who { text-align: right; vertical-align: middle; width: 50mm; } .routinehead .who svg { display: inline-block; }
table.routinetable { width: ${f.live}mm; table-layout: fixed; margin-top: 1.5mm; line-height: 1.2; font-size: ${look.primary?then(14.7, 11)}pt; }
table.routinetable td { height: ${(cover.routine?size gt 10)?then(12.9, 22)}mm; vertical-align: middle; padding: 0 2mm 0 0; box-sizing: border-box; }
table.routinetable td { padding-top: 0; padding-bottom: 0; vertical-align: middle; }
table.routinetable td.bandcell { vertical-align: top; }
.routinetable .bandcell { width: 9mm; border: none; padding: 0; vertical-align: top; } .routinetable .no { width: 11mm; font-size: 16pt; font-weight: bold; text-align: right; padding-right: 3mm; } .routinetable .stop { width: 28mm; font-weight: bold; } .routinetable .do { width: 66mm; }
table.routinetable th.no { padding-right: 3mm; } table.routinetable td.bandcell { border-bottom: none; } tr.first td { border-top: 1.8pt solid black; } tr.first td.bandcell { border-top: none; }
.band { position: relative; width: 6.5mm; background: black; margin-top: 0.7mm; } .bandword { position: absolute; left: -16.75mm; width: 40mm; height: 8mm; line-height: 8mm; text-align: center; color: white; font-weight: bold; font-size: 11.5pt; transform: rotate(-90deg); letter-spacing: 0.4pt; }

.item { position: relative; padding-left: 9.5mm; margin-bottom: ${u * 0.4}pt; page-break-inside: avoid; }
.choices { margin-top: 0.8mm; width: ${f.text - 9.5}mm; table-layout: fixed; } .choices td { vertical-align: top; padding: 0 2mm 0 0; } .point { margin-top: 1mm; }
.score td { vertical-align: middle; padding-right: 4mm; } .scorebox { border: 1.6pt solid black; width: 22mm; height: 14mm; }

.cover { height: ${f.liveHeight - 1}mm; position: relative; }
.covertop { position: absolute; left: 0; top: 2mm; width: ${f.live}mm; border-bottom: 2.2pt solid black; height: 9mm; } .brand { position: absolute; left: 0; top: 0; font-weight: bold; font-size: 14pt; } .series { position: absolute; right: 0; top: 0.6mm; font-size: 11pt; }
.covertoes { position: absolute; left: 0; top: 24mm; } h1 { margin-left: 44mm; padding-top: 21mm; font-size: 52pt; line-height: 1.1; }
.coversub { position: absolute; left: 44mm; top: 46mm; font-size: 27pt; line-height: 1.25; } .coverlead { position: absolute; left: 44mm; top: 73mm; width: 112mm; font-size: ${[t.body, 13]?max}pt; line-height: 1.4; }
.coverrabbit { position: absolute; left: ${(f.live - 124) / 2}mm; top: 104mm; width: 124mm; }
.coverhops { position: absolute; left: 0; top: 184mm; width: ${f.live}mm; } .coverends { position: relative; height: 6mm; font-size: 11pt; } .coverends span { position: absolute; top: 1mm; } .coverends .from { left: 0; } .coverends .to { right: 0; } .coverends .count { left: 0; width: ${f.live}mm; text-align: center; }
.belongs { position: absolute; left: 0; top: 210mm; width: ${f.live}mm; height: 9mm; font-size: 11.5pt; } .belongs.second { top: 222mm; } .belongs .label { position: absolute; left: 0; top: 3mm; } .belongs .line { position: absolute; left: 44mm; top: 0; width: ${f.text}mm; height: 9mm; border-bottom: 0.9pt solid black; }
.coverfoot { position: absolute; left: 0; top: ${f.liveHeight - 8}mm; width: ${f.live}mm; height: 6mm; font-size: 11pt; } .coverfoot .club { position: absolute; left: 0; top: 0; } .coverfoot .ages { position: absolute; right: 0; top: 0; }
