<#-- What only the lean guide has: its routine on one page, its words and its cover. -->
@page :first { @bottom-center { content: none; } }
.routinetable { table-layout: fixed; margin-top: 1.5mm; }
table.routinetable td, table.routinetable th { vertical-align: middle; }
table.routinetable td.bar, table.routinetable th.bar { width: 4mm; padding: 0; border-bottom: none; }
table.routinetable td.bar.on { background: black; border-right: 2mm solid white; }
table.routinetable tbody tr:last-child td.bar { border-bottom: none; }
.routinetable .no { width: 9mm; font-size: ${[t.body * 1.1, 13]?max}pt; font-weight: bold; } .routinetable .stop { width: ${look.primary?then(25, 23)}mm; font-weight: bold; }
tr.first td { border-top: 1.8pt solid black; } table.routinetable tr.first td.bar { border-top: none; }
.routine { line-height: 1.3; }
.routine.snug table.data { line-height: 1.2; font-size: 10.5pt; } .routine.close table.data, .routine.tight table.data { line-height: 1.16; font-size: 10pt; }
<#if look.primary>.routine.snug table.data, .routine.close table.data, .routine.tight table.data { font-size: ${t.table}pt; }</#if>

.word { border-top: 0.9pt solid black; padding: 0.9mm 0; page-break-inside: avoid; line-height: 1.3; }
.words .word:last-child { border-bottom: 2pt solid black; }
.filler { display: none; } .filler-on { display: block; }

.cover { height: ${f.liveHeight - 1}mm; position: relative; }
.covertop { position: absolute; left: 0; top: 0; width: ${f.live}mm; border-bottom: 2.2pt solid black; height: 8mm; } .brand { position: absolute; left: 0; top: 0; font-weight: bold; font-size: 13pt; } .series { position: absolute; right: 0; top: 0.8mm; font-size: 10pt; }
.covertoes { position: absolute; left: 0; top: 16mm; }
h1 { padding-top: 26mm; font-size: 40pt; line-height: 1.1; }
.coversub { position: absolute; left: 0; top: 43mm; font-size: 20pt; line-height: 1.25; }
.coverlead { position: absolute; left: 0; top: 62mm; width: ${f.live}mm; font-size: ${[t.body, 13]?max}pt; line-height: 1.4; }
.coverrabbit { position: absolute; left: ${(f.live - 84) / 2}mm; top: 86mm; width: 84mm; }
.coverhops { position: absolute; left: 0; top: 140mm; width: ${f.live}mm; } .coverends { position: relative; height: 6mm; font-size: 10pt; } .coverends span { position: absolute; top: 0.5mm; } .coverends .from { left: 0; } .coverends .to { right: 0; }
.belongs { position: absolute; left: 0; top: 157mm; width: ${f.live}mm; height: 9mm; font-size: 11pt; } .belongs.second { top: 167mm; } .belongs .label { position: absolute; left: 0; top: 3mm; } .belongs .line { position: absolute; left: 44mm; top: 0; right: 0; height: 9mm; border-bottom: 0.9pt solid black; }
.coverfoot { position: absolute; left: 0; top: ${f.liveHeight - 7}mm; width: ${f.live}mm; height: 5mm; font-size: 10pt; line-height: 1.2; } .coverfoot .club { position: absolute; left: 0; top: 0; font-weight: bold; } .coverfoot .ages { position: absolute; right: 0; top: 0; }
