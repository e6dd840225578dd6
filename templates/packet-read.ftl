<#import "marks.ftl" as marks>
<#assign t = look.type>
<#assign f = look.frame>
<#assign u = t.body * t.line>
<#assign cover = {"routine": []}>
<#assign middle = f.live / 2>
<html xmlns="http://www.w3.org/1999/xhtml" lang="en">
<head>
<title><#if name?has_content>Show packet for ${name}<#else>Show packet for any rabbit</#if></title>
<style>
<#include "packet-style.ftl">
</style>
<bookmarks>
  <bookmark name="Letter" href="#letter"/>
  <#list rabbits as r><bookmark name="My rabbit<#if r.name?has_content>: ${r.name}</#if>" href="#${r.anchor}"/></#list>
  <#list routines as r><bookmark name="My routine<#if routines?size gt 1>: ${r.rabbit}</#if>" href="#${r.anchor}"/></#list>
  <bookmark name="Study plan" href="#plan"/>
  <bookmark name="Practice log" href="#log"/>
  <bookmark name="Show-day checklist" href="#checklist"/>
  <bookmark name="Pocket sheet" href="#pocket-1"/>
</bookmarks>
</head>
<body>
<div class="foot"><table class="footline"><tr>
  <td class="footmark"><@marks.toes n=look.toes half=5/></td>
  <td class="footname">${foot}</td>
  <td class="footpage"><span class="pageno">&#160;</span></td>
</tr></table></div>
<#include "blocks.ftl">
<#include "pocket.ftl">

<#macro value fact><#if fact.value??>${fact.value}<#if fact.note??> <span class="note">${fact.note}</span></#if><#else>&#160;</#if></#macro>
<#macro list items><ul><#list items as item><li><span class="dot">&#8226;</span>${item}</li></#list></ul></#macro>

<div id="letter" data-fit-else="flow" data-fit="roomy snug close tight" data-fit-height="${f.liveHeight}mm" data-place="${letter.place}" data-what="the leader's letter">
  <div class="packethead"><div class="for">Show packet for</div><#if name?has_content><h1>${name}</h1><#else><h1>Any rabbit</h1></#if><div class="sign"><@marks.rabbit width=40/></div></div>
  <table class="two" role="presentation"><tr>
    <td class="col"><#if !name?has_content><table class="facts"><tr><td class="label">Name</td><td class="value">&#160;</td></tr></table></#if><div class="body letterbody"><#list letter.blocks as b><@block b=b/></#list></div>
    <#if letter.grownUp?has_content>
      <div class="stopline grown"><p><strong>A grown-up reads this first.</strong></p><@list items=letter.grownUp/></div>
      </#if></td>
    <td class="gapcol">&#160;</td>
    <td class="col" style="width:80mm">
      <p class="sub">The two of you</p>
      <table class="facts"><tbody><#list letter.facts as fact><tr><td class="label">${fact.label}</td><td class="value"><@value fact=fact/></td></tr></#list></tbody></table>
      <div class="showday"><p><strong>Show day</strong></p><p class="date">${letter.showDate}</p><p>${letter.showName}<br/>${letter.toGo}</p></div>
    </td>
  </tr></table>
  <#if letter.howToUse?has_content><@section heading="How to use it" railLines=2><@list items=letter.howToUse/></@section></#if>
  <@section heading="In this packet" railLines=2 class="last">
  <table class="inside" style="width:${f.text}mm" role="presentation">
    <#list rabbits as r><tr><td class="tocpage"><a class="pageof" href="#${r.anchor}">&#160;</a></td><td>My rabbit<#if r.name?has_content>: ${r.name}</#if></td><#if r?is_first><td class="tocpage"><a class="pageof" href="#plan">&#160;</a></td><td>My study plan</td><#else><td class="tocpage">&#160;</td><td>&#160;</td></#if></tr></#list>
    <tr><td class="tocpage"><a class="pageof" href="#${routines[0].anchor}">&#160;</a></td><td>My routine</td><td class="tocpage"><a class="pageof" href="#checklist">&#160;</a></td><td>Show-day checklist</td></tr>
    <tr><td class="tocpage"><a class="pageof" href="#log">&#160;</a></td><td>Practice log</td><td class="tocpage"><a class="pageof" href="#pocket-1">&#160;</a></td><td>Pocket sheet</td></tr>
  </table>
  <p class="note">Is something here wrong? Tell your leader, so that it can be printed again.</p>
  </@section>
