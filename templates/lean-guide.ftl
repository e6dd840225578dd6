<#import "marks.ftl" as marks>
<#assign t = look.type>
<#assign f = look.frame>
<#assign u = t.body * t.line>

<html xmlns="http://www.w3.org/1999/xhtml" lang="en">
<head>
<title>${look.level} lean guide</title>
<style>
<#include "half-style.ftl">
<#include "lean-guide-style.ftl">
</style>
<bookmarks>
  <bookmark name="The routine on one page" href="#routine"/>
  <bookmark name="How to use this booklet" href="#how-to-use"/>
  <#list stops as s>
  <bookmark name="${s.stop.no} ${s.stop.name}" href="#${s.stop.anchor}"/>
  </#list>
  <bookmark name="Words to know" href="#words"/>
</bookmarks>
</head>
<body>
<div class="foot"><table class="footline"><tr>
  <td class="footmark"><@marks.toes n=look.toes half=5/></td>
  <td class="footname">${look.level} lean guide</td>
  <td class="footpage"><span class="pageno">&#160;</span></td>
</tr></table></div>

<#include "half-parts.ftl">

<#macro head stop>
<@marks.hopline hops=stop.hops width=f.live/>
<div class="stoptitle"><div class="numeral">${stop.no}</div><h2><#nested/></h2></div>
</#macro>

<#macro hands stop>
<div class="sec"><h3>With your hands</h3><ol><#list stop.steps as step><li><span class="num">${step?counter}</span>${step}</li></#list></ol></div>
</#macro>

<#macro seeit pictures>
<#if pictures?has_content>
<div class="sec see">
<table class="figs"><tr><#list pictures as picture><td<#if pictures?size == 1> style="width:${picture.width + 6}mm"</#if>><div class="frame" style="width:${picture.width}mm"><img class="h${picture.size.most}f${picture.size.floor}" src="hutch:${picture.file}" alt="${picture.alt}"/></div><#if pictures?size gt 1 || picture.width gt 90><div class="cap">${picture.caption}</div></td><#else></td><td class="cap">${picture.caption}</td></#if></#list></tr></table>
</div>
</#if>
</#macro>

<#macro look_for stop>
<#if stop.spoken.lookFor??>
<div class="sec"><h3>Look for</h3><@table data=stop.spoken.lookFor/><#if !look.primary><p class="note">What follows in a breed class varies: check your rule book.<#if stop.spoken.starred> *Some breeds differ: read your breed&#8217;s standard.</#if></p></#if></div>
</#if>
</#macro>

<#macro say stop>
<div class="sec<#if look.primary> open</#if>"><h3>What to say</h3><@speech text=stop.spoken.sayIt/><#if stop.spoken.ifFound??><@speech text=stop.spoken.ifFound intro=look.primary?then("If not:", "If you find it, say it:")/></#if></div>
</#macro>

<div class="cover">
  <h1>${look.level}</h1>
  <div class="covertop"><span class="brand">Hutchleaf</span><span class="series">Lean guides for rabbit showmanship</span></div>
  <div class="covertoes"><@marks.toes n=look.toes half=12/></div>
  <p class="coversub">Your routine, stop by stop</p>
  <p class="coverlead">What your hands do, what to look for, what to say. Your study guide tells you why.</p>
  <div class="coverrabbit"><@marks.rabbit width=84/></div>
  <div class="coverhops">
    <#assign open = []>
    <#list stops as s><#assign open = open + [{"no": s.stop.no, "done": false, "here": false}]></#list>
    <@marks.hopline hops=open width=f.live/>
    <div class="coverends"><span class="from">${stops[0].stop.name}</span><span class="to">${stops[stops?size - 1].stop.name}</span></div>
  </div>
  <div class="belongs"><div class="label">This guide belongs to</div><div class="line">&#160;</div></div>
  <div class="belongs second"><div class="label">and this rabbit</div><div class="line">&#160;</div></div>
  <div class="coverfoot"><span class="club">${club}</span><span class="ages">${belongsTo}</span></div>
</div>

