<#-- The two faces of a card. The data model's face tells where things stand, in mm, and its sizes. -->
<#import "marks.ftl" as marks>
<#assign h = face.head>
<#assign t = face.text>
<#assign sizes = t.sizes?join(" ")>

<#macro head card answer>
<div class="code">${card.code}</div><div class="topic"<#if card.code?length gt 5> style="left:${h.longLeft}mm;width:${h.longWidth}mm"</#if>><#if h.topics>${card.topic}<#elseif answer>answer<#if card.core> <strong>core</strong></#if><#else>question</#if></div><div class="mark"><@marks.toes n=card.toes half=h.half/></div><div class="rule<#if answer> answer</#if>">&#160;</div>
</#macro>

<#macro words card top height style="" half="">
      <table class="hold" style="top:${top}mm${style}"><tr><td style="height:${height}mm"><div class="fit${half} question" data-fit="${sizes}" data-fit-height="${height}mm" data-what="the question of card ${card.code}">${card.question}</div></td></tr></table>
</#macro>

<#macro picture card left top width height>
      <div class="picture" style="left:${left}mm;top:${top}mm;width:${width}mm;height:${height}mm"><img src="hutch:${card.picture.file}" alt="${card.picture.alt}" style="height:${card.picture.height}mm"/></div>
</#macro>

<#macro front card>
    <@head card=card answer=false/>
    <#if !card.picture??>
      <@words card=card top=t.top height=t.height/>
    <#elseif card.picture.beside>
      <#local b = face.beside>
      <@picture card=card left=b.left top=b.top + (b.height - card.picture.height) / 2 width=b.width height=b.height/>
      <@words card=card top=t.top height=t.height style=";left:${b.wordsLeft}mm;width:${b.wordsWidth}mm" half=" half"/>
    <#elseif face.over.words gt 0>
      <@picture card=card left=face.inset top=face.over.top width=face.width height=face.over.height + 1/>
      <@words card=card top=face.over.words height=face.over.wordsHeight/>
    <#else>
      <#local high = card.picture.height>
      <@picture card=card left=face.inset top=face.over.top width=face.width height=high/>
      <@words card=card top=face.over.top + 0.6 + high height=t.top + t.height - 0.4 - face.over.top - 0.6 - high/>
    </#if>
<@foot card=card answer=false/>
</#macro>

<#macro back card>
    <@head card=card answer=true/>
    <table class="hold" style="top:${t.top}mm"><tr><td style="height:${t.height}mm"><div class="fit" data-fit="${sizes}" data-fit-height="${t.height}mm" data-what="the answer of card ${card.code}">${card.answer}</div></td></tr></table>
<@foot card=card answer=true/>
</#macro>

<#-- A small card has none: its head says which side it is. -->
<#macro foot card answer>
    <#if face.foot.size gt 0>
    <div class="foot" style="top:${face.foot.top}mm"><#if answer><span>answer</span><#if card.core><span class="mid"><strong>core</strong></span></#if><#else><span>question</span><span class="mid">initials</span><span class="initials">&#160;</span></#if><span class="right">${answer?then(card.levels, card.level)}</span></div>
    </#if>
</#macro>
