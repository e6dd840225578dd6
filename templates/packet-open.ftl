<#-- A member's reading pages in large print or easy read: one column, nothing fitted, pages flow. -->
<#import "marks.ftl" as marks>
<#assign t = look.type>
<#assign f = look.frame>
<#assign u = t.body * t.line>
<#assign cover = {"routine": []}>
<html xmlns="http://www.w3.org/1999/xhtml" lang="en">
<head>
<title><#if name?has_content>Show packet for ${name}<#else>Show packet for any rabbit</#if></title>
<style>
<#include "packet-style.ftl">
<#-- A foot of two lines, for a long name, ends 7 mm or more above the edge. -->
<#if look.set.large>@page { margin-bottom: 28mm; } @page turned { margin-bottom: 50mm; }</#if>
body h1, body h1 * { font-size: 30pt !important; line-height: 1.15 !important; } .packethead h1 { padding: 0 46mm 0 0; }
body h2, body h2 * { font-size: ${[t.body * 1.7, 22]?max}pt !important; line-height: 1.2 !important; } body h3, body h3 * { line-height: 1.25 !important; }
.packethead .for { position: static; } body .packethead { min-height: 27mm; }
p, body .stopline, body .letterbody p { max-width: ${f.live}mm !important; } .gap2 { margin-top: ${u * 0.6}pt; }
body .letterbody, body .letterbody *, body .stopline.grown, body .stopline.grown li, body .facts td.label, body .facts td.value, body .facts td.value .note, body .inside td, body .small, body .cal td, body #letter .sec, body .check { font-size: ${t.body}pt !important; }
body .stopline.grown { width: ${f.live}mm; } body .facts td.label, body .facts.breed td.label { width: ${look.set.large?then(64, 52)}mm; font-weight: normal; } .facts tr { page-break-inside: avoid; }
.facts td { padding: 1.6mm 0 !important; vertical-align: top !important; } .showday .date { font-size: ${[t.body, 22]?max}pt !important; }
.find, .stop, .built { border-top: 0.9pt solid black; padding-top: 2mm; margin-top: 3mm; page-break-inside: avoid; } .stop { border-top-width: 1.6pt; } .showday, .stopline { page-break-inside: avoid; } .sec h3 { page-break-after: avoid; }
.stop h3 { page-break-after: avoid; } .stop .speech, .find .speech { padding: 2mm 4mm; margin-top: 2mm; page-break-inside: avoid; }
.plan { width: ${f.live}mm; table-layout: fixed; -fs-table-paginate: paginate; } .plan th { text-align: left; border-bottom: 1.8pt solid black; padding: 0 2mm 1mm 0; vertical-align: bottom; } .plan td { border-bottom: 0.9pt solid black; padding: 1.5mm 2mm 1.5mm 0; vertical-align: top; } .plan tr { page-break-inside: avoid; } .plan .day { width: ${look.set.large?then(46, 42)}mm; } .plan .fresh { width: ${look.set.large?then(20, 22)}mm; } .plan .again { width: 40mm; } .plan .done { width: 18mm; }
.plan tr.show td { border: 2.4pt solid black; padding-left: 2mm; font-weight: bold; }
body .log { -fs-table-paginate: paginate; } body .log td { height: 13mm; } body .log th { padding-right: 1mm; } body .piles .n { width: 16mm; } .piles tr { page-break-inside: avoid; }
body .checks .item { padding-left: 12mm; } body .stopline { line-height: 1.4 !important; }
.keyword { page-break-inside: avoid; border-top: 0.9pt solid black; padding-top: 1.5mm; margin-top: 1.5mm; }
.write { width: 40mm; } .strip2 { margin-top: 2mm; }
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
<#macro footer><table class="footline"><tr>
  <td class="footmark"><@marks.toes n=look.toes half=5/></td>
  <td class="footname">${foot}</td>
  <td class="footpage"><span class="pageno">&#160;</span></td>
</tr></table></#macro>
<div class="foot"><@footer/></div>
<div class="footstop"><p><strong>Stop rule.</strong> It kicks, pants or shakes? <#if look.primary>Stop. Let it rest. Say the other stops.<#else>Turn it back at once, pose it, tell the rest.</#if> It costs nothing.</p><@footer/></div>
<#include "blocks.ftl">
<#macro list items><ul><#list items as item><li><span class="dot">&#8226;</span>${item}</li></#list></ul></#macro>
<#macro bubble text intro=""><div class="speech"><#if intro?has_content><strong>${intro}</strong> </#if>&#8220;${text}&#8221;</div></#macro>
<#macro facts lines class=""><table class="facts ${class}" style="width:${f.live}mm"><tbody><#list lines as fact><tr><td class="label">${fact.label}</td><td class="value"><#if fact.value??>${fact.value}<#if fact.note??> <span class="note">${fact.note}</span></#if><#else><#nested/>&#160;</#if></td></tr></#list></tbody></table></#macro>