<#assign turned = stops?filter(s -> s.back)?has_content>
<div class="page routine" id="routine" data-fit="roomy snug close tight" data-fit-height="${f.liveHeight}mm" data-fit-else="flow" data-what="the routine on one page">
  <h2>The routine on one page</h2>
  <#if turned><p class="note">At the black bar the rabbit lies on its back. Cover the last column and say it.</p><#else><p class="note">Cover the last column and say it.</p></#if>
  <table class="data routinetable">
    <thead><tr><th class="bar" scope="col">&#160;</th><th class="no" scope="col">&#160;</th><th class="stop" scope="col">Stop</th><th scope="col">Do</th><th scope="col">Say</th></tr></thead>
    <tbody>
    <#list routine as row>
    <tr class="${row.first?then('first', '')}"><td class="bar<#if row.back> on</#if>">&#160;</td><td class="no">${row.no}</td><td class="stop">${row.name}</td><td>${row.doing}</td><td><em>${row.saying}</em></td></tr>
    </#list>
    </tbody>
  </table>
</div>

<div class="page" id="how-to-use" data-fit="roomy snug close tight" data-fit-height="${f.liveHeight}mm" data-what="the page that tells how to use the booklet">
  <h2>How to use this booklet</h2>
  <div class="sec"><h3>One stop at a time</h3><ol>
    <li><span class="num">1</span>Read the stop.</li>
    <li><span class="num">2</span>Do it with a soft toy, slowly.</li>
    <li><span class="num">3</span>Do it with your rabbit<#if look.primary> and a grown-up<#else>, an adult beside you</#if>. Say the words.</li>
    <li><span class="num">4</span>Ten minutes, then rest. Put your rabbit back with a kind word.</li>
  </ol></div>
  <div class="sec"><h3>Where you are</h3><@marks.hopline hops=stops[2].stop.hops width=f.live/><p>The hop line tells you: behind you black, ahead of you open.</p></div>
  <div class="sec"><h3>Your own words</h3><p>Say what is true of your rabbit. Any true words will do.</p></div>
  <div class="stoprule"><strong>Stop rule.</strong> It kicks, pants or shakes? <#if look.primary>Stop. Let it rest. Say the other stops.<#else>Turn it back at once, pose it, tell the rest.</#if> It costs nothing.</div>
</div>

<div class="filler page"><h2>Notes</h2><p>What your leader told you, what your rabbit likes, what to practise next:</p><#list 1..(f.liveHeight / 10 - 5)?int as n><div class="writeline">&#160;</div></#list></div>

<#list stops as s>
<#assign stop = s.stop>
<#assign start><#if s?is_first>data-start="even" </#if></#assign>
<#if s.pages == "two">
<div class="leaf" id="${stop.anchor}" ${start}data-fit="roomy snug plain spare close tight" data-fit-height="${f.liveHeight}mm" data-place="${stop.place}" data-what="the left page of stop ${stop.no} of the lean guide for ${look.word}">
  <@head stop=stop>${stop.name}</@head>
  <@seeit pictures=s.pictures/>
  <@hands stop=stop/>
  <@caution text=stop.caution/>
</div>
<div class="leaf" id="${stop.anchor}-say" data-fit="roomy snug close tight least" data-fit-height="${f.liveHeight}mm" data-place="${stop.place}" data-what="the right page of stop ${stop.no} of the lean guide for ${look.word}">
  <@head stop=stop>Look, then say it</@head>
  <@look_for stop=stop/>
  <@say stop=stop/>
  <#if s.back><div class="stoprule"><strong>Stop rule.</strong> It kicks, pants or shakes? Turn it back, pose it, tell the rest. It costs nothing.</div></#if>
</div>
<#else>
<div class="leaf" id="${stop.anchor}" ${start}data-fit="roomy snug plain spare close tight" data-fit-height="${f.liveHeight}mm"<#if s.pages == "flow"> data-fit-else="flow"</#if> data-place="${stop.place}" data-what="the page of stop ${stop.no} of the lean guide for ${look.word}">
  <@head stop=stop>${stop.name}</@head>
  <@seeit pictures=s.pictures/>
  <@hands stop=stop/>
  <@look_for stop=stop/>
  <@say stop=stop/>
  <@caution text=stop.caution/>
</div>
</#if>
</#list>

<div class="page words" id="words">
  <h2>Words to know</h2>
  <#list words as word><div class="word"><strong>${word.term}</strong>: ${word.meaning}</div></#list>
</div>
</body>
</html>
