<#import "marks.ftl" as marks>
<#assign t = look.type>
<#assign f = look.frame>
<#assign u = t.body * t.line>
<html xmlns="http://www.w3.org/1999/xhtml" lang="en">
<head>
<title>${name?has_content?then("Show booklet for " + name, "Show booklet for any rabbit")}</title>
<style>
<#include "half-style.ftl">
<#include "packet-booklet-style.ftl">
</style>
<bookmarks>
  <bookmark name="Letter" href="#letter"/>
  <#list rabbits as r><bookmark name="My rabbit<#if r.name?has_content>: ${r.name}</#if>" href="#${r.anchor}"/></#list>
  <#list routines as r><bookmark name="My routine<#if routines?size gt 1>: ${r.rabbit}</#if>" href="#${r.anchor}"/></#list>
  <bookmark name="Study plan" href="#plan"/>
  <bookmark name="Practice log" href="#log"/>
  <bookmark name="Show-day checklist" href="#checklist"/>
</bookmarks>
</head>
<body>
<div class="foot"><table class="footline"><tr>
  <td class="footmark"><@marks.toes n=look.toes half=5/></td>
  <td class="footname">${foot}</td>
  <td class="footpage"><span class="pageno">&#160;</span></td>
</tr></table></div>
<#include "half-parts.ftl">

<#macro value fact><#if fact.value??>${fact.value}<#if fact.note??> <span class="note">${fact.note}</span></#if><#else>&#160;</#if></#macro>
<#macro use><#if letter.howToUse?has_content><@sec heading="How to use it"><@bullets items=letter.howToUse/></@sec></#if><p class="note gap">Is something here wrong? Tell your leader, so that it can be printed again.</p></#macro>
<#macro bullets items><ul><#list items as item><li><span class="dot">&#8226;</span>${item}</li></#list></ul></#macro>

<div class="front" id="letter" data-fit-else="flow" data-fit="roomy snug close tight" data-fit-height="${f.liveHeight}mm" data-place="${letter.place}" data-what="the first page of the booklet">
  <p class="for">Show booklet for</p>
  <h1>${name?has_content?then(name, "Any rabbit")}</h1>
  <div class="frontsign"><@marks.rabbit width=34/></div>
  <div class="showday"><p><strong>Show day</strong></p><p class="date">${letter.showDate}</p><p>${letter.showName}<br/>${letter.toGo}</p></div>
  <table class="facts"><tbody><#if !name?has_content><tr><td class="label">Name</td><td class="value">&#160;</td></tr></#if><#list letter.facts as fact><tr><td class="label">${fact.label}</td><td class="value"><@value fact=fact/></td></tr></#list></tbody></table>
</div>

<div class="page" data-fit-else="flow" data-fit="roomy snug close tight" data-fit-height="${f.liveHeight}mm" data-place="${letter.place}" data-what="the leader's letter">
  <h2>From your leader</h2>
  <div class="letterbody"><#list letter.blocks as b><@block b=b/></#list></div>
  <#if !letter.grownUp?has_content><@use/></#if>
</div>
<#if letter.grownUp?has_content>
<div class="page" data-fit-else="flow" data-fit="roomy snug close tight" data-fit-height="${f.liveHeight}mm" data-what="the page for the grown-up">
  <h2>Before you start</h2>
  <div class="stoprule grown"><p><strong>A grown-up reads this first.</strong></p><@bullets items=letter.grownUp/></div>
  <@use/>
</div>
</#if>

<#list rabbits as r>
<div class="page" id="${r.anchor}" data-fit-else="flow" data-fit="roomy snug" data-fit-height="${f.liveHeight}mm" data-what="the booklet page on ${r.name?has_content?then(r.name, 'any rabbit')}">
  <h2>My rabbit<#if r.name?has_content>: ${r.name}</#if></h2>
  <table class="facts strip"><tbody><#list r.strip as fact><tr><td class="label">${fact.label}</td><td class="value"><@value fact=fact/></td></tr></#list></tbody></table>
  <#if r.pictures?has_content><div class="sec see"><table class="figs"><tr><#list r.pictures as picture><td><@figure picture=picture/><div class="cap">${picture.caption}</div></td></#list></tr></table></div></#if>
  <div class="sec flowing"><h3>What the judge should find</h3>
  <#list r.finds as find><div class="find"><p><span class="no">${find.stops}</span> <strong>${find.point}</strong>: ${find.found}</p><#if find.say??><p class="told"><em>&#8220;${find.say}&#8221;</em></p></#if></div></#list></div>
