<#-- Forms in large print or easy read: fields under each other, boxes with their words beside them, pages that flow. -->
<#include "page-style.ftl">
<#-- A foot of two lines ends 7 mm or more above the edge. -->
<#if look.set.large>@page { margin-bottom: 28mm; }</#if>
h1 { margin: 0; padding: 0; } body h1, body h1 * { font-size: 30pt !important; line-height: 1.15 !important; } body h2, body h2 * { font-size: ${[t.body * 1.5, 22]?max}pt !important; line-height: 1.2 !important; }
h2 { margin-bottom: 1mm; } p { max-width: ${f.live}mm !important; } .later { page-break-before: always; }
.formhead { position: relative; width: ${f.live}mm; border-bottom: 2.2pt solid black; padding: 0 50mm 2mm 0; min-height: 20mm; } .formhead .right { position: absolute; right: 0; top: 0; width: 46mm; } .formhead .toes { margin-left: 20mm; }
.fields { width: ${f.live}mm; table-layout: fixed; border-collapse: collapse; } .fields td { padding: 2.4mm 0 0 0; vertical-align: bottom; } .fields .label { width: ${look.set.large?then(60, 54)}mm; padding-right: 3mm; } .fields .line { border-bottom: 1.1pt solid black; font-weight: bold; } .fields tr { page-break-inside: avoid; }
.block { border-top: 1.8pt solid black; margin-top: 4mm; padding-top: 2mm; page-break-inside: avoid; }
.stops { width: ${f.live}mm; table-layout: fixed; border-collapse: collapse; margin-top: 1mm; } .stops th { text-align: left; border-bottom: 1.6pt solid black; padding: 0 2mm 0.6mm 0; } .stops td { border-bottom: 0.9pt solid black; padding: 1.2mm 2mm 1.2mm 0; vertical-align: middle; } .stops .no { width: 16mm; font-weight: bold; } .stops .tickcol { width: 32mm; } .stops tr { page-break-inside: avoid; }
.boxes { border-collapse: collapse; margin-top: 3mm; page-break-inside: avoid; } .boxes td { vertical-align: middle; padding: 0 3mm 2mm 0; } .boxes .write { width: 34mm; height: 16mm; border: 1.6pt solid black; padding: 0; } .boxes .sum { border-width: 2.4pt; } .boxes strong { white-space: nowrap; } .boxes .of { padding-left: 3mm; padding-right: 10mm; white-space: nowrap; }
.tick { display: inline-block; border: 1.4pt solid black; line-height: 1; vertical-align: -1mm; } .tickline { position: relative; padding-left: 13mm; margin-top: 2mm; page-break-inside: avoid; } .tickline .tick { position: absolute; left: 0; top: 0.6mm; }
.writeline { border-bottom: 1.1pt solid black; height: 13mm; width: ${f.live}mm; } .numbox { border: 1.8pt solid black; height: 17mm; width: 46mm; text-align: center; font-weight: bold; }
body .numbox { font-size: 30pt !important; line-height: 1.4 !important; }
.ten { border-collapse: separate; border-spacing: 0; margin-top: 2mm; page-break-inside: avoid; } .ten td { width: ${f.live / 5 - 6}mm; height: 14mm; border: 1.4pt solid black; padding: 0; } .ten td.gap { width: 6mm; border: none; } .ten tr.air td { height: 3mm; border: none; }
