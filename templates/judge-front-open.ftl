<#import "marks.ftl" as marks>
<#import "judge-open.ftl" as l>
<#assign t = look.type>
<#assign f = look.frame>
<#assign u = t.body * t.line>
<#assign sizes = []>
<#assign here = checksIn?then(19, 0) pinned = checksIn?then(27, 0) free = f.live - 18 - 32 - 4 - checksIn?then(here + pinned + 4, 0)>
<html xmlns="http://www.w3.org/1999/xhtml" lang="en">
<head>
<title>${look.level} check-in and order of showing${look.set.title}</title>
<style>
<#include "form-style.ftl">
<@l.rules f=f/>
</style>
<bookmarks><bookmark name="${checksIn?then("Check-in", "The class")}" href="#check-in"/><bookmark name="Order of showing" href="#order"/></bookmarks>
</head>
<body>
<@l.foot what=checksIn?then("Check-in", "The class") look=look head=head/>
<div id="check-in">
  <@l.head title=checksIn?then("Check-in", "The class") head=head look=look/>
  <p><#if checksIn><strong>The clerk keeps this list.</strong> Tick who is here, and whose number is pinned on.<#else><strong>The clerk keeps this list.</strong> Judge 1&#8217;s list checks the class in and adds up the points.</#if></p>
  <table class="rows">
    <thead><tr><th scope="col" class="no">No.</th><th scope="col" style="width:${free * 0.44}mm">Member</th><th scope="col" style="width:${free * 0.56}mm">Rabbit, breed</th><th scope="col" style="width:30mm">Ear no.</th><#if checksIn><th scope="col" style="width:${here}mm">Here</th><th scope="col" style="width:${pinned}mm">Pinned</th></#if></tr></thead>
    <tbody><#list checkIn as page><#list page.lines as e>
    <tr><td class="no"><#if e.number??>${e.number}<#else>&#160;</#if></td><td><strong>${e.called!}</strong>&#160;</td><td><#if e.rabbit??>${e.rabbit}, ${e.breed}<#else>&#160;</#if></td><td>${e.ear!}&#160;</td><#if checksIn><td><@marks.tick size=7/></td><td><@marks.tick size=7/></td></#if></tr>
    </#list></#list></tbody>
  </table>
  <div class="block"><h2>On this clipboard, from the top</h2>
    <#list contents as c><p>${c.what}</p></#list>
    <p><strong>Rain:</strong> printed with ink-jet ink? Keep it dry. Laser print, or a clear sleeve, stands rain.</p>
  </div>
</div>
<div id="order" class="later">
  <@l.foot what="Order of showing" look=look head=head/>
  <@l.head title="Order of showing" head=head look=look/>
  <p>Call them in this order. Tick who has shown.</p>
  <p><#if look.primary>Primary has no points and no places, and nobody turns a rabbit over. Say what went well, and write it on the slip.<#else>A child may stop for the rabbit&#8217;s sake at any time. It costs nothing: let the rabbit rest, and score what was told.</#if></p>
  <table class="rows">
    <thead><tr><th scope="col" class="no">No.</th><#if columns.names><th scope="col">Name</th></#if><#if columns.rabbits><th scope="col">Rabbit</th><th scope="col">Breed</th></#if><#if !columns.names><th scope="col">Note</th></#if><th scope="col" style="width:24mm">Shown</th></tr></thead>
    <tbody><#list order as page><#list page.lines as e>
    <tr><td class="no"><#if e.number??>${e.number}<#else>&#160;</#if></td><#if columns.names><td><strong>${e.name!}</strong>&#160;</td></#if><#if columns.rabbits><td>${e.rabbit!}&#160;</td><td>${e.breed!}&#160;</td></#if><#if !columns.names><td>&#160;</td></#if><td><@marks.tick size=7/></td></tr>
    </#list></#list></tbody>
  </table>
</div>
</body>
</html>
