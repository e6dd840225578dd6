<#-- A score sheet for one contestant in large print or easy read: the blocks of the ordinary sheet, under each other. -->
<#import "marks.ftl" as marks>
<#assign t = look.type>
<#assign f = look.frame>
<#assign u = t.body * t.line>
<#assign sizes = []>
<#assign known = head!{}>
<html xmlns="http://www.w3.org/1999/xhtml" lang="en">
<head>
<title>${look.level} score sheet${look.set.title}</title>
<style>
<#include "form-style.ftl">
</style>
<#if head??><bookmarks><#list sheets as s><bookmark name="Score sheet<#if s.number??>, number ${s.number}<#else>, spare</#if>" href="#s${s?counter}"/></#list></bookmarks></#if>
</head>
<body>
<#macro field label value=""><tr><td class="label">${label}</td><td class="line"><#if value?has_content>${value}<#else>&#160;</#if></td></tr></#macro>
<#macro box label of class=""><tr><td><strong>${label}</strong></td><td class="write ${class}">&#160;</td><td class="of"><#if of?has_content>of ${of}</#if></td></tr></#macro>
<#list sheets as s>
<div class="foot"><table class="footline"><tr><td class="footmark"><@marks.toes n=look.toes half=5/></td><td class="footname">Score sheet<#if s.number??>, number ${s.number}</#if></td><td class="footpage"><span class="pageno">&#160;</span></td></tr></table></div>
<div<#if !s?is_first> class="later"</#if> id="s${s?counter}">
  <div class="formhead"><h1>Score sheet</h1><p>${look.level}, one contestant, ${sums.total} points</p><#if club?has_content><p>${club}</p></#if><div class="right"><div class="numbox"><#if s.number??>${s.number}<#else>&#160;</#if></div><p>number</p></div></div>
  <p><strong>Tick as you watch. Score each block once.</strong></p>
  <table class="fields" role="presentation">
    <@field label="Name" value=s.name!""/><@field label="Rabbit, breed" value=s.rabbit!""/><@field label="Class" value=known.division!""/><@field label="Date" value=known.date!""/><@field label="Show" value=known.show!""/><@field label="Section"/><@field label="Judge 1 or 2" value=known.judge!""/>
  </table>
  <#list blocks as block>
  <div class="block">
    <h2>${block.letter}&#160; ${block.name}</h2>
    <p>${block.lookingFor}</p>
    <table class="stops"><thead><tr><th scope="col" class="no">Stop</th><th scope="col">&#160;</th><th scope="col" class="tickcol">shown</th><th scope="col" class="tickcol">said</th></tr></thead>
    <tbody><#list block.stops as stop><tr><td class="no">${stop.no}</td><td>${stop.name}<#if look.word == "junior" && stop.no == 12>: part the fur, say buck or doe</#if></td><td class="tickcol"><@marks.tick size=7/></td><td class="tickcol"><@marks.tick size=7/></td></tr></#list></tbody></table>
    <table class="boxes" role="presentation"><tr><td><strong>Hands</strong></td><td class="write">&#160;</td><td class="of">of ${block.points.hands}</td><td><strong>Voice</strong></td><td class="write">&#160;</td><td class="of">of ${block.points.voice}</td></tr></table>
    <p>Note</p><div class="writeline">&#160;</div>
  </div>
  </#list>
  <#list items as item>
  <div class="block"><h2>${item.name}</h2><p>${item.lookingFor}</p>
    <#if item.cells gt 0><table class="boxes" role="presentation"><tr><#list 1..item.cells as no><td>${no}</td><td class="write" style="width:15mm;height:13mm">&#160;</td><td style="padding-right:3mm">&#160;</td></#list></tr></table></#if>
    <table class="boxes" role="presentation"><@box label=item.name of=item.points/></table></div>
  </#list>
  <div class="block">
    <div class="tickline" style="margin-bottom:3mm"><@marks.tick size=8/><strong>Stopped for the rabbit&#8217;s sake: rest told, not shown.</strong> It costs nothing; score what was told.</div>
    <h2>Total</h2>
    <table class="boxes" role="presentation"><@box label="Hands" of=sums.hands/><@box label="+ Voice" of=sums.voice/><@box label="+ All through" of=sums.allThrough/><@box label="&#8722; Points off"?no_esc of=""/><@box label="= Total" of=sums.total class="sum"/><@box label="Place" of=""/></table>
  </div>
  <div class="block"><table class="fields" role="presentation"><#list ["Reason for points off", "Tie broken on", "Best thing", "Work on next", "Judge", "Signature", "Writer"] as label><@field label=label/></#list><#if s.number??><@field label="Number again" value=s.number/><#else><@field label="Number again"/></#if><@field label="and name" value=s.name!""/></table></div>
</div>
</#list>
</body>
</html>
