<#import "marks.ftl" as marks>
<#import "judge-open.ftl" as l>
<#assign t = look.type>
<#assign f = look.frame>
<#assign u = t.body * t.line>
<#assign sizes = []>
<html xmlns="http://www.w3.org/1999/xhtml" lang="en">
<head>
<title>${look.level} call-back list<#if tally?has_content> and tally</#if>${look.set.title}</title>
<style>
<#include "form-style.ftl">
<@l.rules f=f/>
.for span { white-space: nowrap; padding-right: 3mm; }
</style>
<bookmarks><bookmark name="Call-back list" href="#back"/><#if tally?has_content><bookmark name="Tally" href="#tally"/></#if></bookmarks>
</head>
<body>
<@l.foot what="Call-back list" look=look head=head/>
<div id="back">
  <@l.head title="Call-back list" head=head look=look/>
  <p>Write who comes back and what for. <#if seals?size gt 1>Ask everyone you call back the same: question set ${seals[1].letter}.<#else>Ask everyone you call back the same.</#if> The rabbit has worked already: call back few, keep it short, and let the rabbit rest in between.</p>
  <table class="rows">
    <thead><tr><th scope="col" style="width:32mm">Number</th><th scope="col" style="width:56mm">Called back for</th><th scope="col">What was seen</th><th scope="col" style="width:26mm">Place</th></tr></thead>
    <tbody><#list 1..10 as no><tr><td class="fill">&#160;</td><td class="for" style="padding-left:3mm"><span><@marks.tick size=6/>a tie</span> <span><@marks.tick size=6/>a stop</span> <span><@marks.tick size=6/>questions</span></td><td>&#160;</td><td class="fill">&#160;</td></tr></#list></tbody>
  </table>
</div>
<#if tally?has_content>
<div id="tally" class="later">
  <@l.foot what="Tally" look=look head=head/>
  <@l.head title="Tally" head=head look=look/>
  <p><#if points.judges gt 1>Copy each judge&#8217;s total, add the two, and place by the sum. One adds, another checks.<#else>Copy each total from its sheet, and place by it. One copies, another checks.</#if> Equal? Your rule book says what breaks a tie. Where it is silent, call both back, and write here what decided.</p>
  <table class="rows">
    <thead><tr><th scope="col" class="no">No.</th><#if points.judges gt 1><th scope="col" style="width:32mm">Judge 1<br/>of ${points.each}</th><th scope="col" style="width:32mm">Judge 2<br/>of ${points.each}</th><th scope="col" style="width:34mm">Sum<br/>of ${points.each * points.judges}</th><#else><th scope="col" style="width:36mm">Total<br/>of ${points.each}</th></#if><th scope="col" style="width:26mm">Place</th><th scope="col">Tie broken on</th></tr></thead>
    <tbody><#list tally as page><#list page.lines as e><tr><td class="no"><#if e.number??>${e.number}<#else>&#160;</#if></td><#if points.judges gt 1><td class="fill">&#160;</td><td class="fill">&#160;</td><td class="fill">&#160;</td><#else><td class="fill">&#160;</td></#if><td class="fill">&#160;</td><td>&#160;</td></tr></#list></#list></tbody>
  </table>
</div>
</#if>
</body>
</html>
