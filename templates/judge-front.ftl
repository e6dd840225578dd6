<#import "judge-list.ftl" as l>
<#import "judge-marks.ftl" as j>
<#assign right = at.right wide = right - 9>
<#-- The room that the names share. -->
<#assign here = checksIn?then(16, 0) pinned = checksIn?then(24, 0) free = wide - 18 - 30 - here - pinned>

<html xmlns="http://www.w3.org/1999/xhtml" lang="en">
<head>
<title>${look.level} check-in and order of showing</title>
<style>
<@l.style width=at.width height=at.height/>
.in td { height: 10.2mm; font-size: 12pt; } .in td.no { font-size: 16pt; }
.order td { height: 13mm; font-size: 13pt; } .order td.no { font-size: 22pt; } .order .name { font-size: 15pt; font-weight: bold; }
.contents { border-collapse: collapse; margin-top: 1mm; } .contents td { padding: 0 3mm 0 0; height: 5.4mm; vertical-align: top; line-height: 1.2; } .contents .n { width: 12mm; text-align: right; font-weight: bold; }
</style>
<bookmarks><bookmark name="${checksIn?then("Check-in", "The class")}" href="#check-in"/><bookmark name="Order of showing" href="#order"/></bookmarks>
</head>
<body>
<#list checkIn as page>
<div class="page<#if !page?is_first> later</#if>"<#if page?is_first> id="check-in"</#if>>
  <@l.head title=checksIn?then("Check-in", "The class") head=head look=look right=right/>
  <@j.words x=9 y=34.5 pt=12><#if checksIn><strong>The clerk keeps this page.</strong> Tick who is here, and whose number is pinned on.<#else><strong>The clerk keeps this page.</strong> Judge 1&#8217;s list checks the class in and adds up the points.</#if></@j.words>
  <table class="rows in">
    <thead><tr><th scope="col" class="no" style="width:14mm">No.</th><th scope="col" style="width:${free * 0.42 - 2}mm">Member</th><th scope="col" style="width:${free * 0.58 - 2}mm">Rabbit and breed</th><th scope="col" style="width:28mm">Ear number</th><#if checksIn><th scope="col" class="mid" style="width:${here}mm">Here</th><th scope="col" class="mid" style="width:${pinned}mm">Number<br/>pinned</th></#if></tr></thead>
    <tbody>
    <#list page.lines as e>
    <tr><td class="no"><#if e.number??>${e.number}<#else>&#160;</#if></td><td><strong>${e.called!}</strong></td><td><#if e.rabbit??>${e.rabbit}, ${e.breed}</#if></td><td>${e.ear!}</td><#if checksIn><td class="mid"><div class="tickbox"></div></td><td class="mid"><div class="tickbox"></div></td></#if></tr>
    </#list>
    </tbody>
  </table>
  <#if page?is_first>
  <div class="foot" style="top:${at.height - 78}mm">
    <p style="font-size:13pt;line-height:1.2"><strong>On this clipboard, from the top</strong></p>
    <table class="contents" role="presentation">
    <#list contents as c><tr><td class="n">${c.pages}</td><td>page<#if c.pages != 1>s</#if>: ${c.what}</td></tr></#list>
    <tr><td class="n">${pages}</td><td><strong>pages in all</strong></td></tr>
    </table>
    <p style="margin-top:2.5mm"><strong>Rain:</strong> printed with ink-jet ink? Keep it dry. Laser print, or a clear sleeve, stands rain.</p>
  </div>
  </#if>
</div>
</#list>

<#list order as page>
<div class="page later"<#if page?is_first> id="order"</#if>>
  <@l.head title="Order of showing" head=head look=look right=right/>
  <@j.words x=9 y=34.5 pt=12>Call them in this order. Tick who has shown.</@j.words>
  <#assign names = columns.names?then(58, 0) rabbits = columns.rabbits?then(wide - 24 - 18 - names - (names == 0)?then(58, 0), 0)>
  <table class="rows order">
    <thead><tr><th scope="col" class="no" style="width:20mm">No.</th><#if columns.names><th scope="col" style="width:${names - 2}mm">Name</th></#if><#if columns.rabbits><th scope="col" style="width:${rabbits * 0.45 - 2}mm">Rabbit</th><th scope="col" style="width:${rabbits * 0.55 - 2}mm">Breed</th></#if><#if !columns.names><th scope="col" style="width:${wide - 24 - 18 - rabbits - 2}mm">Note</th></#if><th scope="col" class="mid" style="width:18mm">Shown</th></tr></thead>
    <tbody>
    <#list page.lines as e>
    <tr><td class="no"><#if e.number??>${e.number}<#else>&#160;</#if></td><#if columns.names><td class="name">${e.name!}</td></#if><#if columns.rabbits><td>${e.rabbit!}</td><td>${e.breed!}</td></#if><#if !columns.names><td>&#160;</td></#if><td class="mid"><div class="tickbox"></div></td></tr>
    </#list>
    </tbody>
  </table>
  <div class="foot" style="top:${at.height - 21}mm"><#if look.primary>Primary has no points and no places, and nobody turns a rabbit over. Say what went well, and write it on the slip.<#else>A child may stop for the rabbit&#8217;s sake at any time. It costs nothing: let the rabbit rest, and score what was told.</#if></div>
</div>
</#list>
</body>
</html>
