<#-- Pages of half a sheet: headings above the text, the same sizes of type as a whole page. -->
@page { size: ${f.width}mm ${f.height}mm; margin: 10mm ${f.right}mm 16mm ${f.right}mm; @bottom-center { content: element(foot); vertical-align: top; padding-top: 2.6mm; } }
* { box-sizing: border-box; }
body { font-family: Lato, 'DejaVu Sans'; font-size: ${t.body}pt; line-height: ${t.line}; color: black; margin: 0; }
h1, h2, h3, p, ul, ol, table, div { margin: 0; padding: 0; }
svg { display: block; }
.foot { position: running(foot); }
.footline { width: ${f.live}mm; border-collapse: collapse; table-layout: fixed; font-size: ${look.primary?then(12, 9.5)}pt; line-height: 1.2; }
.footmark { width: 12.5mm; vertical-align: middle; } .footname { text-align: left; vertical-align: middle; } .footpage { text-align: right; width: 34mm; vertical-align: middle; }
.pageno:before { content: "page " counter(page); font-size: ${look.primary?then(12, 11)}pt; font-weight: bold; }

.page, .leaf { page-break-before: always; position: relative; }
h2 { font-size: ${[t.body * 1.75, 26]?min}pt; line-height: 1.12; page-break-after: avoid; }
h3 { font-size: ${t.body}pt; line-height: 1.25; page-break-after: avoid; }
.note { font-size: ${t.note}pt; line-height: 1.3; }
.sec { border-top: 0.9pt solid black; margin-top: ${u * 0.6}pt; padding-top: ${u * 0.25}pt; }
.sec.open { border-top: none; }
.sec h3 { margin-bottom: ${u * 0.16}pt; }
.sec, .caution, .speech { page-break-inside: avoid; }
.sec p + p { margin-top: ${u * 0.35}pt; }

.hopline { position: relative; height: 11mm; }
.hopline .here { position: absolute; top: 4.9mm; width: 7mm; text-align: center; color: white; font-weight: bold; font-size: 10.5pt; line-height: 1.1; }
.stoptitle { position: relative; padding-left: 21mm; margin-top: 2.5mm; min-height: 14mm; }
.numeral { position: absolute; left: 0; top: -1.2mm; font-size: 40pt; font-weight: bold; line-height: 1; letter-spacing: -0.6pt; }
.stoptitle h2 { padding-top: 1.6mm; }
ol { list-style: none; }
ol li { position: relative; padding-left: 8mm; margin-bottom: ${u * 0.2}pt; page-break-inside: avoid; }
.num { font-size: ${t.body * 1.2}pt; font-weight: bold; line-height: 1; }
ol li .num { position: absolute; left: 0; top: 0.5mm; width: 8mm; }
table { border-collapse: collapse; }
table.data { width: ${f.live}mm; font-size: ${t.table}pt; line-height: 1.25; -fs-table-paginate: paginate; }
table.data th { text-align: left; font-weight: bold; border-bottom: 1.6pt solid black; padding: 0 2mm 0.8mm 0; vertical-align: bottom; }
table.data td { border-bottom: 0.9pt solid black; padding: 1.1mm 2mm 1.1mm 0; vertical-align: top; }
table.data tbody tr:last-child td { border-bottom: 1.6pt solid black; }
table.data tr { page-break-inside: avoid; }
td.strong { font-weight: bold; }
.speech { border: 1.2pt solid black; border-radius: 3.4mm; padding: 2mm 3.4mm; font-size: ${t.body * 1.04}pt; position: relative; }
.speech + .speech { margin-top: 2mm; }
.speech .tail { position: absolute; left: 8mm; top: -3.4mm; }
.sec .speech { margin-top: 2.6mm; }
.sec .speech + .speech { margin-top: 2mm; }
.caution { position: relative; border: 2pt solid black; background: black; margin-top: ${u * 0.7}pt; }
.caution .label { position: relative; color: white; font-weight: bold; font-size: ${t.body}pt; line-height: 6mm; height: 6mm; padding-left: 10mm; }
.caution .label svg { position: absolute; left: 2.4mm; top: 0.6mm; }
.caution .words { background: white; padding: 1.8mm 2.4mm; }
.stoprule { border: 2pt solid black; padding: 1.6mm 2.4mm; margin-top: ${u * 0.7}pt; page-break-inside: avoid; }
.blank { display: inline-block; border-bottom: 0.9pt solid black; padding: 0 1mm 0 10mm; font-size: ${[t.note, 9.5]?max}pt; line-height: 1.3; }
.tick { display: inline-block; border: 1.2pt solid black; vertical-align: -0.8mm; margin-right: 2.5mm; line-height: 1; }
.writeline { border-bottom: 0.9pt solid black; height: 10mm; }