<div id="letter">
  <div class="packethead"><div class="for">Show packet for</div><#if name?has_content><h1>${name}</h1><#else><h1>Any rabbit</h1></#if><div class="sign"><@marks.rabbit width=40/></div></div>
  <#if !name?has_content><table class="facts gap2"><tr><td class="label">Name</td><td class="value">&#160;</td></tr></table></#if>
  <div class="body letterbody gap2"><#list letter.blocks as b><@block b=b/></#list></div>
  <#if letter.grownUp?has_content><div class="stopline grown"><p><strong>A grown-up reads this first.</strong></p><@list items=letter.grownUp/></div></#if>
  <h2 class="plain gap2">The two of you</h2>
  <@facts lines=letter.facts/>
  <div class="showday"><p><strong>Show day</strong></p><p class="date">${letter.showDate}</p><p>${letter.showName}<br/>${letter.toGo}</p></div>
  <#if letter.howToUse?has_content><@section heading="How to use it" railLines=1><@list items=letter.howToUse/></@section></#if>
  <@section heading="In this packet" railLines=1 class="last">
  <table class="inside" style="width:${f.live}mm" role="presentation">
    <#macro inside href><tr><td class="tocpage"><a class="pageof" href="#${href}">&#160;</a></td><td><#nested/></td></tr></#macro>
    <#list rabbits as r><@inside href=r.anchor>My rabbit<#if r.name?has_content>: ${r.name}</#if></@inside></#list>
    <#list routines as r><@inside href=r.anchor>My routine<#if routines?size gt 1>: ${r.rabbit}</#if></@inside></#list>
    <@inside href="plan">My study plan</@inside><@inside href="log">Practice log</@inside><@inside href="checklist">Show-day checklist</@inside><@inside href="pocket-1">Pocket sheet</@inside>
  </table>
  <p>Is something here wrong? Tell your leader, so that it can be printed again.</p>
  </@section>
</div>

<#list rabbits as r>
<#assign whose = r.name?has_content?then(r.name, "this rabbit")>
<div class="page" id="${r.anchor}">
  <h2 class="plain">My rabbit<#if r.name?has_content>: ${r.name}</#if></h2>
  <@facts lines=r.strip class="strip2"/>
  <#if r.pictures?has_content><@section heading="See it"><@figures pictures=r.pictures/></@section></#if>
  <div class="sec"><h3>What the judge should find</h3>
  <#list r.finds as find><div class="find"><p><strong>${find.point}</strong>, stop ${find.stops}</p><p>${find.found}</p><#if find.say??><@bubble text=find.say/></#if></div></#list>
  </div>
</div>
<div class="page">
  <#if r.breed?has_content>
  <h2 class="plain">The breed: ${r.breedName}</h2>
  <@facts lines=r.breed class="breed"><#if look.primary>ask a grown-up<#else>check your breed standard</#if> <span class="write">&#160;</span></@facts>
  <p class="gap2">Rules change. Your breed standard and the rule book of your show come first.</p>
  <#else>
  <h2 class="plain">About ${whose}</h2>
  <p><#if r.name?has_content>A mixed breed has no breed standard. In a showmanship class that is no fault: show how well you know and handle your rabbit.<#else>Ask its keeper, or look it up: body type and pose, ear carriage, fur type, number of show classes, senior weights.</#if></p>
  </#if>
  <#if r.ticks?has_content><@section heading="Say something good" railLines=1><#list r.ticks as tick><p><@marks.tick size=7/> ${tick.sentence}</p></#list></@section></#if>
  <#if r.comments?has_content>
  <div class="sec"><h3>Comments to build</h3>
  <#list r.comments as c><div class="built"><p><strong>${c.part}</strong></p><p>Praise it for: ${c.praise}</p><p>Look out for: ${c.lookFor}</p><p>Draw a ring: ${r.grades?join(", ")}</p></div></#list>
  <p class="gap2">Say part, grade and reason: &#8220;${r.comments[0].start}&#8221;</p></div>
  </#if>
  <#if r.questions?has_content><@section heading="A judge may ask" railLines=1 class="last"><#list r.questions as q><div class="asked"><p><strong>${q.question}</strong><#if q.need?has_content> ${q.need}</#if></p><p class="points"><#list q.points as point>${point}<#sep>; </#sep></#list></p></div></#list></@section></#if>
</div>
</#list>

<#list routines as routine>
<#list routine.pages as page>
<div class="page<#if page.stopRule> turned</#if>"<#if page?is_first> id="${routine.anchor}"</#if>>
  <#if page?is_first><h2 class="plain">My routine<#if routines?size gt 1> with ${routine.rabbit}</#if></h2></#if>
  <#list page.stops as stop>
  <div class="stop">
    <h3>${stop.no}&#160; ${stop.name}</h3>
    <p>${stop.doing}</p>
    <#if stop.grownUp??><p><strong>Grown-up:</strong> ${stop.grownUp}</p></#if>
    <@bubble text=stop.say/>
    <#if stop.ifFound??><@bubble text=stop.ifFound intro=look.primary?then("If not:", "If you find it, say it:")/></#if>
  </div>
  </#list>
  <#if page?is_last && routine.upright?has_content><p class="gap2"><strong>Hot day, or a frightened rabbit?</strong> Show stops ${routine.upright} with all four feet on the mat and tell the rest.</p></#if>