</div>

<#macro asked r><#list r.questions as q><div class="asked"><p><strong>${q.question}</strong><#if q.need?has_content> <span class="note">${q.need}</span></#if></p><p class="points"><#list q.points as point>${point}<#sep>; </#sep></#list></p></div></#list></#macro>

<#macro strip r>
<table class="strip" role="presentation"><tr><#list r.strip as fact><td><div class="label">${fact.label}</div><div class="value"><#if fact.value??>${fact.value}<#else><span class="empty">&#160;</span></#if></div></td></#list></tr></table>
</#macro>

<#list rabbits as r>
<div class="page" id="${r.anchor}" data-fit-else="flow" data-fit="roomy snug close tight" data-fit-height="${f.liveHeight}mm" data-what="the page on ${r.name?has_content?then(r.name, 'any rabbit')}">
  <h2 class="plain">My rabbit<#if r.name?has_content>: ${r.name}</#if></h2>
  <@strip r=r/>
  <#if r.pictures?has_content><@section heading="See it"><@figures pictures=r.pictures/></@section></#if>
  <div class="sec"><div class="rail" style="width:100mm"><h3>What the judge should find</h3></div><div class="body" style="min-height:${u}pt">&#160;</div>
  <table class="data wide finds" style="margin-top:0">
    <thead><tr><th scope="col" class="stops">Stop</th><th scope="col" class="point">What</th><th scope="col" class="found"><#if r.name?has_content>On ${r.name}<#else>On this rabbit</#if></th><th scope="col">How I say it</th></tr></thead>
    <tbody><#list r.finds as find><tr><td class="stops">${find.stops}</td><td class="point">${find.point}</td><td>${find.found}</td><td><#if find.say??><em>&#8220;${find.say}&#8221;</em><#else>&#160;</#if></td></tr></#list></tbody>
  </table></div>
</div>
<div class="page" data-fit-else="flow" data-fit="roomy snug close tight" data-fit-height="${f.liveHeight}mm" data-what="the page on the breed of ${r.name?has_content?then(r.name, 'any rabbit')}">
  <#if r.breed?has_content>
  <h2 class="plain">The breed: ${r.breedName}</h2>
  <table class="facts breed" style="width:${f.live}mm"><tbody><#list r.breed as fact><tr><td class="label">${fact.label}</td><td class="value"><#if fact.value??>${fact.value}<#else><span class="check"><#if look.primary>ask a grown-up<#else>check your breed standard</#if></span> <span class="write">&#160;</span></#if></td></tr></#list></tbody></table>
  <p class="note" style="margin-top:1.5mm">Rules change. Your breed standard and the rule book of your show come first.</p>
  <#else>
  <h2 class="plain">About ${r.name?has_content?then(r.name, 'this rabbit')}</h2>
  <p><#if r.name?has_content>A mixed breed has no breed standard. In a showmanship class that is no fault: show how well you know and handle your rabbit.<#else>Ask its keeper, or look it up: body type and pose, ear carriage, fur type, number of show classes, senior weights.</#if></p>
  </#if>
  <#if r.ticks?has_content><@section heading="Say something good" railLines=2><#list r.ticks as tick><p><@marks.tick size=6/> ${tick.sentence}</p></#list></@section></#if>
  <#if r.comments?has_content>
  <div class="sec"><div class="rail" style="width:100mm"><h3>Comments to build</h3></div><div class="body" style="min-height:${u}pt">&#160;</div>
  <table class="data wide build" style="margin-top:0">
    <thead><tr><th scope="col" class="part">Part</th><th scope="col">Praise it for</th><th scope="col">Look out for</th><th scope="col" class="ring">Draw a ring</th></tr></thead>
    <tbody><#list r.comments as c><tr><td class="part">${c.part}</td><td>${c.praise}</td><td>${c.lookFor}</td><td>${r.grades?join(" ")}</td></tr></#list></tbody>
  </table>
  <p style="margin-top:2mm">Say part, grade and reason: <em>&#8220;${r.comments[0].start}&#8221;</em></p></div>
  </#if>
  <#if r.questions?has_content && r.questions?size lte 6>
  <@section heading="A judge may ask" railLines=2 class="last"><@asked r=r/></@section>
  </#if>