<#-- How tightly a page is set: roomy and snug with its pictures, the rest without; the type stays as it is. -->
.snug .sec { margin-top: ${u * 0.4}pt; padding-top: ${u * 0.16}pt; } .snug .caution, .snug .stoprule { margin-top: ${u * 0.45}pt; } .snug ol li { margin-bottom: ${u * 0.08}pt; } .snug table.data td { padding-top: 0.7mm; padding-bottom: 0.7mm; } .snug .stoptitle { margin-top: 1mm; min-height: 13mm; }
.spare .sec { margin-top: ${u * 0.4}pt; padding-top: ${u * 0.16}pt; } .spare .caution, .spare .stoprule { margin-top: ${u * 0.45}pt; } .spare ol li { margin-bottom: ${u * 0.08}pt; } .spare table.data td { padding-top: 0.7mm; padding-bottom: 0.7mm; } .spare .stoptitle { margin-top: 1mm; min-height: 13mm; }
.close .sec { margin-top: ${u * 0.26}pt; padding-top: ${u * 0.1}pt; } .close .caution, .close .stoprule { margin-top: ${u * 0.3}pt; } .close ol li { margin-bottom: 0; } .close table.data td { padding-top: 0.4mm; padding-bottom: 0.4mm; } .close .stoptitle { margin-top: 0; min-height: 12mm; } .close .numeral { font-size: 38pt; } .close .speech { padding-top: 1.2mm; padding-bottom: 1.2mm; } .close .caution .words { padding-top: 1.2mm; padding-bottom: 1.2mm; }
.close { line-height: ${t.line - 0.08}; }
.tight .sec { margin-top: ${u * 0.16}pt; padding-top: ${u * 0.06}pt; } .tight .sec h3 { margin-bottom: 0; } .tight .caution, .tight .stoprule { margin-top: ${u * 0.2}pt; } .tight ol li { margin-bottom: 0; } .tight table.data td { padding-top: 0.25mm; padding-bottom: 0.25mm; } .tight table.data { line-height: 1.2; } .tight .stoptitle { margin-top: 0; min-height: 11mm; } .tight .numeral { font-size: 34pt; } .tight .stoptitle h2 { padding-top: 0.6mm; } .tight .speech { padding: 0.9mm 3mm; } .tight .sec .speech + .speech { margin-top: 1.4mm; } .tight .caution .words { padding: 0.9mm 2.2mm; }
<#-- The right page of two, when its table is long: the hop line stands on the left page. -->
.least .hopline { display: none; } .least .sec { margin-top: 0.8mm; padding-top: 0.3mm; } .least .sec h3 { margin-bottom: 0; } .least .stoprule { margin-top: 1.2mm; padding: 0.8mm 2.2mm; } .least table.data td { padding-top: 0.2mm; padding-bottom: 0.2mm; } .least table.data { line-height: 1.16; } .least .stoptitle { margin-top: 0; min-height: 10mm; } .least .numeral { font-size: 30pt; } .least .stoptitle h2 { padding-top: 0; } .least .speech { padding: 0.7mm 2.6mm; } .least .sec .speech { margin-top: 2.2mm; } .least .sec .speech + .speech { margin-top: 1mm; } .least .note { line-height: 1.15; }
.least { line-height: 1.24; }
.tight { line-height: ${[t.line - 0.14, 1.26]?max}; }

.figs { width: ${f.live}mm; margin-top: 1mm; } .figs td { vertical-align: top; padding: 0 6mm 0 0; } .figs td:last-child { padding-right: 0; } .figs td.cap { vertical-align: bottom; }
.frame { border: 0.9pt solid black; padding: 1.2mm 0; text-align: center; }
.cap { font-size: ${[t.body * 0.85, 9.5]?max}pt; line-height: 1.25; } div.cap { padding-top: 0.8mm; }
<#-- A drawing is as high as the page allows, and never so low that its lines are too thin; where it has no room at all, it stands in the study guide only. -->
.plain .see, .spare .see, .close .see, .tight .see { display: none; }
<#assign fits = {"roomy": 56, "snug": 36}>
<#list sizes as s>
.h${s.most}f${s.floor} { height: ${[[s.most, 34]?min, s.floor]?max}mm; }
<#list fits?keys as fit>.${fit} .h${s.most}f${s.floor} { height: ${[[s.most, fits[fit]]?min, s.floor]?max}mm; } </#list>

</#list>
