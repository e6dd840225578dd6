<#-- The parts of a text: sections, cautions, tables, figures, speech. Included where look, t, f and u are set. -->
<#macro section heading railLines=1 class="" level=3>
<div class="sec ${class}" style="min-height:${(railLines + 0.45) * u}pt">
  <div class="rail"><h${level}>${heading}</h${level}></div>
  <div class="body"><#nested/></div>
</div>
</#macro>

<#macro cautionbox text>
<div class="caution"><div class="label"><@marks.warning size=6/><span>Caution</span></div><div class="words">${text}</div></div>
</#macro>

<#macro table data class="">
<table class="data ${class}">
  <thead><tr><#list data.head as cell><th scope="col">${cell}</th></#list></tr></thead>
  <tbody><#list data.rows as row><tr><#list row as cell><td<#if cell?index == data.strong> class="strong"</#if>>${cell}</td></#list></tr></#list></tbody>
</table>
</#macro>

<#-- A figure in its frame: high enough to be seen, low enough for the page that holds it. -->
<#macro figure picture>
<div class="frame" style="width:${picture.width}mm"><img class="h${picture.size.most}f${picture.size.floor}" src="hutch:${picture.file}" alt="${picture.alt}"/></div>
</#macro>

<#macro figures pictures>
<#if pictures?size == 1 && pictures[0].labelled??>
<@marks.labelled l=pictures[0].labelled alt=pictures[0].alt size=t.note/>
<div class="cap">${pictures[0].caption}</div>
<#elseif pictures?size == 1 && pictures[0].width gt f.text>
<@figure picture=pictures[0]/><div class="cap">${pictures[0].caption}</div>
<#elseif pictures?size == 1>
<table class="figs"><tr><td class="one"><@figure picture=pictures[0]/></td><td class="cap">${pictures[0].caption}</td></tr></table>
<#else>
<table class="figs"><tr><#list pictures as picture><td><@figure picture=picture/><div class="cap">${picture.caption}</div></td></#list></tr></table>
</#if>
</#macro>

<#function isWide b><#return (b.table?? && b.table.wide) || (b.picture?? && (b.picture.labelled?? || b.picture.width gt f.text))></#function>

<#macro block b>
<#if b.kind == "paragraph"><p>${b.text}</p>
<#elseif b.kind == "bullets"><ul><#list b.items as item><li><span class="dot">&#8226;</span>${item}</li></#list></ul>
<#elseif b.kind == "numbered"><ol><#list b.items as item><li><span class="num">${item?counter}</span>${item}</li></#list></ol>
<#elseif b.kind == "table"><@table data=b.table class=b.table.wide?then("wide", "")/>
<#else><@figures pictures=[b.picture]/></#if>
</#macro>

<#macro sectionview s level=3>
<#if s.kind == "caution">
<@cautionbox text=s.caution/>
<#elseif s.kind == "pictures">
<#assign pics = []><#list s.blocks as b><#assign pics = pics + [b.picture]></#list>
<#if isWide(s.blocks[0])>
<div class="sec" style="min-height:${s.railLines * u}pt"><div class="rail"><h${level}>${s.heading}</h${level}></div><div class="body bare" style="min-height:${s.railLines * u}pt">&#160;</div><div class="across whole"><@figures pictures=pics/></div></div>
<#else>
<@section heading=s.heading level=level><@figures pictures=pics/></@section>
</#if>
<#else>
<div class="sec<#if s.breaks> long</#if>" style="min-height:${s.railLines * u}pt"><div class="rail"><h3>${s.heading}</h3></div><div class="body" style="min-height:${s.railLines * u}pt"><#list s.blocks as b><#if !isWide(b)><@block b=b/></#if></#list></div><#list s.blocks as b><#if isWide(b)><div class="across<#if b.picture??> whole</#if>"><@block b=b/></div></#if></#list></div>
</#if>
</#macro>

<#macro speech text intro="">
<div class="speech"><div class="tail"><svg xmlns="http://www.w3.org/2000/svg" aria-hidden="true" viewBox="0 0 6 6" width="6mm" height="6mm"><path d="M6 0.2L0.6 2.4L6 5.8" fill="white" stroke="black" stroke-width="0.42" data-save="stroke-width:0.32"/><path d="M5.9 0.5L5.9 5.4" stroke="white" stroke-width="0.8"/></svg></div><#if intro?has_content><strong>${intro}</strong> </#if>&#8220;${text}&#8221;</div>
</#macro>
