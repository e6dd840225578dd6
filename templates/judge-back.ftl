<#import "judge-list.ftl" as l>
<#import "judge-marks.ftl" as j>
<#assign right = at.right wide = right - 9>

<html xmlns="http://www.w3.org/1999/xhtml" lang="en">
<head>
<title>${look.level} call-back list<#if tally?has_content> and tally</#if></title>
<style>
<@l.style width=at.width height=at.height/>
.back td { height: 14.4mm; font-size: 12pt; } .back .tickbox { display: inline-block; margin: 0 1.6mm -1.1mm 0; } .back .for span { white-space: nowrap; padding-right: 4mm; }
.back .num { height: 10.4mm; }
.tally td { height: 12mm; font-size: 12pt; } .tally td.no { font-size: 16pt; }
</style>
<bookmarks><bookmark name="Call-back list" href="#back"/><#if tally?has_content><bookmark name="Tally" href="#tally"/></#if></bookmarks>
</head>
<body>
<div class="page" id="back">
  <@l.head title="Call-back list" head=head look=look right=right/>
  <@j.words x=9 y=34.5 pt=12>Write who comes back and what for. <#if seals?size gt 1>Ask everyone you call back the same: question set ${seals[1].letter}.<#else>Ask everyone you call back the same.</#if></@j.words>
  <table class="rows back">
    <thead><tr><th scope="col" style="width:24mm">Number</th><th scope="col" style="width:76mm">Called back for</th><th scope="col" style="width:${wide - 26 - 78 - 26 - 2}mm">Which, what was seen</th><th scope="col" class="mid" style="width:24mm">Place</th></tr></thead>
    <tbody>
    <#list 1..10 as no><tr><td><div class="num" style="width:22mm"></div></td><td class="for"><span><span class="tickbox"></span>a tie</span> <span><span class="tickbox"></span>a stop</span> <span><span class="tickbox"></span>questions</span></td><td>&#160;</td><td><div class="num" style="width:20mm;margin-left:4mm"></div></td></tr></#list>
    </tbody>
  </table>
  <div class="foot" style="top:${46 + 10 * 14.4 + 6}mm">The rabbit has worked already: call back few, keep it short, and let the rabbit rest in between.</div>
</div>

<#list tally as page>
<div class="page later"<#if page?is_first> id="tally"</#if>>
  <@l.head title="Tally" head=head look=look right=right/>
  <@j.words x=9 y=34.5 pt=12><#if points.judges gt 1>Copy each judge&#8217;s total, add the two, and place by the sum. One adds, another checks.<#else>Copy each total from its sheet, and place by it. One copies, another checks.</#if></@j.words>
  <table class="rows tally">
    <thead><tr><th scope="col" class="no" style="width:18mm">No.</th><#if points.judges gt 1><th scope="col" style="width:26mm">Judge 1<br/>of ${points.each}</th><th scope="col" style="width:26mm">Judge 2<br/>of ${points.each}</th><th scope="col" style="width:30mm">Sum<br/>of ${points.each * points.judges}</th><#else><th scope="col" style="width:30mm">Total<br/>of ${points.each}</th></#if><th scope="col" style="width:24mm">Place</th><th scope="col">Tie broken on</th></tr></thead>
    <tbody>
    <#list page.lines as e><tr><td class="no"><#if e.number??>${e.number}<#else>&#160;</#if></td><#if points.judges gt 1><td><div class="num" style="width:25mm"></div></td><td><div class="num" style="width:25mm"></div></td><td><div class="num sum" style="width:29mm"></div></td><#else><td><div class="num sum" style="width:29mm"></div></td></#if><td><div class="num place" style="width:22mm"></div></td><td>&#160;</td></tr></#list>
    </tbody>
  </table>
  <div class="foot" style="top:${at.height - 21}mm">Equal? Your rule book says what breaks a tie. Where it is silent, call both back, and write here what decided.</div>
</div>
</#list>
</body>
</html>
