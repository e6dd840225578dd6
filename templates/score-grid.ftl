<#import "marks.ftl" as marks>
<#import "judge-marks.ftl" as j>
<#assign known = head!{}>
<#assign left = 8 half = at.contestant / 2>
<#assign end = at.first + 10 * at.contestant + at.gutter>
<#-- Five contestants on each side of the gutter. -->
<#assign sides = [at.first, at.first + 5 * at.contestant + at.gutter]>
<#assign edge = 5 * at.contestant>

<html xmlns="http://www.w3.org/1999/xhtml" lang="en">
<head>
<title>${look.level} score grid</title>
<style>
@page { size: ${at.width}mm ${at.height}mm; margin: 0; }
<@j.style/>
.page { position: relative; width: ${at.width}mm; height: ${at.height - 1}mm; } .later { page-break-before: always; }
.row { font-size: 10pt; line-height: 4.1mm; }
</style>
<#if head??><bookmarks><#list grids as grid><bookmark name="Score grid<#if grids?size gt 1> ${grid?counter}</#if>" href="#g${grid?counter}"/></#list></bookmarks></#if>
</head>
<body>
<#list grids as grid>
<div class="page<#if !grid?is_first> later</#if>"<#if head??> id="g${grid?counter}"</#if>>
  <#assign line1 = at.top + 5.6 line2 = line1 + 7.8>
  <@j.words x=left y=line1 - 2.6 pt=16 bold=true tag="h1">Score grid, ten contestants</@j.words>
  <div class="at" style="left:83mm;top:${line1 - 4.9}mm"><@marks.toes n=look.toes half=5/></div>
  <@j.words x=95 y=line1 - 2.6 pt=13 bold=true>${look.level}</@j.words>
  <#assign wider = at.width - 279.4>
  <@j.field label="Class" x=127 gap=137.5 x2=162 y=line1/>
  <#if known.show??><@j.filled x=137.5 x2=162 y=line1 sizes="f11 f10">${known.division!look.level}<#if grids?size gt 1>, grid ${grid?counter}</#if></@j.filled></#if>
  <@j.field label="Show" x=165 gap=175.5 x2=232 + wider y=line1/>
  <#if known.show??><@j.filled x=175.5 x2=232 + wider y=line1>${known.show}</@j.filled></#if>
  <@j.field label="Date" x=235 + wider gap=244.5 + wider x2=end y=line1/>
  <#if known.date??><@j.filled x=244.5 + wider x2=end y=line1 sizes="f10">${known.date}</@j.filled></#if>
  <@j.words x=left y=line2 - 2.3>Judge</@j.words>
  <@j.words x=20.5 y=line2 - 2.3>1</@j.words>
  <@j.words x=31 y=line2 - 2.3>2</@j.words>
  <@j.judge head=known x1=23.5 x2=34 y=line2 - 4.3/>
  <@j.field label="Name" x=43 gap=55 x2=106 y=line2/>
  <@j.field label="Signature" x=109 gap=127 x2=180 + wider / 2 y=line2/>
  <@j.field label="Writer" x=183 + wider / 2 gap=196 + wider / 2 x2=233 + wider y=line2/>
  <@j.field label="Section" x=236 + wider gap=250.5 + wider x2=end y=line2/>

  <#-- A row of ten boxes. -->
  <#-- Neighbours share a line: each box is wider by its own line. -->
  <#macro boxes y h class="small" pt=1.2><#local ink = pt * 0.3528><#list sides as side><#list 0..4 as no><@j.box x=side + no * at.contestant - ink / 2 y=y w=at.contestant + ink h=h class=class/></#list></#list></#macro>
  <#macro label y bold=false pt=10.5><@j.words x=left y=y w=at.first - left - 3 pt=pt align="right" bold=bold><#nested/></@j.words></#macro>
  <#-- What stands for a row: at the left, in the gutter and at the right. -->
  <#macro letters text y pt><#list [sides[0] + edge, end] as x><@j.words x=x + 0.3 y=y w=at.gutter - 0.6 pt=pt align="center" bold=true>${text}</@j.words></#list></#macro>

  <#assign numbers = line2 + 2.3 blockTop = numbers + at.number + 4.4>
  <@boxes y=numbers h=at.number class="number" pt=1.6/>
  <@label y=numbers + at.number / 2><strong>Number</strong>, and name</@label>
  <#list sides as side><#list 0..4 as no>
  <#assign who = grid.columns[side?index * 5 + no] x = side + no * at.contestant>
  <#if who.number??><@j.words x=x y=numbers + (who.name??)?then(3, at.number / 2) pt=(who.name??)?then(12.5, 18) w=at.contestant align="center" bold=true>${who.number}</@j.words></#if>
  <#if who.name??><@j.words x=x y=numbers + at.number - 2.5 pt=10 w=at.contestant align="center">${who.name}</@j.words></#if>
  </#list></#list>
  <@label y=blockTop - 2.2 pt=10>hands + voice</@label>
  <#list sides as side><#list 0..4 as no>
  <@j.words x=side + no * at.contestant y=blockTop - 2.2 w=half pt=10 align="center">hands</@j.words>
  <@j.words x=side + no * at.contestant + half y=blockTop - 2.2 w=half pt=10 align="center">voice</@j.words>
  </#list></#list>
  <@j.hline x1=left x2=sides[0] + edge y=blockTop pt=1.8/><@j.hline x1=sides[1] x2=end y=blockTop pt=1.8/>

  <#list blocks as block>
  <#assign top = blockTop + block?index * at.block>
  <@j.words x=left y=top + 3.4 pt=13 bold=true>${block.letter}</@j.words>
  <@j.words x=left + 6.5 y=top + 2.9 bold=true tag="h2">${block.name}</@j.words>
  <@j.words x=at.first - 18 y=top + 2.9 w=16.4 align="right" bold=true>${block.points.hands} + ${block.points.voice}</@j.words>
  <#list block.lines as line><@j.words x=left + 6.5 y=top + 7.1 + line?index * 4 pt=10>${line}</@j.words></#list>
  <@letters text=block.letter y=top + at.block / 2 pt=12/>
  <#assign rule = block?is_last?then(1.8, 1.1)>
  <@j.hline x1=left x2=sides[0] + edge y=top + at.block pt=rule light=!block?is_last/><@j.hline x1=sides[1] x2=end y=top + at.block pt=rule light=!block?is_last/>
  </#list>

  <#assign itemTop = blockTop + blocks?size * at.block gridEnd = itemTop + items?size * at.item>
  <#list items as item>
  <#assign middle = itemTop + item?index * at.item + at.item / 2>
  <@j.words x=left y=middle bold=true>${item.letters}</@j.words>
  <@j.words x=left + 6.5 y=middle bold=true tag="h2">${item.name}</@j.words>
  <@j.words x=at.first - 18 y=middle w=16.4 align="right" bold=true>${item.points}</@j.words>
  <@letters text=item.letters y=middle pt=10.5/>
  <#assign rule = item?is_last?then(1.8, 1.1)>
  <@j.hline x1=left x2=sides[0] + edge y=middle + at.item / 2 pt=rule light=!item?is_last/><@j.hline x1=sides[1] x2=end y=middle + at.item / 2 pt=rule light=!item?is_last/>
  </#list>
  <#list sides as side>
  <#list 0..5 as no><@j.vline x=side + no * at.contestant y1=blockTop y2=gridEnd pt=2.2/></#list>
  <#list 0..4 as no><@j.vline x=side + no * at.contestant + half y1=blockTop y2=itemTop light=true/></#list>
  </#list>

  <#assign off = gridEnd + 0.8 total = off + 8.1 + 0.4 stopped = total + 10 + 0.7 tie = stopped + 5 + 0.9>
  <@boxes y=off h=8.1/><@label y=off + 4.05>Points off</@label>
  <@boxes y=total h=10 class="total" pt=2.2/>
  <@label y=total + 3.1 pt=13 bold=true>Total of ${sums.total}</@label>
  <@label y=total + 7.8 pt=10>${sums.hands} + ${sums.voice} + ${sums.allThrough}, less points off</@label>
  <@label y=stopped + 2.5>Stopped for the rabbit</@label>
  <#list sides as side><#list 0..4 as no><@j.box class="small" x=side + no * at.contestant + half - 2.5 y=stopped w=5 h=5/></#list></#list>
  <#list ["Tie broken on", "Place", "Number again"] as what>
  <@boxes y=tie + what?index * 8.1 h=8.1 + 1.2 * 0.3528/><@label y=tie + what?index * 8.1 + 4.05>${what}</@label>
  </#list>
  <#list sides as side><#list 0..4 as no>
  <#assign who = grid.columns[side?index * 5 + no]>
  <#if who.number??><@j.words x=side + no * at.contestant y=tie + 20.45 pt=16 w=at.contestant align="center" bold=true>${who.number}</@j.words></#if>
  </#list></#list>
</div>
</#list>
</body>
</html>
