<#-- What the lists on a judge's clipboard share in large print or easy read: style, head, foot. -->
<#import "marks.ftl" as marks>

<#macro foot what look head><div class="foot"><table class="footline"><tr><td class="footmark"><@marks.toes n=look.toes half=5/></td><td class="footname">${what}, ${head.by}</td><td class="footpage"><span class="pageno">&#160;</span></td></tr></table></div></#macro>

<#macro head title head look>
  <div class="formhead"><h1>${title}</h1><p>${look.level}<#if head.division??>, ${head.division}</#if>. ${head.by}</p><div class="right"><@marks.toes n=look.toes half=13/></div></div>
  <p><strong>${head.show}</strong>, ${head.whole}<#if head.club?has_content>. ${head.club}</#if></p>
</#macro>

<#macro rules f>
.rows { width: ${f.live}mm; table-layout: fixed; border-collapse: collapse; margin-top: 3mm; -fs-table-paginate: paginate; } .rows th { text-align: left; border-bottom: 1.8pt solid black; padding: 0 2mm 1mm 0; vertical-align: bottom; } .rows td { border-bottom: 1.1pt solid black; padding: 1.6mm 2mm 1.6mm 0; vertical-align: middle; height: 13mm; } .rows tr { page-break-inside: avoid; } .rows th, .rows td { line-height: 1.2 !important; }
.rows .tick { margin-right: 2mm; } .rows .no { width: 16mm; font-weight: bold; } .rows td.fill { border: 1.6pt solid black; }
</#macro>
