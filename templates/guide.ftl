<#import "marks.ftl" as marks>
<#assign t = look.type>
<#assign f = look.frame>
<#assign u = t.body * t.line>
<#-- An open page is never squeezed: it flows. -->
<#assign tries = look.set.open?then("roomy", "roomy snug close tight")>

<html xmlns="http://www.w3.org/1999/xhtml" lang="en">
<head>
<title>${look.level} study guide</title>
<style>
<#include "guide-style.ftl">
</style>
<bookmarks>
  <bookmark name="Start here" href="#how-to-use">
    <bookmark name="How to use this guide" href="#how-to-use"/>
    <bookmark name="What is inside" href="#contents"/>
    <bookmark name="Safe rabbit, safe you" href="#safety"/>
    <bookmark name="The routine on one page" href="#routine"/>
  </bookmark>
  <#list chapters as chapter>
  <#if !chapter?is_first>
  <bookmark name="${chapter.title}" href="#${chapter.entries[0].anchor}">
    <#list chapter.entries as entry>
    <bookmark name="<#if entry.no gt 0>${entry.no} </#if>${entry.title}" href="#${entry.anchor}"/>
    </#list>
  </bookmark>
  </#if>
  </#list>
</bookmarks>
</head>
<body>
<div class="foot"><table class="footline"><tr>
  <td class="footmark"><@marks.toes n=look.toes half=look.set.large?then(8, 5)/></td>
  <td class="footname">${look.level} study guide${look.set.title}</td>
  <td class="footpage"><span class="pageno">&#160;</span></td>
</tr></table></div>
<#if look.set.open>
<#-- Where the rabbit is on its back and a stop runs over pages, the stop rule stands at the foot of each. -->
<div class="footstop"><p><strong>Stop rule.</strong> It kicks, pants or shakes? <#if look.primary>Stop. Let it rest. Say the other stops.<#else>Turn it back at once, pose it, tell the rest.</#if> It costs nothing.</p><table class="footline"><tr>
  <td class="footmark"><@marks.toes n=look.toes half=look.set.large?then(8, 5)/></td>
  <td class="footname">${look.level} study guide${look.set.title}</td>
  <td class="footpage"><span class="pageno">&#160;</span></td>
</tr></table></div>
</#if>

<div class="cover">
  <h1>${look.level}</h1>
  <div class="covertop"><span class="brand">Hutchleaf</span><span class="series">Study guides for rabbit showmanship</span></div>
  <div class="covertoes"><@marks.toes n=look.toes half=17/></div>
  <p class="coversub">Show your rabbit,<br/>stop by stop</p>
  <p class="coverlead">What to do with your hands, what to look for, and what to say, from the first step to the judge&#8217;s last question.</p>
  <div class="coverrabbit"><@marks.rabbit width=124/></div>
  <div class="coverhops">
    <#assign open = []>
    <#list stops as stop><#assign open = open + [{"no": stop.no, "done": false, "here": false}]></#list>
    <@marks.hopline hops=open width=f.live/>
    <div class="coverends"><span class="from">${stops[0].name}</span><span class="count">${stops?size} stops</span><span class="to">${stops[stops?size - 1].name}</span></div>
  </div>
  <div class="belongs"><div class="label">This guide belongs to</div><div class="line">&#160;</div></div>
  <div class="belongs second"><div class="label">and this rabbit</div><div class="line">&#160;</div></div>
  <div class="coverfoot"><span class="club">${cover.club}</span><span class="ages"><#if cover.belongsTo?has_content>${cover.belongsTo}; check your club&#8217;s own rule</#if></span></div>
</div>

<#include "blocks.ftl">