</div>
</#list>
</#list>

<div class="page" id="plan">
  <h2 class="plain">${plan.title}</h2>
  <p>${plan.lead?cap_first}. Each day&#8217;s new cards are one pile. Clip it together and write its number on it. <strong>New</strong> names the pile to learn; <strong>again</strong> the piles to answer once more. On a catch-up day nothing is new: do what you missed.</p>
  <p>Ten minutes with the rabbit, in cool hours, an adult near; stop if it kicks, pants or shakes. The soft toy comes first; the numbers are stops. ${plan.busiest?cap_first}.<#list plan.notes as note> ${note}</#list></p>
  <table class="plan gap2"><thead><tr><th scope="col" class="day">Day</th><th scope="col" class="fresh">New</th><th scope="col" class="again">Again</th><th scope="col">Practise</th><th scope="col" class="done">Done</th></tr></thead>
  <tbody><#list plan.weeks as week><#list week.days as day><#if day.kind != "outside">
    <tr<#if day.kind == "show"> class="show"</#if>><td class="day">${plan.weekdays[day?index]?substring(0, 3)} ${day.date}</td><#if day.kind == "show"><td colspan="4">Show day</td><#elseif day.kind == "rest"><td colspan="4">rest</td><#else><td class="fresh"><#if day.fresh gt 0><strong>${day.fresh}</strong><#else>&#160;</#if></td><td class="again"><#if day.kind == "catchup"><strong>catch up</strong> </#if><#if day.again?has_content>${day.again}<#elseif day.kind == "study" && day.fresh == 0>piles you missed<#else>&#160;</#if></td><td><#if day.practice == "rabbit">rabbit, ${day.practised}<#elseif day.practice == "toy">soft toy, ${day.practised}<#else>&#160;</#if></td><td class="done"><@marks.tick size=7/></td></#if></tr>
  </#if></#list></#list></tbody></table>
</div>

<div class="page" id="log">
  <h2 class="plain">Practice log</h2>
  <@section heading="With the rabbit" railLines=1><@list items=lists.withRabbit/></@section>
  <table class="log"><thead><tr><th scope="col" style="width:26mm">Date</th><th scope="col" style="width:34mm">Minutes</th><th scope="col" style="width:34mm">Stops</th><th scope="col">How was it?</th><th scope="col" style="width:27mm">Adult</th></tr></thead>
  <tbody><#list 1..lists.logRows as row><tr><td>&#160;</td><td>&#160;</td><td>&#160;</td><td>&#160;</td><td>&#160;</td></tr></#list></tbody></table>
  <@section heading="My piles" railLines=1>
  <table class="piles" style="width:${f.live}mm" role="presentation"><#list plan.piles as pile><tr><td class="n">${pile.no}</td><td>${pile.codes}</td></tr></#list></table>
  </@section>
  <#if !look.primary>
  <@section heading="After the show" railLines=1 class="last">
  <p>No date to learn for? Use five boxes. A card starts in box 1. Right? It moves one box on. Wrong? It goes back to box 1. Look into box 1 in every session, box 2 in every second, box 3 in every fourth, box 4 in every eighth and box 5 in every sixteenth.</p>
  </@section>
  </#if>
</div>

<div class="page" id="checklist">
  <h2 class="plain">Show-day checklist</h2>
  <#list lists.checks as check>
  <@section heading=check.heading railLines=1 class="checks"><#list check.items as item><div class="item"><@marks.tick size=7/>${item}</div></#list></@section>
  </#list>
  <@cautionbox text="A sick or hurt rabbit stays at home. Never leave a rabbit in a parked car. On a hot day ask an adult whether to travel at all."/>
</div>

<#list routines as routine>
<div class="page" id="pocket-${routine?counter}">
  <h2 class="plain">Pocket sheet<#if routine.rabbit?has_content>: ${routine.rabbit}</#if></h2>
  <#list routine.pocket as half><#list half.panels as panel><#list panel.stops as stop><p class="keyword"><strong>${stop.no}&#160; ${stop.name}</strong><br/>${stop.words}</p></#list></#list></#list>
  <div class="stopline"><p><strong>If you get stuck:</strong> Breathe. Put a hand on the rabbit. Say: &#8220;May I go back to that stop?&#8221; Did not hear? &#8220;Could you ask that again, please?&#8221;</p><p><strong>Kicks, pants, shakes?</strong> <#if look.primary>Stop. Let it rest.<#else>Turn it back at once. Tell the rest.</#if></p></div>
</div>
</#list>
</body>
</html>
