<#import "marks.ftl" as marks>
<#assign t = look.type>
<#assign f = look.frame>
<#assign u = t.body * t.line>
<#assign sizes = []>
<#assign cover = {"routine": []}>
<#-- Room at the foot for the words that may always be said. -->
<#assign footHigh = look.set.large?then(58, look.set.easy?then(48, look.primary?then(40, 36)))>
<html xmlns="http://www.w3.org/1999/xhtml" lang="en">
<head>
<title>${look.level} talk-through sheet</title>
<style>
<#include "guide-style.ftl">
@page { margin-bottom: ${footHigh}mm; @bottom-center { content: element(footalways); vertical-align: top; padding-top: 3mm; } }
@page :first { margin-bottom: ${footHigh}mm; @bottom-center { content: element(footalways); vertical-align: top; padding-top: 3mm; } }
.footalways { position: running(footalways); font-family: Lato, 'DejaVu Sans'; } .footalways .always { border: 2pt solid black; padding: 1.2mm 3mm; margin-bottom: 2mm; max-width: none; line-height: 1.25; width: ${f.live}mm; }
h1 { margin: 0; padding: 0 50mm 0 0; font-size: 30pt; line-height: 1.1; } .head { position: relative; width: ${f.live}mm; border-bottom: 2.2pt solid black; padding-bottom: 3mm; } .head .toes { position: absolute; right: 0; top: 1mm; } .head p { margin-top: 1mm; }
h2 { margin-top: ${u * 1.1}pt; } .stop { border-top: 1.6pt solid black; margin-top: ${u * 0.7}pt; padding-top: ${u * 0.3}pt; page-break-inside: avoid; }
.stop h3 { font-size: ${t.body * 1.35}pt; line-height: 1.15; page-break-after: avoid; }
.sides { width: ${f.live}mm; table-layout: fixed; margin-top: 1.5mm; } .sides td { vertical-align: top; padding: 0 0 0 5mm; } .sides td:first-child { padding: 0 5mm 0 0; }
.lab { font-weight: bold; margin-top: 1.5mm; max-width: none; page-break-after: avoid; } .sides p { max-width: none; } .sides .lab:first-child { margin-top: 0; }
.stop .speech { padding: 1.8mm 4mm; font-size: ${t.body}pt; margin-top: 0.8mm; } .mind { margin-top: 2mm; } .names { font-size: ${t.note}pt; line-height: 1.3; margin-top: 0.6mm; }
.care { margin-top: 2mm; max-width: none; border-left: 3.4pt solid black; padding-left: 3mm; line-height: 1.3; }
.writename { border-bottom: 0.9pt solid black; height: 9mm; width: 110mm; }
<#if !look.set.open>
h2 { font-size: ${t.body * 1.5}pt; margin-top: 4mm; } h2.plain { margin-bottom: 1mm; } h2.page { margin-top: 0; } .sec { margin-top: 2.4mm; padding-top: 1.6mm; min-height: 0 !important; page-break-inside: auto; } .rail { top: 1.6mm; } .sec .body { line-height: 1.28; } .stop { line-height: 1.3; margin-top: 3mm; }
</#if>
<#if look.set.open>
<#-- A caution never stands on another page than its stop, unless a page cannot hold both. -->
.stop .speech, .care, .mind { page-break-inside: avoid; } .stop .lab { margin-top: 3mm; }
body h1, body h1 * { font-size: 30pt !important; } body .stop h3, body .stop h3 * { font-size: ${[t.body * 1.35, 20]?max}pt !important; line-height: 1.2 !important; }
.footalways .always { line-height: 1.25 !important; }
body .head .toes { position: absolute !important; }
</#if>
</style>
<bookmarks>
  <bookmark name="How it works" href="#how"/>
  <bookmark name="At each stop" href="#stops">
    <#list stops as stop><bookmark name="${stop.no} ${stop.name}" href="#stop-${stop.no}"/></#list>
  </bookmark>
</bookmarks>
</head>
<body>
<div class="footalways"><p class="always"><strong>&#8220;Feet down, please.&#8221;</strong> You may always say it. Your helper does it at once<#if minute>, and also after about a minute on its back</#if>. It costs nothing.</p><table class="footline"><tr>
  <td class="footmark"><@marks.toes n=look.toes half=5/></td>
  <td class="footname"><#if look.set.large>${name}<#else>${foot}</#if></td>
  <td class="footpage"><span class="pageno">&#160;</span></td>
</tr></table></div>
<#include "blocks.ftl">
<#macro list items><ul><#list items as item><li><span class="dot">&#8226;</span>${item}</li></#list></ul></#macro>
<#macro bubble text><div class="speech">&#8220;${text}&#8221;</div></#macro>
<#macro toHelper stop><p class="lab">Say to your helper</p><@bubble text=stop.say/><p class="mind"><strong>Your helper:</strong> ${stop.helper}</p></#macro>
<#macro toJudge stop><p class="lab">Look</p><p>${stop.lookFor}</p><#if stop.names??><p class="names"><strong>What to call it:</strong> ${stop.names}</p></#if><p class="lab">Say to the judge</p><@bubble text=stop.judge/></#macro>

<div class="head"><h1>Talk-through sheet</h1><div class="toes"><@marks.toes n=look.toes half=11/></div><p>${look.level}. You say where the hands go; your helper&#8217;s hands do it.</p><#if name?has_content><p><strong>${name}</strong></p><#else><p class="writename">&#160;</p></#if></div>

<h2 class="plain" id="how">How it works</h2>
<@section heading="Before the day" railLines=2><@list items=before/></@section>
<@section heading="For you" railLines=1><@list items=member/></@section>
<@section heading="For your helper" railLines=2 class="last"><@list items=helper/></@section>

<h2 class="plain<#if !look.set.open> page</#if>" id="stops">At each stop</h2>
<#list stops as stop>
<div class="stop" id="stop-${stop.no}">
  <h3>${stop.no}&#160; ${stop.name}</h3>
  <#if look.set.open>
  <@toHelper stop=stop/>
  <@toJudge stop=stop/>
  <#else>
  <table class="sides" role="presentation"><tr><td><@toHelper stop=stop/></td><td><@toJudge stop=stop/></td></tr></table>
  </#if>
  <p class="care"><strong>Caution.</strong> ${stop.caution}</p>
</div>
</#list>
</body>
</html>