<div class="page" id="how-to-use" data-fit="${tries}"<#if look.set.open> data-fit-else="flow"</#if> data-fit-height="${f.liveHeight}mm" data-what="the page that tells how to use the guide">
  <h2 class="plain">How to use this guide</h2>
  <@section heading=look.primary?then("One stop, one page", "One stop, two pages") railLines=2>
    <#if look.primary>
    <p>Each page shows one stop. Do it with a grown-up. Then say the words.</p>
    <#else>
    <p>The left page is for your <strong>hands</strong>: what to hold, what to move, in what order. The right page is for your <strong>voice</strong>: what to look for and the words to say.</p>
    </#if>
    <@marks.hopline hops=stops[2].hops width=f.text/>
    <p class="note">The hop line tells you where you are: behind you black, ahead of you open.</p>
  </@section>
  <@section heading="A good half hour" railLines=2>
    <ol>
      <li><span class="num">1</span>Read one stop. Rest there.</li>
      <li><span class="num">2</span>Do it with a soft toy, slowly, three times.</li>
      <li><span class="num">3</span>Then ten minutes with your rabbit<#if look.primary> and a grown-up</#if>. Say the words.</li>
      <li><span class="num">4</span><#if look.primary>Put your rabbit back with a kind word.<#else>Tick the boxes you have earned. Put your rabbit back with a kind word.</#if></li>
    </ol>
  </@section>
  <@section heading="Marks you will meet" railLines=2>
    <table class="legend">
      <tr><td class="sign"><@marks.toes n=look.toes half=8/></td><td>Toe marks: count the black toes. They tell the youngest level that learns this.</td></tr>
      <tr><td class="sign"><span class="saysign">&#8220;Say it&#8221;</span></td><td>Words to say aloud. Use your own if they are true.</td></tr>
      <tr><td class="sign"><span class="cautionsign"><@marks.warning size=5/></span></td><td>Caution: read it before you try.</td></tr>
      <tr><td class="sign"><span class="blank">(its name)</span></td><td>A line to fill: your rabbit, your name, your club.</td></tr>
    </table>
  </@section>
  <@section heading="The toe marks" railLines=1 class="last">
    <table class="levels"><tr><#list cover.marks as mark><td><@marks.toes n=mark.toes half=8/><br/>${mark.level}</td></#list></tr></table>
    <p>Four in all: a hind foot has four toes.</p>
  </@section>
</div>

<div class="page contents" id="contents" data-fit="${look.set.open?then("roomy", "roomy snug close tight least")}" data-fit-height="${f.liveHeight}mm" data-fit-else="flow" data-what="the list of contents">
  <h2 class="plain">What is inside</h2>
  <#list chapters as chapter>
  <@section heading=chapter.title railLines=0 level=3 class="tight">
    <#if chapter.entries?size gt 3 && !look.set.open>
    <#assign half = (chapter.entries?size / 2)?ceiling>
    <table class="toc two">
      <#list 0..<half as row><tr>
        <#list [row, row + half] as index>
        <#if index < chapter.entries?size>
        <#assign entry = chapter.entries[index]>
        <#if chapter.stops><td class="tocno">${entry.no}</td></#if><td class="toctitle"><a href="#${entry.anchor}">${entry.title}</a></td><td class="tocpage"><a class="pageof" href="#${entry.anchor}">&#160;</a></td>
        <#else><#if chapter.stops><td class="tocno">&#160;</td></#if><td>&#160;</td><td>&#160;</td></#if>
        </#list>
      </tr></#list>
    </table>
    <#else>
    <table class="toc">
      <#list chapter.entries as entry><tr><#if chapter.stops><td class="tocno">${entry.no}</td></#if><td class="toctitle"><a href="#${entry.anchor}">${entry.title}</a></td><td class="tocpage"><a class="pageof" href="#${entry.anchor}">&#160;</a></td></tr></#list>
    </table>
    </#if>
  </@section>
  </#list>
</div>

<div class="page" id="safety" data-fit="${tries}"<#if look.set.open> data-fit-else="flow"</#if> data-fit-height="${f.liveHeight}mm"<#if cover.safety??> data-place="${cover.safety.place}"</#if> data-what="the page on safety">
  <#if cover.safety??>
  <#assign safety = cover.safety>
  <h2 class="plain" id="${safety.anchor}">${safety.title}</h2>
  <#if safety.lead??><p class="lead">${safety.lead}</p></#if>
  <#list safety.sections as s><@sectionview s=s/></#list>
  <#else>
  <h2 class="plain">Safe rabbit, safe you</h2>
  </#if>
