<#import "marks.ftl" as marks>
<#import "judge-marks.ftl" as j>
<#assign left = 9 right = at.right foot = at.footTop>
<#-- Letter is the measure; a narrower page takes its millimetres from what stands at the right. -->
<#assign narrow = 206.9 - right>
<#assign known = head!{}>
<#assign hands = left + 124 voice = left + 147 box = 21.5 note = left + 172.5>

<html xmlns="http://www.w3.org/1999/xhtml" lang="en">
<head>
<title>${look.level} score sheet</title>
<style>
@page { size: ${at.width}mm ${at.height}mm; margin: 0; }
<@j.style/>
.page { position: relative; width: ${at.width}mm; height: ${at.height - 1}mm; } .later { page-break-before: always; }
h2 { font-size: 11.5pt; font-weight: bold; }
.hint { font-size: 10pt; line-height: 4.1mm; white-space: normal; }
</style>
<#if head??><bookmarks><#list sheets as s><bookmark name="Score sheet<#if s.number??>, number ${s.number}<#else>, spare</#if>" href="#s${s?counter}"/></#list></bookmarks></#if>
</head>
<body>
<#macro sum label x w of="" class="" h=11.6><@j.words x=x y=foot + 11.9 bold=true>${label}</@j.words><@j.box x=x y=sumTop w=w h=h of=of class=class/></#macro>
<#list sheets as s>
<div class="page<#if !s?is_first> later</#if>"<#if head??> id="s${s?counter}"</#if>>
  <@j.words x=left y=12.4 pt=24 bold=true tag="h1">Score sheet</@j.words>
  <@j.words x=left y=20.6 pt=11>one contestant, ${sums.total} points</@j.words>
  <#if club?has_content><@j.words x=left y=26 pt=10>${club}</@j.words></#if>
  <div class="at" style="left:83mm;top:8.6mm"><@marks.toes n=look.toes half=9/></div>
  <@j.words x=105 y=12.4 pt=20 bold=true>${look.level}</@j.words>
  <@j.words x=83 y=21.8 pt=11 bold=true>Tick as you watch. Score each block once.</@j.words>
  <@j.box x=right - 34 y=8.3 w=34 h=16/>
  <#if s.number??><@j.words x=right - 34 y=16.3 pt=32 w=34 align="center" bold=true>${s.number}</@j.words></#if>
  <@j.words x=right - 34 y=26.6 pt=10 w=34 align="center">number</@j.words>

  <@j.field label="Name" x=left gap=20.5 x2=73 y=34/>
  <#if s.name??><@j.filled x=20.5 x2=73 y=34 bold=true>${s.name}</@j.filled></#if>
  <@j.field label="Rabbit and breed" x=76 gap=106.5 x2=right y=34/>
  <#if s.rabbit??><@j.filled x=106.5 x2=right y=34>${s.rabbit}</@j.filled></#if>
  <@j.field label="Class" x=left gap=20 x2=37 y=42.2/>
  <#if known.division??><@j.filled x=20 x2=37 y=42.2 sizes="f11 f10">${known.division}</@j.filled></#if>
  <@j.field label="Date" x=39.5 gap=49 x2=68.5 y=42.2/>
  <#if known.date??><@j.filled x=49 x2=68.5 y=42.2 sizes="f10">${known.date}</@j.filled></#if>
  <@j.field label="Show" x=71 gap=81.5 x2=134 - narrow y=42.2/>
  <#if known.show??><@j.filled x=81.5 x2=134 - narrow y=42.2 sizes="f11 f10">${known.show}</@j.filled></#if>
  <@j.field label="Section" x=136.5 - narrow gap=151 - narrow x2=167 - narrow y=42.2/>
  <@j.words x=right - 36 y=39.9>Judge</@j.words>
  <@j.words x=right - 22.5 y=39.9>1</@j.words>
  <@j.words x=right - 7.8 y=39.9>2</@j.words>
  <@j.judge head=known x1=right - 19 x2=right - 4.2 y=38/>

  <@j.words x=left y=47.9 bold=true>Block</@j.words>
  <@j.words x=left + 54 y=47.9 bold=true>Stops</@j.words>
  <@j.words x=left + 98 y=47.9 pt=10 w=10 align="center">shown</@j.words>
  <@j.words x=left + 109 y=47.9 pt=10 w=10 align="center">said</@j.words>
  <@j.words x=hands y=47.9 w=box align="center" bold=true>Hands</@j.words>
  <@j.words x=voice y=47.9 w=box align="center" bold=true>Voice</@j.words>
  <@j.words x=note y=47.9 bold=true>Note</@j.words>
  <@j.hline x1=left x2=right y=51.2 pt=1.8/>

  <#list blocks as block>
  <#assign top = block.at.top bottom = block.at.top + block.at.height>
  <@j.words x=left y=top + 4 pt=16 bold=true>${block.letter}</@j.words>
  <h2 class="at" style="left:${left + 7.5}mm;top:${top + 1.1}mm">${block.name}</h2>
  <div class="at hint" style="left:${left + 7.5}mm;top:${top + 5.9}mm;width:45.5mm">${block.lookingFor}</div>
  <#list block.stops as stop>
  <@j.words x=left + 52 y=stop.middle w=6.8 align="right" bold=true>${stop.no}</@j.words>
  <#if look.word == "junior" && stop.no == 12>
  <div class="at" style="left:${left + 61.5}mm;top:${stop.middle - 3.3}mm;font-size:10pt;line-height:3.3mm">${stop.name}: part the fur,<br/>say buck or doe</div>
  <#else>
  <@j.words x=left + 61.5 y=stop.middle>${stop.name}</@j.words>
  </#if>
  <@j.box class="small" x=left + 101 y=stop.middle - 2 w=4 h=4/>
  <@j.box class="small" x=left + 112 y=stop.middle - 2 w=4 h=4/>
  </#list>
  <@j.box x=hands y=(top + bottom) / 2 - 6.7 w=box h=13.4 of=block.points.hands/>
  <@j.box x=voice y=(top + bottom) / 2 - 6.7 w=box h=13.4 of=block.points.voice/>
  <#list block.noteLines as line><@j.hline x1=note x2=right y=line light=true/></#list>
  <@j.hline x1=left x2=right y=bottom pt=block?is_last?then(1.8, 1.1)/>
  </#list>

  <#list items as item>
  <#assign middle = item.top + at.itemHeight / 2 tall = at.itemHeight - 1.3>
  <@j.words x=left + 7.5 y=middle pt=11.5 bold=true tag="h2">${item.name}</@j.words>
  <@j.words x=left + 54 y=middle>${item.lookingFor}</@j.words>
  <@j.box x=hands y=middle - tall / 2 w=44.5 h=tall of=item.points/>
  <#if item.cells gt 0>
  <#assign cell = [6.3, 33.5 / item.cells]?min>
  <#list 1..item.cells as no><@j.vline x=hands + no * cell y1=middle - tall / 2 y2=middle + tall / 2/></#list>
  </#if>
  <#if item?is_last><@j.hline x1=left x2=right y=item.top + at.itemHeight pt=1.8/><#else><@j.hline x1=left x2=hands - 2 y=item.top + at.itemHeight/></#if>
  </#list>

  <@j.box x=left y=foot + 2.2 w=5 h=5 class="small"/>
  <@j.words x=left + 7.5 y=foot + 4.7><strong>Stopped for the rabbit&#8217;s sake: rest told, not shown.</strong> It costs nothing; score what was told.</@j.words>

  <#assign sumTop = foot + 14.9 sign = sumTop + 6>
  <@sum label="Hands" x=left w=28.5 of=sums.hands/><@j.words x=38.3 y=sign pt=14 w=5 align="center">+</@j.words>
  <@sum label="Voice" x=44 w=28.5 of=sums.voice/><@j.words x=73.3 y=sign pt=14 w=5 align="center">+</@j.words>
  <@sum label="All through" x=79 w=28.5 of=sums.allThrough/><@j.words x=108.3 y=sign pt=14 w=5 align="center">&#8722;</@j.words>
  <@sum label="Points off" x=114 w=21.5/><@j.words x=136.3 y=sign pt=14 w=5 align="center">=</@j.words>
  <@sum label="Total" x=142 w=36 h=12 of=sums.total class="total"/>
  <@sum label="Place" x=181 w=right - 181/>

  <@j.field label="Reason for points off" x=left gap=48.5 x2=129 - narrow y=foot + 34.3/>
  <@j.field label="Tie broken on" x=133 - narrow gap=159 - narrow x2=right y=foot + 34.3/>
  <@j.field label="Best thing" x=left gap=36 x2=right y=foot + 42.7 bold=true/>
  <@j.field label="Work on next" x=left gap=36 x2=right y=foot + 51.1 bold=true/>
  <@j.field label="Judge" x=left gap=21 x2=79 - narrow / 3 y=foot + 59.5/>
  <@j.field label="Signature" x=83 - narrow / 3 gap=102 - narrow / 3 x2=154 - narrow y=foot + 59.5/>
  <@j.field label="Writer" x=158 - narrow gap=171 - narrow x2=right y=foot + 59.5/>
  <@j.words x=left y=foot + 66.6 bold=true>Number again</@j.words>
  <@j.box x=38 y=foot + 62.2 w=24 h=8.6/>
  <#if s.number??><@j.words x=38 y=foot + 66.5 pt=18 w=24 align="center" bold=true>${s.number}</@j.words></#if>
  <@j.field label="and name" x=67 gap=86 x2=right y=foot + 68.9 bold=true/>
  <#if s.name??><@j.filled x=86 x2=right y=foot + 68.9>${s.name}</@j.filled></#if>
</div>
</#list>
</body>
</html>
