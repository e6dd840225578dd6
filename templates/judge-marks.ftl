<#-- What the judge's paper is drawn with. Places and lengths are millimetres from the page's top left corner. -->

<#macro style>
* { box-sizing: border-box; }
body { font-family: Lato, 'DejaVu Sans'; font-size: 10.5pt; line-height: 1.15; color: black; margin: 0; }
h1, h2, p, ul, ol, table, div { margin: 0; padding: 0; }
svg { display: block; }
.at { position: absolute; white-space: nowrap; }
.wrap { white-space: normal; }
.box { position: absolute; border: 1.6pt solid black; }
.small { border-width: 1.2pt; } .total { border-width: 2.2pt; }
.of { position: absolute; right: 1mm; bottom: 0.7mm; font-size: 10pt; line-height: 1; white-space: nowrap; }
.hline { position: absolute; height: 0; } .vline { position: absolute; width: 0; }
strong { font-weight: bold; }
.in { position: absolute; } .f12 { font-size: 12pt; } .f11 { font-size: 11pt; } .f10 { font-size: 10pt; } .in div { line-height: 5mm; }
<#-- What fits in no size is cut, not printed over its neighbour. -->
.in .flows { font-size: 10pt; height: 5mm; overflow: hidden; white-space: nowrap; }
</#macro>

<#-- A line along the page, its middle at y; light: dotted where ink is saved. -->
<#macro hline x1 x2 y pt=1.1 light=false><div class="hline<#if light> light</#if>" style="left:${x1}mm;width:${x2 - x1}mm;top:${y - pt * 0.1764}mm;border-top:${pt}pt solid black"></div></#macro>

<#-- A line down the page, its middle at x. -->
<#macro vline x y1 y2 pt=1.1 light=false><div class="vline<#if light> light</#if>" style="left:${x - pt * 0.1764}mm;top:${y1}mm;height:${y2 - y1}mm;border-left:${pt}pt solid black"></div></#macro>

<#-- A box to write in; of: the most it can hold. -->
<#macro box x y w h class="" of=""><div class="box ${class}" style="left:${x}mm;top:${y}mm;width:${w}mm;height:${h}mm"><#if of?has_content><div class="of">of ${of}</div></#if></div></#macro>

<#-- Words that begin at x, their line's middle at y. -->
<#macro words x y pt=10.5 w=0 align="left" bold=false tag="div"><${tag} class="at" style="left:${x}mm;top:${y - pt * 0.2028}mm;<#if w gt 0>width:${w}mm;</#if>font-size:${pt}pt;line-height:1.15;text-align:${align};font-weight:${bold?then("bold", "normal")}"><#nested/></${tag}></#macro>

<#-- Words with a line to write on after them; gap: where the line begins. -->
<#macro field label x gap x2 y bold=false><@words x=x y=y - 2.3 bold=bold>${label}</@words><@hline x1=gap x2=x2 y=y light=true/></#macro>

<#-- Words written on a field's line beforehand, in the largest size that fits; y: the line. -->
<#macro filled x x2 y sizes="f12 f11 f10" bold=false><div class="in" style="left:${x + 0.8}mm;top:${y - 5}mm;width:${x2 - x - 1}mm<#if bold>;font-weight:bold</#if>"><div data-fit="${sizes}" data-fit-height="5.2mm" data-fit-else="flow"><#nested/></div></div></#macro>

<#-- The tick in a box that is made beforehand. -->
<#macro ticked x y size=4><div class="at" style="left:${x}mm;top:${y}mm"><svg xmlns="http://www.w3.org/2000/svg" aria-label="ticked" viewBox="0 0 4 4" width="${size}mm" height="${size}mm"><path d="M0.9 2.1L1.7 3L3.2 0.9" fill="none" stroke="black" stroke-width="0.6"/></svg></div></#macro>

<#-- Judge 1 or judge 2, with one of them ticked where it is known; the two boxes begin at x1 and x2. -->
<#macro judge head x1 x2 y><@box class="small" x=x1 y=y w=4 h=4/><@box class="small" x=x2 y=y w=4 h=4/><#if head.judge??><@ticked x=(head.judge == 1)?then(x1, x2) y=y/></#if></#macro>