</div>

<div class="page routine<#if look.set.open> turned</#if>" id="routine">
  <table class="routinehead"><tr><td><h2 class="plain">The routine on one page</h2></td><td class="who"><@marks.toes n=look.toes half=7/> <strong>${look.level}</strong></td></tr></table>
  <p class="note">Hang it by the table. Cover the last column and see if you can say it.</p>
  <table class="data routinetable">
    <thead><tr><#if !look.set.open><th class="bandcell" scope="col">&#160;</th></#if><th class="no" scope="col">&#160;</th><th class="stop" scope="col">Stop</th><th class="do" scope="col">Do</th><th class="say" scope="col">Say</th></tr></thead>
    <tbody>
    <#list cover.routine as row>
    <#if row.first && look.set.open><tr class="side"><th colspan="4" scope="rowgroup">${row.back?then("On its back", "Upright")}</th></tr></#if>
    <tr class="${row.first?then('first', '')}">
      <#if row.first && !look.set.open><td class="bandcell" rowspan="${row.band}"><div class="band" style="height:${row.band * (cover.routine?size gt 10)?then(12.9, 22) - 1.4}mm"><div class="bandword" style="top:${row.band * (cover.routine?size gt 10)?then(12.9, 22) / 2 - 4}mm">${row.back?then((row.band gt 3)?then("ON ITS BACK", "BACK"), "UPRIGHT")}</div></div></td></#if>
      <td class="no">${row.no}</td><td class="stop">${row.name}</td><td class="do">${row.doing}</td><td class="say"><em>${row.saying}</em></td>
    </tr>
    </#list>
    </tbody>
  </table>
  <p class="note"><strong>Stop rule.</strong> It kicks, pants or shakes? <#if look.primary>Stop. Let it rest. Say the other stops.<#else>Turn it back at once, pose it, tell the rest.</#if> It costs nothing.</p>
</div>

<div class="filler page"><h2 class="plain">Notes</h2><p class="lead">Room for your own words: what your leader told you, what your rabbit likes, what to practise next.</p><#list 1..18 as n><div class="writeline">&#160;</div></#list></div>

<#function turned stop><#return (look.set.open && stop.no gte 5 && stop.no lte 13)?then(" turned", "")></#function>

<#macro stophead stop>
<@marks.hopline hops=stop.hops width=f.live/>
</#macro>

<#macro seeit pictures>
<#if pictures?size == 1 && (pictures[0].labelled?? || pictures[0].width gt f.text)>
<div class="sec"><div class="rail"><h3>See it</h3></div><div class="body bare">&#160;</div><div class="across whole"><@figures pictures=pictures/></div></div>
<#elseif pictures?has_content>
<@section heading="See it"><@figures pictures=pictures/></@section>
</#if>
</#macro>

<#macro steplist steps>
<ol><#list steps as step><li><span class="num">${step?counter}</span>${step}</li></#list></ol>
</#macro>

<#list stops as stop>
<#if look.primary>
<div class="leaf${turned(stop)}" id="${stop.anchor}" data-fit="${tries}"<#if look.set.open> data-fit-else="flow"</#if> data-fit-height="${f.liveHeight}mm" data-place="${stop.place}" data-what="the page of stop ${stop.no} for ${look.word}">
  <@stophead stop=stop/>
  <div class="stoptitle"><div class="numeral">${stop.no}</div><h2>${stop.name}</h2><p class="lead">${stop.lead}</p></div>
  <@seeit pictures=stop.pictures/>
  <@section heading="With your hands" railLines=2><@steplist steps=stop.steps/></@section>
  <#list stop.more as s><@sectionview s=s/></#list>
  <#if stop.spoken.lookFor??><@section heading="Look for"><@table data=stop.spoken.lookFor/></@section></#if>
  <@section heading="What to say" railLines=1 class="last"><@speech text=stop.spoken.sayIt/><#if stop.spoken.ifFound??><@speech text=stop.spoken.ifFound intro="If not:"/></#if></@section>
  <@cautionbox text=stop.caution/>