</div>
<#if r.questions?size gt 6>
<div class="page" data-fit-else="flow" data-fit="roomy snug close tight" data-fit-height="${f.liveHeight}mm" data-what="the page of questions about ${r.name?has_content?then(r.name, 'any rabbit')}">
  <h2 class="plain">Questions about <#if r.name?has_content>${r.name}<#else>my rabbit</#if></h2>
  <p>Cover the points, answer aloud, then look. Any true words will do.</p>
  <@section heading="A judge may ask" railLines=2><@asked r=r/></@section>
  <@section heading="My own words" railLines=2 class="last"><p class="note">What is best about this rabbit? What would you change?</p><#list 1..4 as n><div class="writeline">&#160;</div></#list></@section>
</div>
</#if>
</#list>

<#list routines as routine>
<#list routine.pages as page>
<div class="page"<#if page?is_first> id="${routine.anchor}"</#if> data-fit="roomy snug close tight" data-fit-height="${f.liveHeight}mm" data-place="${page.stops[0].place}" data-what="the page with ${page.span} of ${name?has_content?then(name, 'any rabbit')}">
  <table class="routinehead" role="presentation"><tr><td><h2>My routine<#if routines?size gt 1> with ${routine.rabbit}</#if></h2></td><td class="who">${page.span}</td></tr></table>
  <#if page?is_first><@strip r=rabbits[routine?index]/></#if>
  <#list page.stops as stop>
  <table class="stoprow" role="presentation"<#if stop?is_first> style="border-top:0.9pt solid black;margin-top:2mm"</#if>><tr>
    <td class="hands"><span class="no">${stop.no}</span>&#160; <span class="name">${stop.name}</span><br/>${stop.doing}<#if stop.grownUp??><span class="adult"><strong>Grown-up:</strong> ${stop.grownUp}</span></#if></td>
    <td class="voice"><@speech text=stop.say/><#if stop.ifFound??><@speech text=stop.ifFound intro=look.primary?then("If not:", "If you find it, say it:")/></#if></td>
  </tr></table>
  </#list>
  <#if page.stopRule><div class="stopline"><strong>Stop rule.</strong> It kicks, pants or shakes? <#if look.primary>Stop. Let it rest. Say the other stops.<#else>Turn it back at once, feet down, pose it, tell the rest.</#if> It costs nothing.</div></#if>
  <#if page?is_last && routine.upright?has_content><p style="margin-top:3mm"><strong>Hot day, or a frightened rabbit?</strong> Show stops ${routine.upright} with all four feet on the mat and tell the rest.</p></#if>
</div>
</#list>
</#list>

