<#import "marks.ftl" as marks>
<#import "judge-marks.ftl" as j>
<#-- What the lists on a judge's clipboard share: style, head, rows. -->

<#macro style width height>
@page { size: ${width}mm ${height}mm; margin: 0; }
<@j.style/>
.page { position: relative; width: ${width}mm; height: ${height - 1}mm; } .later { page-break-before: always; }
.rows { position: absolute; left: 9mm; top: 39mm; width: ${width - 18}mm; border-collapse: collapse; table-layout: fixed; }
.rows th { height: 7mm; padding: 0 2mm 1mm 0; text-align: left; vertical-align: bottom; font-size: 10.5pt; line-height: 1.1; font-weight: bold; border-bottom: 1.8pt solid black; }
.rows td { padding: 0 2mm 0 0; vertical-align: middle; line-height: 1.1; border-bottom: 1.1pt solid black; }
.rows th.no { font-size: 10.5pt; } .rows .mid { text-align: center; padding-right: 0; } .rows .no { text-align: right; padding-right: 4mm; font-weight: bold; }
.tickbox { width: 5mm; height: 5mm; border: 1.2pt solid black; margin: 0 auto; }
.num { border: 1.6pt solid black; height: 9.4mm; } .num.sum { border-width: 2.2pt; } .num.place { border-width: 1.6pt; }
.foot { position: absolute; left: 9mm; width: ${width - 18}mm; font-size: 11pt; line-height: 1.3; }
</#macro>

<#-- Title, division, judge, show and club. -->
<#macro head title head look right>
  <@j.words x=9 y=12.4 pt=24 bold=true tag="h1">${title}</@j.words>
  <div class="at" style="left:88mm;top:8.6mm"><@marks.toes n=look.toes half=9/></div>
  <@j.words x=110 y=12.4 pt=20 bold=true>${look.level}</@j.words>
  <@j.words x=right - 50 y=12.4 pt=14 w=50 align="right" bold=true>${head.by}</@j.words>
  <@j.words x=9 y=21 pt=12><strong>${head.show}</strong></@j.words>
  <#if head.division??><@j.words x=right - 50 y=21 pt=12 w=50 align="right">${head.division}</@j.words></#if>
  <@j.words x=9 y=27 pt=11>${head.whole}<#if head.club?has_content>, ${head.club}</#if></@j.words>
</#macro>