</div>
<#else>
<div class="leaf${turned(stop)}" id="${stop.anchor}" <#if stop?is_first && !look.set.open>data-start="even" </#if>data-fit="${tries}"<#if look.set.open> data-fit-else="flow"</#if> data-fit-height="${f.liveHeight}mm" data-place="${stop.place}" data-what="the left page of stop ${stop.no} for ${look.word}">
  <@stophead stop=stop/>
  <div class="stoptitle"><div class="numeral">${stop.no}</div><h2>${stop.name}</h2><p class="lead">${stop.lead}</p></div>
  <@seeit pictures=stop.pictures/>
  <@section heading="With your hands" railLines=2><@steplist steps=stop.steps/></@section>
  <#list stop.more as s><@sectionview s=s/></#list>
  <@cautionbox text=stop.caution/>
</div>
<div class="leaf${turned(stop)}" id="${stop.anchor}-say" data-fit="${tries}"<#if look.set.open> data-fit-else="flow"</#if> data-fit-height="${f.liveHeight}mm" data-place="${stop.place}" data-what="the right page of stop ${stop.no} for ${look.word}">
  <@stophead stop=stop/>
  <div class="saytitle">Look, then say it</div>
  <#if stop.spoken.lookFor??>
  <div class="sec"><div class="rail"><h3>What you are looking for</h3><p class="note">In a breed class what follows varies: check your rule book.<#if stop.spoken.starred><br/>*Some breeds differ. Read your breed&#8217;s standard.</#if></p></div><div class="body tall"><@table data=stop.spoken.lookFor/></div></div>
  </#if>
  <div class="sec"><div class="rail"><h3>What to say</h3><p class="note">Look up at the judge when you say it.</p></div><div class="body"><@speech text=stop.spoken.sayIt/><#if stop.spoken.ifFound??><@speech text=stop.spoken.ifFound intro="If you find it, say it:"/></#if></div></div>
  <#if stop.scored??>
  <#assign scored = stop.scored>
  <div class="sec"><div class="rail"><h3>What the judge scores</h3><p class="note">Block ${scored.letter}: ${scored.with}.</p></div><div class="body tall">
    <table class="pips"><tr><td class="hands"><strong>Hands</strong>, ${scored.hands} points<br/><#list 1..scored.hands as n><span class="pip">&#160;</span></#list></td><td class="voice"><strong>Voice</strong>, ${scored.voice} points<br/><#list 1..scored.voice as n><span class="pip">&#160;</span></#list></td></tr></table>
    <p class="note">The judge looks for: ${scored.lookingFor}.</p>
  </div></div>
  </#if>
  <#if stop.spoken.oftenMissed??><@section heading="Most often missed" railLines=2><p>${stop.spoken.oftenMissed}</p></@section></#if>
  <#if stop.spoken.asked?has_content><@section heading="A judge may ask" railLines=2><#list stop.spoken.asked as question><p>${question}</p></#list></@section></#if>
  <@section heading="Tick when you can" railLines=2 class="last ticks"><p><@marks.tick size=4.6/> do it without help</p><p><@marks.tick size=4.6/> say it with the page covered</p><p><@marks.tick size=4.6/> do it and say it at the same time</p></@section>
</div>
</#if>
</#list>

<#list topics as topic>
<div class="topic<#if topic.firstOfSubject> subject</#if>" id="${topic.anchor}" data-fit="${tries}" data-fit-else="flow" data-fit-height="${f.liveHeight}mm" data-place="${topic.place}">
  <div class="topichead"><div class="topicmark"><@marks.toes n=look.toes half=8/><p class="note">${topic.label}</p></div><h2>${topic.title}</h2><#if topic.lead??><p class="lead">${topic.lead}</p></#if></div>
  <#list topic.sections as s><@sectionview s=s/></#list>
  <#if topic.words?has_content>
  <@section heading="Words to know" railLines=2><#list topic.words as word><div class="word" style="min-height:${word.lines * u}pt"><strong>${word.term}</strong><span>${word.meaning}</span></div></#list></@section>
  </#if>
  <#if topic.asked?has_content>
  <@section heading="A judge may ask" railLines=2><#list topic.asked as question><p>${question}</p></#list></@section>
  </#if>
