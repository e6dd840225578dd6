<#-- The signs that every page shares, drawn as inline SVG: toe marks, hop line, rabbit, caution sign. -->

<#-- Toe mark: the four toes of a hind foot, n of them black. half: half its width in mm. -->
<#macro toes n half>
<svg xmlns="http://www.w3.org/2000/svg" class="toes" aria-hidden="true" viewBox="0 0 32 14" width="${2 * half}mm" height="${half * 0.875}mm"><#rt>
  <#list [[4, 7.8, -14], [12, 6, -4], [20, 6, 4], [28, 7.8, 14]] as toe><#t>
    <#if toe?index < n><#t>
      <path transform="translate(${toe[0]} ${toe[1]}) rotate(${toe[2]})" d="M0 5.2C1.3 5.2 2 4 2.5 1.8C3 -0.4 3.3 -1.2 3.3 -2.3C3.3 -4.3 1.8 -5.4 0 -5.4C-1.8 -5.4 -3.3 -4.3 -3.3 -2.3C-3.3 -1.2 -3 -0.4 -2.5 1.8C-2 4 -1.3 5.2 0 5.2Z" fill="black"/><#t>
    <#else><#t>
      <path transform="translate(${toe[0]} ${toe[1]}) rotate(${toe[2]}) scale(0.77 0.86)" d="M0 5.2C1.3 5.2 2 4 2.5 1.8C3 -0.4 3.3 -1.2 3.3 -2.3C3.3 -4.3 1.8 -5.4 0 -5.4C-1.8 -5.4 -3.3 -4.3 -3.3 -2.3C-3.3 -1.2 -3 -0.4 -2.5 1.8C-2 4 -1.3 5.2 0 5.2Z" fill="white" stroke="black" stroke-width="1.5"/><#t>
    </#if><#t>
  </#list><#t>
</svg><#lt>
</#macro>

<#-- Hop line: one stop for each of hops (done, here, or to come), width mm wide and 11 mm high. -->
<#macro hopline hops width>
<#local step = (width - 7) / (hops?size - 1)>
<div class="hopline" style="width:${width}mm"><#t>
<svg xmlns="http://www.w3.org/2000/svg" aria-hidden="true" viewBox="0 0 ${width} 11" width="${width}mm" height="11mm"><#t>
  <#list hops as hop><#t>
    <#local x = 3.5 + step * hop?index><#t>
    <#if hop?has_next><#t>
      <path d="M${x} 7C${x + step * 0.25} 0.4 ${x + step * 0.75} 0.4 ${x + step} 7" fill="none" stroke="black" stroke-width="0.55"<#if !hop.done> stroke-dasharray="1.3 0.9"</#if>/><#t>
    </#if><#t>
  </#list><#t>
  <#list hops as hop><#t>
    <#local x = 3.5 + step * hop?index><#t>
    <#if hop.here><#t>
      <circle cx="${x}" cy="7" r="3.4" fill="black" data-save="r:3.1;fill:white;stroke:black;stroke-width:0.6"/><#t>
    <#elseif hop.done><#t>
      <circle cx="${x}" cy="7" r="1" fill="black"/><#t>
    <#else><#t>
      <circle cx="${x}" cy="7" r="1" fill="white" stroke="black" stroke-width="0.5"/><#t>
    </#if><#t>
  </#list><#t>
</svg><#t>
<#list hops as hop><#if hop.here><div class="here" style="left:${3.5 + step * hop?index - 3.5}mm">${hop.no}</div></#if></#list><#t>
</div>
</#macro>