</div>
<div class="page">
  <#if r.breed?has_content>
  <h2>The breed: ${r.breedName}</h2>
  <table class="facts breed"><tbody><#list r.breed as fact><tr><td class="label">${fact.label}</td><td class="value"><#if fact.value??>${fact.value}<#else><span class="check"><#if look.primary>ask a grown-up<#else>check your breed standard</#if></span> <span class="write">&#160;</span></#if></td></tr></#list></tbody></table>
  <p class="note gap">Rules change. Your breed standard and the rule book of your show come first.</p>
  <#else>
  <h2>About ${r.name?has_content?then(r.name, 'this rabbit')}</h2>
  <p><#if r.name?has_content>A mixed breed has no breed standard. In a showmanship class that is no fault: show how well you know and handle your rabbit.<#else>Ask its keeper, or look it up: body type and pose, ear carriage, fur type, number of show classes, senior weights.</#if></p>
  </#if>
  <#if r.ticks?has_content><@sec heading="Say something good"><#list r.ticks as tick><p class="ticked"><@marks.tick size=6/> ${tick.sentence}</p></#list></@sec></#if>
  <#if r.comments?has_content>
  <div class="sec flowing"><h3>Comments to build</h3>
  <#list r.comments as c><div class="find"><p><strong>${c.part}</strong>: ${c.praise}</p><p class="told">Look out for: ${c.lookFor}</p></div></#list>
  <p class="gap">Say part, grade (${r.grades?join(", ")}) and reason: <em>&#8220;${r.comments[0].start}&#8221;</em></p></div>
  </#if>
  <#if r.questions?has_content>
  <div class="sec flowing"><h3>A judge may ask</h3><p class="note">Cover the points, answer aloud, then look. Any true words will do.</p>
  <#list r.questions as q><div class="find"><p><strong>${q.question}</strong><#if q.need?has_content> <span class="note">${q.need}</span></#if></p><p class="told"><#list q.points as point>${point}<#sep>; </#sep></#list></p></div></#list></div>
  </#if>
</div>
</#list>

<#list routines as routine>
<#list routine.pages as page>
<div class="page"<#if page?is_first> id="${routine.anchor}"</#if> data-fit="roomy snug close tight" data-fit-height="${f.liveHeight}mm" data-place="${page.stops[0].place}" data-what="the booklet page with ${page.span} of ${name?has_content?then(name, 'any rabbit')}">
  <h2 class="routinehead">My routine<#if routines?size gt 1> with ${routine.rabbit}</#if></h2><p class="who">${page.span}</p>
  <#list page.stops as stop>
  <div class="stoprow"><p><span class="no">${stop.no}</span>&#160; <strong>${stop.name}</strong>. ${stop.doing}</p><#if stop.grownUp??><p class="adult"><strong>Grown-up:</strong> ${stop.grownUp}</p></#if><@speech text=stop.say/><#if stop.ifFound??><@speech text=stop.ifFound intro=look.primary?then("If not:", "If you find it, say it:")/></#if></div>
  </#list>
  <#if page.stopRule><div class="stoprule"><strong>Stop rule.</strong> It kicks, pants or shakes? <#if look.primary>Stop. Let it rest. Say the other stops.<#else>Turn it back at once, feet down, pose it, tell the rest.</#if> It costs nothing.</div></#if>
  <#if page?is_last && routine.upright?has_content><p class="gap"><strong>Hot day, or a frightened rabbit?</strong> Show stops ${routine.upright} with all four feet on the mat and tell the rest.</p></#if>
