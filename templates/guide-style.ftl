<#include "page-style.ftl">
@page :first { @bottom-center { content: none; } }

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