<#-- The rabbit: one drawing, facing left, black with white carved lines; width in mm. -->
<#macro rabbit width>
<#-- Where ink is saved, a large one is drawn in outline; a small one has little ink, and its lines would close up. -->
<#local light = (width gte 30)?then(' data-save="fill:white;stroke:black;stroke-width:' + 352 * 0.5 / width + '"', "")?no_esc>
<#local carved = (width gte 30)?then(' data-save="stroke:black"', "")?no_esc>
<svg xmlns="http://www.w3.org/2000/svg" class="rabbit" aria-hidden="true" viewBox="0 0 352 218" width="${width}mm" height="${width * 218 / 352}mm"><#t>
  <path d="M64 92C62 62 70 26 86 8C93 0 103 5 103 17C102 46 93 72 86 90ZM92 84C98 58 111 26 123 8C130 -2 140 3 138 17C135 46 121 70 106 90Z" fill="black"${light}/><#t>
  <path d="M62 96C96 70 146 45 208 45C284 45 330 104 330 160C330 190 322 204 306 210L150 211C118 211 74 196 66 150Z" fill="black"${light}/><#t>
  <path d="M0 134C-1 118 22 96 52 88C74 82 98 92 102 112C108 144 88 172 56 174C36 175 24 168 16 158C6 152 1 144 0 134Z" fill="black"${light}/><#t>
  <circle cx="334" cy="164" r="16" fill="black"${light}/><#t>
  <path d="M60 214C56 204 72 197 100 199L160 203L158 216L68 217Q62 217 60 214ZM178 214C176 204 190 200 206 202L300 203Q306 216 296 217L186 217Q180 217 178 214Z" fill="black"${light}/><#t>
  <g fill="none" stroke="white"${carved} stroke-linecap="round" stroke-width="3.4"><#t>
    <path d="M197 198C183 150 207 108 246 108C281 108 302 130 305 162"/><#t>
    <path d="M99 128C99 144 91 158 76 167"/><path d="M86 187C100 196 116 198 136 196" stroke-width="3"/><#t>
    <path d="M75 82C76 56 82 34 90 22" stroke-width="3"/><path d="M108 34L121 22" stroke-width="3"/><#t>
    <path d="M4 142C14 140 20 146 18 156" stroke-width="2.4"/><path d="M30 150L56 146M30 156L56 158M32 162L54 168" stroke-width="2"/><#t>
    <path d="M210 209L290 209" stroke-width="3"/><#t>
    <path d="M112 90L126 84M132 82L146 76M150 70L164 66M174 58L190 56M212 56L228 60M252 66L266 72M278 78L290 86M130 100L144 96M152 92L166 88M128 126L142 122M146 114L160 112M132 146L146 143M150 140L164 137M126 166L140 164M238 132L252 129M226 150L240 148M252 148L266 150M230 168L244 168M258 166L272 170M326 160L338 157M328 168L340 169" stroke-width="2.6"/><#t>
  </g><#t>
  <circle cx="42" cy="120" r="7.5" fill="white"/><circle cx="42" cy="120" r="5" fill="black"/><circle cx="40.5" cy="118" r="1.6" fill="white"/><#t>
</svg><#t>
</#macro>

<#-- The caution sign: a white triangle on the black label. -->
<#macro warning size=7>
<svg xmlns="http://www.w3.org/2000/svg" aria-hidden="true" viewBox="0 0 14 13" width="${size}mm" height="${size * 13 / 14}mm"><path d="M7 0.6L13.6 12.4L0.4 12.4Z" fill="white" data-save="d:M7 1.2L12.9 11.9L1.1 11.9Z;stroke:black;stroke-width:1.1"/><path d="M7 4.2L7 8.4" stroke="black" stroke-width="1.5"/><circle cx="7" cy="10.4" r="0.85" fill="black"/></svg><#t>
</#macro>

<#-- A box to tick; size in mm. -->
<#macro tick size=4><span class="tick" style="width:${size}mm;height:${size}mm">&#160;</span></#macro>

<#-- A figure with a word for each part: words in HTML, lines over the figure with a white edge, a dot where each ends. -->
<#macro labelled l alt size>
<div class="labelled" style="width:${l.boxWidth}mm;height:${l.boxHeight}mm">
  <img src="hutch:${l.file}" alt="${alt}" style="left:${l.left}mm;top:${l.top}mm;width:${l.width}mm;height:${l.height}mm"/>
  <@lines l=l/>
  <#list l.named as n>
  <div class="name <#if n.onLeft>left<#else>right</#if>" style="top:${n.portY - size * 0.2028}mm;font-size:${size}pt;<#if n.onLeft>left:0;width:${n.portX - 1}mm<#else>left:${n.portX + 1}mm;width:${l.boxWidth - n.portX - 1}mm</#if>">${n.word}</div>
  </#list>
</div>
</#macro>

<#macro lines l discs=[] r=3.4>
<div class="lines"><svg xmlns="http://www.w3.org/2000/svg" aria-hidden="true" viewBox="0 0 ${l.boxWidth} ${l.boxHeight}" width="${l.boxWidth}mm" height="${l.boxHeight}mm"><#t>
<#list l.named as n><path d="M${n.portX} ${n.portY}L${n.endX} ${n.endY}" fill="none" stroke="white" stroke-width="1.1"/></#list><#t>
<#list l.named as n><path d="M${n.portX} ${n.portY}L${n.endX} ${n.endY}" fill="none" stroke="black" stroke-width="0.4"/><circle cx="${n.endX}" cy="${n.endY}" r="0.9" fill="black"/></#list><#t>
<#list discs as d><circle cx="${d.x}" cy="${d.y}" r="${r}" fill="white" stroke="black" stroke-width="0.4"/></#list><#t>
</svg></div>
</#macro>
