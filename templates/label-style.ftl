.disc { position: absolute; width: 10mm; text-align: center; font-size: 11pt; font-weight: bold; line-height: 1; }
.write { width: ${f.live}mm; border-collapse: collapse; table-layout: fixed; margin-top: 3mm; } .write td { vertical-align: bottom; padding: 0 6mm 0 0; } .write td:last-child { padding-right: 0; }
.write .no { display: inline-block; width: 9mm; font-weight: bold; font-size: ${[t.body, 11]?max}pt; line-height: 1; } .write .rule { display: inline-block; width: 68mm; border-bottom: 0.9pt solid black; height: 6mm; }
.bank { border: 1.2pt solid black; padding: 2mm 3mm; margin-top: 4mm; width: ${f.live}mm; line-height: 1.35; font-size: ${[t.body, 13]?min}pt; }
<#if look.set.open>
body .disc { line-height: 1 !important; letter-spacing: 0 !important; } <#if !look.set.large>.disc { font-size: 11pt !important; } </#if>body .write .no { line-height: 1.2 !important; width: 11mm; } body .write .rule { width: 64mm; } .write tr { page-break-inside: avoid; } body h1, body h1 * { font-size: 30pt !important; } body h2, body h2 * { font-size: ${[t.body * 1.5, 22]?max}pt !important; line-height: 1.2 !important; } body .answer .n { width: 11mm; } body .answer ol li { padding-left: 12mm; } .answer h3 { page-break-after: avoid; }
</#if>