<div class="page" id="plan" data-fit="roomy snug" data-fit-height="${f.liveHeight}mm" data-what="the study plan">
  <table class="routinehead" role="presentation"><tr><td><h2>${plan.title}</h2></td><td class="who">${plan.lead}</td></tr></table>
  <p class="small">Each day&#8217;s new cards are one pile. Clip it together and write its number on it. <strong>New</strong> names the pile to learn; <strong>again</strong> the piles to answer once more. On a catch-up day nothing is new: do what you missed.</p>
  <table class="cal">
    <thead><tr><#list plan.weekdays as day><th scope="col">${day}</th></#list></tr></thead>
    <tbody><#list plan.weeks as week><tr><#list week.days as day><td class="${day.kind}">
      <#if day.kind == "outside"><span class="date">${day.date}</span>
      <#elseif day.kind == "show"><span class="date">${day.date}</span><p><strong>Show day</strong></p><div><@marks.rabbit width=15/></div>
      <#else>
      <#if day.kind != "rest"><span class="box">&#160;</span></#if><span class="date">${day.date}</span> <span class="togo">${day.toGo}</span>
      <#if day.kind == "rest"><p>rest</p></#if>
      <#if day.kind == "catchup"><p><strong>catch up</strong></p></#if>
      <#if day.fresh gt 0><p>new <strong>${day.fresh}</strong></p></#if>
      <#if day.again?has_content><p>again ${day.again}</p><#elseif day.kind == "study" && day.fresh == 0><p>piles you missed</p></#if>
      <#if day.practice == "rabbit"><p><@marks.rabbit width=5/> ${day.practised}</p><#elseif day.practice == "toy"><p>soft toy ${day.practised}</p></#if>
      </#if></td></#list></tr></#list></tbody>
  </table>
  <p class="key"><@marks.rabbit width=5/> ten minutes with the rabbit, in cool hours, an adult near; stop if it kicks, pants or shakes. The soft toy comes first; the numbers are stops. ${plan.busiest?cap_first}.<#list plan.notes as note> ${note}</#list></p>
</div>

<div class="page" id="log" data-fit-else="flow" data-fit="roomy snug close tight" data-fit-height="${f.liveHeight}mm" data-what="the practice log">
  <h2 class="plain">Practice log</h2>
  <@section heading="With the rabbit" railLines=2><@list items=lists.withRabbit/></@section>
  <table class="log"><thead><tr><th scope="col" style="width:24mm">Date</th><th scope="col" style="width:20mm">Minutes</th><th scope="col" style="width:34mm">Stops</th><th scope="col">How was the rabbit?</th><th scope="col" style="width:24mm">Adult</th></tr></thead>
  <tbody><#list 1..lists.logRows as row><tr><td>&#160;</td><td>&#160;</td><td>&#160;</td><td>&#160;</td><td>&#160;</td></tr></#list></tbody></table>
  <@section heading="My piles" railLines=1>
  <#assign half = (plan.piles?size / 2)?ceiling>
  <table class="piles" style="width:${f.text}mm" role="presentation"><#list 0..<half as row><tr><#list [row, row + half] as i><#if i < plan.piles?size><td class="n">${plan.piles[i].no}</td><td>${plan.piles[i].codes}</td><#else><td class="n">&#160;</td><td>&#160;</td></#if></#list></tr></#list></table>
  </@section>
  <#if !look.primary>
  <@section heading="After the show" railLines=2 class="last">
  <p class="note">No date to learn for? Use five boxes. A card starts in box 1. Right? It moves one box on. Wrong? It goes back to box 1. Look into box 1 in every session, box 2 in every second, box 3 in every fourth, box 4 in every eighth and box 5 in every sixteenth.</p>
  </@section>
  </#if>
</div>

<div class="page" id="checklist" data-fit-else="flow" data-fit="roomy snug close tight" data-fit-height="${f.liveHeight}mm" data-what="the show-day checklist">
  <h2 class="plain">Show-day checklist</h2>
  <#list lists.checks as check>
  <@section heading=check.heading railLines=2 class="checks"><#list check.items as item><div class="item"><@marks.tick size=look.primary?then(7, 5)/>${item}</div></#list></@section>
  </#list>
  <@cautionbox text="A sick or hurt rabbit stays at home. Never leave a rabbit in a parked car. On a hot day ask an adult whether to travel at all."/>
</div>

<#list routines as routine>
<div class="filler page"><h2 class="plain">My own notes</h2><p>What your leader told you, what your rabbit likes, what to practise next.</p><#list 1..18 as n><div class="writeline">&#160;</div></#list></div>
<@pocketsheet routine=routine no=routine?counter class="page" start="odd"/>
</#list>
</body>
</html>