</div>
</#list>

<div class="page" id="asked">
  <h2 class="plain">What a judge may ask</h2>
  <p class="note">Cover the points and answer aloud. Any true words will do.</p>
  <#list back.asked as group>
  <div class="sec"><div class="rail"><h3>${group.title}</h3><p class="note">page <a class="pageof" href="#${group.anchor}">&#160;</a></p></div><div class="body tall">
    <#list group.questions as q><div class="asked"><p><strong>${q.question}</strong><#if q.need?has_content> <span class="note">${q.need}</span></#if></p><#if look.primary><ul><#list q.points as point><li><span class="dot">&#8226;</span>${point}</li></#list></ul><#else><p class="points"><#list q.points as point>${point}<#sep>; </#sep></#list></p></#if></div></#list>
  </div></div>
  </#list>
</div>

<#assign test = back.test>
<div class="page" id="self-test">
  <h2 class="plain">Self-test</h2>
  <p class="note">Use a pencil. Then go back to each page you missed. The answers: page <a class="pageof" href="#answers">&#160;</a></p>
  <#if test.ticks?has_content>
  <div class="sec long"><div class="rail"><h3>Tick one</h3><p class="note">1 point each</p></div><div class="body">
    <#list test.ticks as item><div class="item"><span class="num">${item.no}</span><p>${item.question}</p><table class="choices"><tr><#list item.choices as choice><td><@marks.tick size=4.6/> ${choice}</td></#list></tr></table></div></#list>
  </div></div>
  </#if>
  <#if test.gaps?has_content>
  <div class="sec"><div class="rail"><h3>Finish the sentence</h3><p class="note">1 point each</p></div><div class="body tall">
    <#list test.gaps as item><div class="item"><span class="num">${item.no}</span><p>${item.question}</p></div></#list>
  </div></div>
  </#if>
  <#if test.aloud?has_content>
  <div class="sec"><div class="rail"><h3>Say it out loud</h3><p class="note">1 point each tick</p></div><div class="body tall">
    <#list test.aloud as item><div class="item"><span class="num">${item.no}</span><p>${item.question}</p><#list item.points as point><p class="point"><@marks.tick size=4.6/> ${point}</p></#list></div></#list>
  </div></div>
  </#if>
  <@section heading="My score" class="last"><table class="score"><tr><td class="scorebox">&#160;</td><td>of ${test.points}</td><td class="advice"><#if look.primary>Well done. Show a grown-up.<#else>Nearly all correct: <#if look.toes == 4>teach a younger member<#else>try the cards one level up</#if>.<br/>Half or less: pick two stops and practise them this week.</#if></td></tr></table></@section>
</div>

<div class="page" id="answers">
  <h2 class="plain">Answers</h2>
  <p class="note">Mark your own page. A wrong answer tells you which page to read again.</p>
  <table class="data wide key">
    <thead><tr><th scope="col">No.</th><th scope="col">Answer</th><th scope="col">Why</th><th scope="col">Page</th></tr></thead>
    <tbody><#list test.key as row><tr><td class="num">${row.no}</td><td class="strong">${row.answer}</td><td>${row.why}</td><td class="tocpage"><a class="pageof" href="#${row.anchor}">&#160;</a></td></tr></#list></tbody>
  </table>
</div>

<div class="page" id="words">
  <h2 class="plain">Words to know, A to Z</h2>
  <div class="glossary"><#list back.words as word><div class="word" style="min-height:${word.lines * u}pt"><strong>${word.term}</strong><span>${word.meaning}</span></div></#list></div>
</div>

<#if back.sources?has_content>
<div class="page" id="sources">
  <h2 class="plain">Where the facts come from</h2>
  <p class="note">Figures were read in these places. Rules change: your own rule book and a licensed veterinarian come first.</p>
  <ul class="sources"><#list back.sources as source><li><span class="dot">&#8226;</span>${source.text}</li></#list></ul>
</div>
</#if>
</body>
</html>