</div>
</#list>
</#list>

<div class="page" id="plan">
  <h2>${plan.title}</h2>
  <p>${plan.lead?cap_first}. Each day&#8217;s new cards are one pile. Clip it together and write its number on it. On a catch-up day nothing is new: do what you missed.</p>
  <table class="data days">
    <thead><tr><th scope="col" class="done">Done</th><th scope="col" class="day">Day</th><th scope="col" class="togo">To go</th><th scope="col" class="new">New</th><th scope="col">Again</th><th scope="col" class="rabbit">With the rabbit</th></tr></thead>
    <tbody><#list plan.weeks as week><#list week.days as day><#if day.kind != "outside"><tr<#if day?is_first> class="first"</#if>>
      <td class="done"><#if day.kind == "study" || day.kind == "catchup"><@marks.tick size=5/><#else>&#160;</#if></td>
      <td class="day">${plan.weekdays[day?index]?substring(0, 3)} <strong>${day.date}</strong></td><td class="togo">${day.toGo?replace(" to go", "")}</td>
      <#if day.kind == "show"><td colspan="3"><strong>Show day</strong></td>
      <#elseif day.kind == "rest"><td colspan="3">rest</td>
      <#else><td class="new"><#if day.fresh gt 0><strong>${day.fresh}</strong><#else>&#160;</#if></td><td><#if day.kind == "catchup"><strong>catch up</strong> </#if><#if day.again?has_content>${day.again}<#elseif day.kind == "study" && day.fresh == 0>piles you missed<#else>&#160;</#if></td><td class="rabbit"><#if day.practice == "rabbit">rabbit ${day.practised}<#elseif day.practice == "toy">soft toy ${day.practised}<#else>&#160;</#if></td></#if>
    </tr></#if></#list></#list></tbody>
  </table>
  <p class="gap">Ten minutes with the rabbit, in cool hours, an adult near; stop if it kicks, pants or shakes. The soft toy comes first; the numbers are stops. ${plan.busiest?cap_first}.<#list plan.notes as note> ${note}</#list></p>
  <div class="sec flowing"><h3>My piles</h3><table class="piles"><tbody><#list plan.piles as pile><tr><td class="n">${pile.no}</td><td>${pile.codes}</td></tr></#list></tbody></table></div>
</div>

<div class="page" id="log" data-fit-else="flow" data-fit="roomy snug close tight" data-fit-height="${f.liveHeight}mm" data-what="the practice log of the booklet">
  <h2>Practice log</h2>
  <@sec heading="With the rabbit"><@bullets items=lists.withRabbit/></@sec>
  <table class="log"><thead><tr><th scope="col" style="width:20mm">Date</th><th scope="col" style="width:18mm">Minutes</th><th scope="col" style="width:22mm">Stops</th><th scope="col">How was the rabbit?</th><th scope="col" style="width:18mm">Adult</th></tr></thead>
  <tbody><#list 1..lists.logRows as row><tr><td>&#160;</td><td>&#160;</td><td>&#160;</td><td>&#160;</td><td>&#160;</td></tr></#list></tbody></table>
  <#if !look.primary>
  <@sec heading="After the show"><p class="note">No date to learn for? Use five boxes. A card starts in box 1. Right? It moves one box on. Wrong? It goes back to box 1. Look into box 1 in every session, box 2 in every second, box 3 in every fourth, box 4 in every eighth and box 5 in every sixteenth.</p></@sec>
  </#if>
</div>

<div class="page" id="checklist" data-fit-else="flow" data-fit="roomy snug close tight" data-fit-height="${f.liveHeight}mm" data-what="the show-day checklist of the booklet">
  <h2>Show-day checklist</h2>
  <#list lists.checks as check><@sec heading=check.heading><#list check.items as item><div class="item"><@marks.tick size=look.primary?then(7, 5)/>${item}</div></#list></@sec></#list>
  <@caution text="A sick or hurt rabbit stays at home. Never leave a rabbit in a parked car. On a hot day ask an adult whether to travel at all."/>
</div>
</body>
</html>
